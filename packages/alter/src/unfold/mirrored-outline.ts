import type { Edge, Outline, OutlinePart, Piece } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { type Affine, mirror, subtract } from '@paperhinge/geometry/plane';
import { endingAt, startingAt } from '../hinge/ends.js';
import { offStraight } from '../hinge/off-straight.js';
import { movedPart } from '../moved-edges/moved-part.js';
import { refusal } from './tellings.js';

/** What becomes of an edge when its piece is opened about the fold. */
export type Fate =
  /** It met the fold with its end (or its start): both halves are one edge now, this half first (or last). */
  | { readonly crossing: 'end' | 'start' }
  /** It has a mirrored copy of another name. */
  | { readonly other: string };

/** The whole outline of a half piece, and how its parts are named. */
export interface OpenedOutline {
  readonly outline: Outline;
  readonly fold: Edge;
  readonly map: Affine;
  readonly fates: ReadonlyMap<string, Fate>;
  /** Names of the mirrored darts. */
  readonly darts: ReadonlyMap<string, string>;
}

/**
 * Opens an outline about its straight fold edge. The two edges that meet the fold run on across it and stay one edge
 * each; all others, and darts, get a mirrored copy named `other NAME`.
 * @throws PatternError `no-fold`, `several-folds`, `unfold-not-straight`
 */
export function openedOutline(piece: Piece): OpenedOutline {
  const fold = straightFold(piece);
  const from = pathStart(fold.path),
    to = pathEnd(fold.path);
  const map = mirror(from, subtract(to, from));
  const { parts } = piece.outline;
  const at = parts.indexOf(fold);
  const half = [...parts.slice(at + 1), ...parts.slice(0, at)];
  const first = half[0]!,
    last = half.at(-1)!;
  // An edge that runs from fold to fold would close on itself: it and its copy stay two.
  const crosses = (part: OutlinePart) => part.type === 'edge' && first.name !== last.name;
  const fates = new Map<string, Fate>();
  const darts = new Map<string, string>();
  const taken = new Set(parts.map(p => p.name));
  if (crosses(last)) fates.set(last.name, { crossing: 'end' });
  if (crosses(first)) fates.set(first.name, { crossing: 'start' });
  for (const part of half) {
    if (part.type !== 'edge') darts.set(part.name, unusedOther(part.name, taken));
    else if (!fates.has(part.name)) fates.set(part.name, { other: unusedOther(part.name, taken) });
  }
  const copies = half.map(part => mirrored(part, map, fates, darts)).reverse();
  if (fates.get(last.name) && crosses(last))
    mergeInto(half, half.length - 1, copies.shift() as Edge, 'after');
  if (fates.get(first.name) && crosses(first)) mergeInto(half, 0, copies.pop() as Edge, 'before');
  return { outline: { parts: [...half, ...copies] }, fold, map, fates, darts };
}

function straightFold(piece: Piece): Edge {
  const folds = piece.outline.parts.filter((p): p is Edge => p.type === 'edge' && p.kind === 'fold');
  const [fold] = folds;
  const where = { piece: piece.name };
  if (!fold) throw refusal('no-fold', { piece: where }, where);
  if (folds.length > 1)
    throw refusal('several-folds', { piece: where, folds: folds.map(({ name: edge }) => ({ edge })) }, where);
  const off = offStraight(fold.path);
  if (off > tolerances.fitTolerance)
    throw refusal(
      'unfold-not-straight',
      { edge: { ...where, edge: fold.name }, offMm: off },
      { ...where, edge: fold.name },
    );
  return fold;
}

/** `other NAME`, or `other NAME 2` … where that is taken: words, as a maker reads them on her pieces. */
export function unusedOther(name: string, taken: Set<string>): string {
  let other = `other ${name}`;
  for (let n = 2; taken.has(other); n++) other = `other ${name} ${n}`;
  taken.add(other);
  return other;
}

function mirrored(
  part: OutlinePart,
  map: Affine,
  fates: ReadonlyMap<string, Fate>,
  darts: ReadonlyMap<string, string>,
): OutlinePart {
  const fate = fates.get(part.name);
  const name =
    part.type !== 'edge' ? darts.get(part.name)! : fate && 'other' in fate ? fate.other : part.name;
  return { ...movedPart(part, map), name };
}

/** Joins an edge with its own mirror image at the fold, sharing the point there exactly. */
function mergeInto(half: OutlinePart[], index: number, copy: Edge, side: 'before' | 'after'): void {
  const own = half[index] as Edge;
  const [a, b] = side === 'after' ? [own, copy] : [copy, own];
  const shared = side === 'after' ? pathEnd(own.path) : pathStart(own.path);
  const path =
    side === 'after' ? joined(a.path, startingAt(b.path, shared)) : joined(endingAt(a.path, shared), b.path);
  const { start } = a.corners,
    { end } = b.corners;
  half[index] = { ...own, path, corners: { ...(start ? { start } : {}), ...(end ? { end } : {}) } };
}
