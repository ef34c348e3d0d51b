import { onCleanup, Show } from 'solid-js';
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
          <Stop label={pageWords[language()].stop} onStop={engine.stop} />
        </p>
      )}
    </Show>
  );
}

/** Goes when the work does; keys that stood on it go back to where they came from. */
function Stop(props: { readonly label: string; readonly onStop: () => void }) {
  const before = document.activeElement;
  let button: HTMLButtonElement | undefined;
  onCleanup(() => {
    if (document.activeElement === button && before instanceof HTMLElement) before.focus();
  });
  return (
    <button type="button" class="plain" ref={button} onClick={props.onStop}>
      {props.label}
    </button>
  );
}
