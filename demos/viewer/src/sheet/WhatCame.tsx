import { createMemo, For, Show } from 'solid-js';
import { pageWords } from '../words.js';
import type { StepProps } from './reading.js';
import { Together } from './Together.jsx';

/** What came of a step, in smaller type; what it left to look at is told where the step is open. */
export function WhatCame(props: StepProps & { readonly isOpen: boolean; readonly isUnfinished: boolean }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const came = createMemo(() => garment.engine.view()?.steps[props.index]);
  return (
    <>
      <Show when={props.step.off}>
        <p class="came">{say().notDone}</p>
      </Show>
      <Show when={came()?.fault}>
        {fault => (
          <Show when={!props.isUnfinished} fallback={<p class="came">{say().fillIn}</p>}>
            <p class="came fault">
              ▲ <Together text={fault()} />
            </p>
          </Show>
        )}
      </Show>
      <Show when={!came()?.fault && came()?.did}>
        {did => (
          <p class="came">
            <Together text={did()} />
          </p>
        )}
      </Show>
      <Show when={props.isOpen}>
        <For each={garment.engine.proof()?.left[props.index]?.findings}>
          {finding => (
            <p
              class="came"
              aria-busy={!garment.engine.isProved()}
              classList={{ fault: finding.severity === 'fault', care: finding.severity === 'warning' }}
            >
              ▲ <Together text={`${finding.message} ${finding.remedy}`} />
            </p>
          )}
        </For>
      </Show>
    </>
  );
}
