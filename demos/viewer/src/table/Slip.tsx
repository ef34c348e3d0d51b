import type { Start } from '@paperhinge/alter';
import { createEffect, createSignal, For, Show } from 'solid-js';
import type { Declared, PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { withStep } from '../job/written.js';
import { bareSentence } from '../sheet/sentence.js';
import { pageWords } from '../words.js';
import { canBegin, filledBy } from './begin.js';
import { Naming } from './Naming.jsx';

/** Sentences that are offered at once; the others are one touch away. */
const few = 7;

/** A slip of paper: what was touched, its figures, and the sentences that can begin there. */
export function Slip(props: {
  readonly garment: Garment;
  readonly thing: Touched;
  readonly at: readonly [number, number];
  readonly piece: PieceView | undefined;
}) {
  const { garment } = props;
  const say = () => pageWords[garment.language()];
  const [all, setAll] = createSignal(false);
  createEffect(() => props.thing && setAll(false));
  const part = () => props.piece?.parts.find(p => p.name === props.thing.name && p.kind === props.thing.kind);
  const name = (text: string) => text.replaceAll('-', ' ');
  const title = () => {
    if (props.thing.kind === 'table') return say().onTable;
    const of = props.piece?.title ?? '';
    if (props.thing.name === undefined) return of;
    const own =
      props.thing.kind === 'corner' ? `${say().cornerOf} ${name(props.thing.name)}` : name(props.thing.name);
    return garment.language() === 'de'
      ? `${own} · ${of}`
      : `${own.replace(/^\p{Ll}/u, c => c.toUpperCase())} of the ${of.toLowerCase()}`;
  };
  const told = () =>
    part()?.told ||
    (props.piece && props.thing.name === undefined ? `${props.piece.cut} · ${props.piece.told}` : '');
  const sentences = () =>
    garment.engine
      .verbs()
      .filter(
        verb =>
          verb.startsAt[props.thing.kind as Start] !== undefined &&
          canBegin(verb, props.thing, part(), props.piece),
      );
  const begin = (verb: Declared) => {
    garment.write(withStep(garment.history.now(), verb.verb, filledBy(verb, props.thing, part())));
    garment.setNeedle(undefined);
    garment.setOpen(garment.steps().length - 1);
    garment.setTouched(undefined);
  };
  const walk = (seam: string) => {
    garment.setTouched(undefined);
    garment.setWalking(seam);
  };
  const measure = (from: readonly [number, number]) => {
    garment.setMeasuring({ piece: props.thing.piece!, from });
    garment.setTouched(undefined);
  };
  return (
    <div
      class="slip"
      role="dialog"
      aria-label={title()}
      style={{ left: `${props.at[0]}px`, top: `${props.at[1]}px` }}
      onPointerDown={e => e.stopPropagation()}
    >
      <h3>{title()}</h3>
      <Show when={told()}>
        <p>{told()}</p>
      </Show>
      <Naming garment={garment} thing={props.thing} />
      <ul>
        <For each={all() ? sentences() : sentences().slice(0, few)}>
          {verb => (
            <li>
              <button type="button" onClick={() => begin(verb)}>
                {bareSentence(verb, garment.verbWords(), filledBy(verb, props.thing, part()))}
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
        <For each={part()?.seams}>
          {seam => (
            <li>
              <button type="button" onClick={() => walk(seam)}>
                {say().walkIt}: {name(seam)}
              </button>
            </li>
          )}
        </For>
        <Show when={part()?.at}>
          {at => (
            <li>
              <button type="button" onClick={() => measure(at())}>
                {say().measureFrom}
              </button>
            </li>
          )}
        </Show>
      </ul>
      <button type="button" class="plain" onClick={() => garment.setTouched(undefined)}>
        {say().close}
      </button>
    </div>
  );
}
