import type { Where } from '@paperhinge/geometry';
import { For } from 'solid-js';
import type { Garment } from '../job/garment.js';

/** The foot of the sheet: whether it sews, and what does not, each a way to where it is. */
export function VerdictLine(props: { readonly garment: Garment; readonly goTo: (where: Where) => void }) {
  const view = props.garment.engine.view;
  return (
    <footer class="verdict" aria-live="polite" data-milliseconds={view()?.milliseconds.toFixed(1)}>
      <For each={view()?.verdict}>
        {({ strong, text, tone, where }) => (
          <button type="button" class={tone} onClick={() => where && props.goTo(where)}>
            {tone === 'sound' ? '' : '▲ '}
            <strong>{strong}</strong> {text}
          </button>
        )}
      </For>
    </footer>
  );
}
