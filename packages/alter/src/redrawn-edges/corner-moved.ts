import { line, type Piece, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, reversedPath } from '@paperhinge/geometry/paths';
import { type Item, itemsOf, partOfRun, type Run } from '../moved-edges/composed.js';
import { runOn } from '../moved-edges/meet.js';
import { refusal } from './tellings.js';

/** An edge in one part, as an item of its piece's ring. */
export interface EdgeInRing {
  readonly piece: Piece;
  readonly items: readonly Item[];
  readonly index: number;
  readonly run: Run;
}

/** @throws PatternError `edge-in-two-parts` where a dart or an inset parts it; `unknown-edge` */
export function edgeInRing(piece: Piece, edge: string): EdgeInRing {
  const items = itemsOf(piece);
  const own = items.filter((item): item is Run => item.type === 'run' && item.edge.name === edge);
  const ref = { piece: piece.name, edge };
  if (own.length !== 1) throw refusal('edge-in-two-parts', { edge: ref }, ref);
  return { piece, items, index: items.indexOf(own[0]!), run: own[0]! };
}

/** A neighbour of an edge after the corner between them moved along it, and where the corner is now. */
export interface MovedCorner {
  readonly index: number;
  /** The neighbour's cloth, and what it runs on by, in the outline's order. */
  readonly beside: readonly Run[];
  readonly point: Point;
}

/**
 * A corner of an edge moved along the edge beside it: `by` mm into that edge, which is cut there, or outwards (negative),
 * where it runs on straight.
 * @throws PatternError `corner-beside-dart`; `corner-beyond-edge` where that edge is not so long
 */
export function cornerMoved(
  { piece, items, index, run }: EdgeInRing,
  at: 'start' | 'end',
  by: number,
): MovedCorner {
  const next = (index + (at === 'start' ? -1 : 1) + items.length) % items.length;
  const beside = items[next]!;
  const edge = { piece: piece.name, edge: run.edge.name };
  if (beside.type !== 'run')
    throw refusal(
      'corner-beside-dart',
      { edge, dart: { piece: piece.name, [beside.type]: beside.name } },
      edge,
    );
  const length = pathLength(beside.path);
  if (by >= length - tolerances.joiningGap)
    throw refusal(
      'corner-beyond-edge',
      { edge, beside: { edge: beside.edge.name }, byMm: by, roomMm: length },
      edge,
    );
  const point = (path: Run['path']) => (at === 'start' ? pathEnd(path) : pathStart(path));
  if (Math.abs(by) <= tolerances.coincidenceTolerance)
    return { index: next, beside: [beside], point: point(beside.path) };
  if (by > 0) {
    const cut = at === 'start' ? partOfRun(beside, 0, length - by) : partOfRun(beside, by, length);
    return { index: next, beside: [cut], point: point(cut.path) };
  }
  const corner = point(beside.path);
  const outwards = at === 'start' ? beside.path : reversedPath(beside.path);
  const end = pathEnd(runOn(outwards, -by));
  const grown = pathOf(at === 'start' ? line(corner, end) : line(end, corner));
  const added: Run = { type: 'run', edge: beside.edge, path: grown };
  return { index: next, beside: at === 'start' ? [beside, added] : [added, beside], point: end };
}

/** The ring with an edge drawn along a new path and the edges on either side of it as they are now. */
export function withEdgeRedrawn(
  { items, index }: EdgeInRing,
  fresh: readonly Item[],
  corners: readonly MovedCorner[],
): readonly Item[] {
  return items.flatMap((item, i): readonly Item[] => {
    if (i === index) return fresh;
    const corner = corners.find(c => c.index === i);
    return corner ? corner.beside : [item];
  });
}
