import type { Start } from '@paperhinge/alter';
import { createEffect, createSignal, For, Show } from 'solid-js';
import type { Declared } from '../engine/view.js';
import { withStep } from '../job/written.js';
import { bareSentence } from '../sheet/sentence.js';
import { pageWords } from '../words.js';
import { canBegin, filledBy } from './begin.js';
import type { SlipProps } from './Slip.jsx';

/** Sentences that are offered at once; the others are one touch away. */
const few = 7;

/** The sentences that can begin at what was touched; one that is chosen stands in the sheet, its blanks to be filled. */
export function SlipSentences(props: SlipProps) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [all, setAll] = createSignal(false);
  createEffect(() => props.thing && setAll(false));
  const sentences = () =>
    garment.engine
      .verbs()
      .filter(
        verb =>
          verb.startsAt[props.thing.kind as Start] !== undefined &&
          canBegin(verb, props.thing, props.part, props.piece),
      );
  const filled = (verb: Declared) => filledBy(verb, props.thing, props.part);
  const begin = (verb: Declared) => {
    garment.write(withStep(garment.history.now(), verb.verb, filled(verb)));
    garment.setNeedle(undefined);
    garment.setOpen(garment.steps().length - 1);
    garment.setTouched(undefined);
  };
  return (
    <>
      <For each={all() ? sentences() : sentences().slice(0, few)}>
        {verb => (
          <li>
            <button type="button" onClick={() => begin(verb)}>
              {bareSentence(verb, garment.verbWords(), filled(verb))}
            </button>
          </li>
        )}
      </For>
      <Show when={!all() && sentences().length > few}>
        <li>
          <button type="button" onClick={() => setAll(true)}>
            … {say().more} {sentences().length - few}
          </button>
        </li>
      </Show>
    </>
  );
}
