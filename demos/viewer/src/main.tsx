import './fonts.css';
import './page.css';
import { render } from 'solid-js/web';
import { App } from './App.jsx';

render(() => <App />, document.getElementById('page')!);
