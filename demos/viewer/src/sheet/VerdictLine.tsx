import type { Where } from '@paperhinge/geometry';
import { For, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { lacksAny } from './reading.js';

/** The foot of the sheet: whether it sews, and what does not, each a way to where it is. */
export function VerdictLine(props: { readonly garment: Garment; readonly goTo: (where: Where) => void }) {
  const { garment } = props;
  const view = garment.engine.view;
  const say = () => pageWords[garment.language()];
  /** Steps that could not be done, by their places; one that is still being filled in is none. */
  const undone = () =>
    garment.steps().flatMap((step, i) => {
      const verb = garment.engine.verbs().find(v => v.verb === step.verb);
      return view()?.steps[i]?.fault !== undefined && !lacksAny(verb, step) ? [i] : [];
    });
  const open = (step: number) => {
    garment.setOpen(step);
    document.querySelectorAll('.step')[step]?.scrollIntoView({ block: 'center' });
  };
  return (
    <footer class="verdict" aria-live="polite" data-milliseconds={view()?.milliseconds.toFixed(1)}>
      <Show when={undone()[0] !== undefined}>
        <button type="button" class="fault" onClick={() => open(undone()[0]!)}>
          ▲ <strong>{undone().length}</strong> {undone().length === 1 ? say().stepUndone : say().stepsUndone}
        </button>
      </Show>
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
