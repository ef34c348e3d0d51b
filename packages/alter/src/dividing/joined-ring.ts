import { type Dart, type Edge, type Piece, roleOf } from '@paperhinge/geometry';
import { type Affine, determinant } from '@paperhinge/geometry/plane';
import { bridgedRing } from '../moved-edges/bridged-ring.js';
import { type Item, itemsOf, type Run } from '../moved-edges/composed.js';
import { movedPart, movedPath } from '../moved-edges/moved-part.js';

/** The ring of two pieces laid seam on seam, and the names that edges and darts of the second took. */
export interface JoinedRing {
  readonly items: readonly Item[];
  /** Old name to new, of what is called otherwise on the joined piece. */
  readonly renamed: ReadonlyMap<string, string>;
}

/** The outline of a piece from after an edge round to before it. */
function around(items: readonly Item[], edge: string): readonly Item[] {
  const i = items.findIndex(item => item.type === 'run' && item.edge.name === edge);
  return [...items.slice(i + 1), ...items.slice(0, i)];
}

/** The outline of a piece laid elsewhere, clockwise as it lies there, from after an edge round to before it. */
export function laidRing(piece: Piece, edge: string, motion: Affine): readonly Item[] {
  const laid = itemsOf(piece).map(item => moved(item, motion));
  return around(determinant(motion) < 0 ? [...laid].reverse() : laid, edge);
}

/**
 * Both outlines without the seam's edges, one after the other. Where a line of the first runs on into one of the second
 * across the end of the seam (an armhole into an armhole, fold into fold) they are one edge; other names that both have
 * get the second piece's name behind theirs.
 */
export function joinedRing(
  first: { readonly piece: Piece; readonly edge: string },
  second: { readonly piece: Piece; readonly edge: string },
  motion: Affine,
  rest?: RestDart,
): JoinedRing {
  const own = around(itemsOf(first.piece), first.edge);
  const other = laidRing(second.piece, second.edge, motion);
  const names = new Map<string, string>();
  for (const [mine, theirs] of [
    [own.at(-1), other[0]],
    [own[0], other.at(-1)],
  ] as const)
    if (runsOn(mine, theirs)) names.set(nameOf(theirs!), nameOf(mine!));
  const taken = new Set(first.piece.outline.parts.map(part => part.name));
  for (const item of other) {
    const name = nameOf(item);
    if (names.has(name)) continue;
    names.set(name, taken.has(name) ? freeName(`${name} ${second.piece.name}`, taken) : name);
    taken.add(names.get(name)!);
  }
  const named = other.map(item => withName(item, names.get(nameOf(item))!));
  const items = rest?.atStart
    ? [...own, rest.dart, ...named]
    : [...own, ...named, ...(rest ? [rest.dart] : [])];
  return { items: bridgedRing(items), renamed: names };
}

/** What of a seam is not joined, as a dart; `atStart`: where the first piece's edge has its start, clockwise. */
export interface RestDart {
  readonly dart: Dart;
  readonly atStart: boolean;
}

const nameOf = (item: Item): string => (item.type === 'run' ? item.edge.name : item.name);

const withName = (item: Item, name: string): Item =>
  item.type === 'run' ? { ...item, edge: { ...item.edge, name } } : { ...item, name };

/** A name that is not taken: the wanted one, or with a number behind it. */
export function freeName(wanted: string, taken: ReadonlySet<string>): string {
  let name = wanted;
  for (let n = 2; taken.has(name); n++) name = `${wanted} ${n}`;
  return name;
}

/** Lines of one sort on either side of the seam's end are one line in the joined piece. */
function runsOn(a: Item | undefined, b: Item | undefined): boolean {
  if (a?.type !== 'run' || b?.type !== 'run' || a.edge.kind !== b.edge.kind) return false;
  const [p, q]: readonly (Edge['role'] | undefined)[] = [roleOf(a.edge), roleOf(b.edge)];
  return a.edge.kind === 'fold' || a.edge.name === b.edge.name || (p !== undefined && p === q);
}

function moved(item: Item, motion: Affine): Item {
  if (item.type !== 'run') return movedPart(item, motion) as Item;
  const { corners } = movedPart(item.edge, motion) as Edge;
  const run: Run = { ...item, edge: { ...item.edge, corners }, path: movedPath(item.path, motion) };
  return determinant(motion) < 0 ? { ...run, turned: true } : run;
}
