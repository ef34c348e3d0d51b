import type { Where } from '@paperhinge/geometry';
import { For, Show } from 'solid-js';
import type { Garment } from '../job/garment.js';
import { pageWords } from '../words.js';
import { Proved } from './Proved.jsx';
import { lacksAny } from './reading.js';

/** The foot of the sheet: whether it sews, and what does not, each a way to where it is; while it is worked out, no figure. */
export function VerdictLine(props: { readonly garment: Garment; readonly goTo: (where: Where) => void }) {
  const { garment } = props;
  const { view, proof, isProved } = garment.engine;
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
    <footer
      class="verdict"
      aria-live="polite"
      aria-busy={!isProved()}
      data-milliseconds={view()?.milliseconds.toFixed(1)}
      data-proof-milliseconds={isProved() ? proof()?.milliseconds.toFixed(1) : undefined}
    >
      <Show when={undone()[0] !== undefined}>
        <button type="button" class="fault" onClick={() => open(undone()[0]!)}>
          ▲ <strong>{undone().length}</strong> {undone().length === 1 ? say().stepUndone : say().stepsUndone}
        </button>
      </Show>
      <For each={proof()?.verdict}>
        {({ strong, text, tone, where }) => (
          <button type="button" class={isProved() ? tone : ''} onClick={() => where && props.goTo(where)}>
            <Proved garment={garment}>
              {tone === 'sound' ? '' : '▲ '}
              <strong>{strong}</strong>
            </Proved>{' '}
            {text}
          </button>
        )}
      </For>
    </footer>
  );
}
