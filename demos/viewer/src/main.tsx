import '@fontsource/literata/latin-400.css';
import '@fontsource/literata/latin-400-italic.css';
import '@fontsource/literata/latin-600.css';
import '@fontsource/source-sans-3/latin-400.css';
import '@fontsource/source-sans-3/latin-600.css';
import './page.css';
import { render } from 'solid-js/web';
import { App } from './App.jsx';

render(() => <App />, document.getElementById('page')!);
