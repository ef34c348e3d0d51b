import { Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';

/** What goes on that takes long: what is being done, how much of it is done, and a way to stop it. */
export function LongWork(props: { readonly garment: Garment }) {
  const { engine, language } = props.garment;
  return (
    <Show when={engine.going()}>
      {going => (
        <p class="going">
          <span role="status">{going().text}</span>
          <Show when={going().share !== undefined} fallback={<progress aria-label={going().text} />}>
            <progress aria-label={going().text} max={1} value={going().share!} />
          </Show>
          <button type="button" class="plain" onClick={engine.stop}>
            {pageWords[language()].stop}
          </button>
        </p>
      )}
    </Show>
  );
}
