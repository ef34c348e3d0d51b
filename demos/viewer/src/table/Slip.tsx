import { type AnyVerb, inSheet, type Start, verbs } from '@paperhinge/alter';
import { For, Show } from 'solid-js';
import type { PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { withStep } from '../job/written.js';
import { bareSentence } from '../sheet/Step.jsx';

/** A slip of paper: what was touched, its figures, and the sentences that can begin there. */
export function Slip(props: {
  readonly garment: Garment;
  readonly thing: Touched;
  readonly at: readonly [number, number];
  readonly piece: PieceView | undefined;
}) {
  const { garment } = props;
  const part = () => props.piece?.parts.find(p => p.name === props.thing.name && p.kind === props.thing.kind);
  const name = (text: string) => text.replaceAll('-', ' ');
  const title = () => {
    const of = props.piece?.title ?? '';
    if (props.thing.name === undefined) return of;
    return garment.language() === 'de'
      ? `${name(props.thing.name)} · ${of}`
      : `${name(props.thing.name).replace(/^\p{Ll}/u, c => c.toUpperCase())} of the ${of.toLowerCase()}`;
  };
  const sentences = () =>
    verbs.filter(verb => verb.startsAt[props.thing.kind as Start] !== undefined).slice(0, 7);
  const begin = (verb: AnyVerb) => {
    garment.write(withStep(garment.history.now(), verb.verb, filledBy(verb, props.thing)));
    garment.setNeedle(undefined);
    garment.setOpen(garment.steps().length - 1);
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
      <p>
        {part()?.told || (props.thing.name === undefined ? `${props.piece?.cut} · ${props.piece?.told}` : '')}
      </p>
      <ul>
        <For each={sentences()}>
          {verb => (
            <li>
              <button type="button" onClick={() => begin(verb)}>
                {bareSentence(verb, garment.verbWords(), filledBy(verb, props.thing))}
              </button>
            </li>
          )}
        </For>
      </ul>
      <Show when={sentences().length === 0}>
        <p>–</p>
      </Show>
    </div>
  );
}

/** The fields that the thing touched fills: its piece first, then itself. */
export function filledBy(verb: AnyVerb, { kind, piece, name }: Touched): Readonly<Record<string, unknown>> {
  const names = verb.startsAt[kind as Start] ?? [];
  const filled: Record<string, unknown> = {};
  for (const field of names) {
    const [first, ...rest] = field.split('.') as [string, ...string[]];
    const kindOfField = (rest.length > 0 ? verb.fields[first]?.fields?.[rest[0]!] : verb.fields[first])?.kind;
    const value = valueFor(kindOfField, piece, name);
    if (value === undefined) continue;
    if (rest.length > 0)
      filled[inSheet(first)] = {
        ...(filled[inSheet(first)] as object | undefined),
        [inSheet(rest[0]!)]: value,
      };
    else filled[inSheet(first)] = value;
  }
  return filled;
}

function valueFor(kind: string | undefined, piece: string | undefined, name: string | undefined): unknown {
  if (kind === 'piece') return piece;
  if (kind === 'pieces') return piece === undefined ? undefined : [piece];
  if (kind === 'edge-of-piece') return name === undefined ? undefined : `${piece}.${name}`;
  if (kind === 'edges-of-pieces') return name === undefined ? undefined : [`${piece}.${name}`];
  return name;
}
