import { lazy, Suspense } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

// An editor is as large as the rest of the page: it is loaded once it is asked for.
const TextEditor = lazy(() => import('./TextEditor.jsx').then(m => ({ default: m.TextEditor })));

/** The sheet's text beside its sentences. */
export function AsText(props: { readonly garment: Garment; readonly onDone: () => void }) {
  const say = () => pageWords[props.garment.language()];
  return (
    <aside
      class="as-text"
      aria-label={say().sheetText}
      onKeyDown={event => event.key === 'Escape' && props.onDone()}
    >
      <p>
        <button type="button" class="plain" onClick={props.onDone}>
          {say().close}
        </button>
      </p>
      <Suspense fallback={<p class="soft">{say().working}</p>}>
        <TextEditor garment={props.garment} />
      </Suspense>
    </aside>
  );
}
