import { Show } from 'solid-js';
import { play, playable } from '../job/play.js';
import { withoutStep, withStep, withStepMoved, withStepSwitched } from '../job/written.js';
import { pageWords } from '../words.js';
import type { Reading, StepProps } from './reading.js';

/** Whoever asks for less motion is shown no step in motion. */
const still = matchMedia('(prefers-reduced-motion: reduce)').matches;

/** What can be done with a step: more said of it, played, switched off, copied, moved, removed. */
export function StepDoings(props: StepProps & { readonly reading: Reading }) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const text = () => garment.history.now();
  const moved = (to: number) => garment.write(withStepMoved(text(), props.index, to));
  return (
    <p class="doings">
      <Show when={props.reading.isAll() || !props.reading.saysAll()}>
        <button
          type="button"
          aria-expanded={props.reading.isAll()}
          onClick={() => props.reading.setAll(a => !a)}
        >
          {props.reading.isAll() ? say().lessSaid : say().moreSaid}
        </button>
      </Show>
      <Show when={!still && playable(garment, props.index)}>
        {handle => (
          <button type="button" onClick={() => play(garment, handle())}>
            {say().play}
          </button>
        )}
      </Show>
      <button
        type="button"
        onClick={() => garment.write(withStepSwitched(text(), props.index, !props.step.off))}
      >
        {props.step.off ? say().on : say().off}
      </button>
      <button
        type="button"
        onClick={() => garment.write(withStep(text(), props.step.verb, props.step.fields, props.index + 1))}
      >
        {say().copy}
      </button>
      <button type="button" disabled={props.index === 0} onClick={() => moved(props.index - 1)}>
        {say().earlier}
      </button>
      <button
        type="button"
        disabled={props.index === garment.steps().length - 1}
        onClick={() => moved(props.index + 1)}
      >
        {say().later}
      </button>
      <button type="button" onClick={() => garment.write(withoutStep(text(), props.index))}>
        {say().remove}
      </button>
    </p>
  );
}
