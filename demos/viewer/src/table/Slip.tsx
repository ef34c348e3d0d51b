import type { Start } from '@paperhinge/alter';
import { inSheet } from '@paperhinge/alter/verb';
import { For } from 'solid-js';
import type { Declared, PieceView, Touched } from '../engine/view.js';
import type { Garment } from '../job/garment.js';
import { withStep } from '../job/written.js';
import { bareSentence } from '../sheet/Step.jsx';
import { pageWords } from '../words.js';

/** A slip of paper: what was touched, its figures, and the sentences that can begin there. */
export function Slip(props: {
  readonly garment: Garment;
  readonly thing: Touched;
  readonly at: readonly [number, number];
  readonly piece: PieceView | undefined;
}) {
  const { garment } = props;
  const part = () => props.piece?.parts.find(p => p.name === props.thing.name && p.kind === props.thing.kind);
  const seams = () => part()?.seams ?? [];
  const name = (text: string) => text.replaceAll('-', ' ');
  const title = () => {
    const of = props.piece?.title ?? '';
    if (props.thing.name === undefined) return of;
    return garment.language() === 'de'
      ? `${name(props.thing.name)} · ${of}`
      : `${name(props.thing.name).replace(/^\p{Ll}/u, c => c.toUpperCase())} of the ${of.toLowerCase()}`;
  };
  const sentences = () =>
    garment.engine
      .verbs()
      .filter(
        verb =>
          verb.startsAt[props.thing.kind as Start] !== undefined &&
          canBegin(verb, props.thing, seams(), part()?.sort),
      )
      .slice(0, 8);
  const begin = (verb: Declared) => {
    garment.write(withStep(garment.history.now(), verb.verb, filledBy(verb, props.thing, seams())));
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
                {bareSentence(verb, garment.verbWords(), filledBy(verb, props.thing, seams()))}
              </button>
            </li>
          )}
        </For>
      </ul>
      <button type="button" class="plain" onClick={() => garment.setTouched(undefined)}>
        {pageWords[garment.language()].close}
      </button>
    </div>
  );
}

/** A sentence about a seam begins at an edge only if it is sewn in one; one about a line, only at a hem, which may stand for it. */
const canBegin = (
  verb: Declared,
  { kind }: Touched,
  seams: readonly string[],
  sort: string | undefined,
): boolean =>
  kind !== 'edge' ||
  ((verb.fields.seam?.kind !== 'seam' || seams.length > 0) &&
    (sort === 'hem' || !(verb.startsAt.edge ?? []).some(field => verb.fields[field]?.kind === 'line')));

/** The fields that the thing touched fills: its piece first, then itself. */
export function filledBy(
  verb: Declared,
  { kind, piece, name }: Touched,
  seams: readonly string[],
): Readonly<Record<string, unknown>> {
  const filled: Record<string, unknown> = {};
  for (const way of verb.startsAt[kind as Start] ?? []) {
    const [first = '', rest] = way.split('.');
    const field = verb.fields[first];
    // A group (an edge and a place on it) takes the thing as its edge.
    const part = rest ?? (field?.kind === 'group' ? 'edge' : undefined);
    const value = valueFor((part === undefined ? field : field?.fields?.[part])?.kind, {
      piece,
      name,
      seam: seams[0],
    });
    if (value === undefined) continue;
    const key = inSheet(first);
    filled[key] =
      part === undefined ? value : { ...(filled[key] as object | undefined), [inSheet(part)]: value };
  }
  return filled;
}

interface Names {
  readonly piece: string | undefined;
  readonly name: string | undefined;
  readonly seam: string | undefined;
}

function valueFor(kind: string | undefined, { piece, name, seam }: Names): unknown {
  if (kind === 'seam') return seam;
  if (kind === 'piece') return piece;
  if (kind === 'pieces') return piece === undefined ? undefined : [piece];
  if (kind === 'edge-of-piece') return name === undefined ? undefined : `${piece}.${name}`;
  if (kind === 'edges-of-pieces') return name === undefined ? undefined : [`${piece}.${name}`];
  return name;
}
