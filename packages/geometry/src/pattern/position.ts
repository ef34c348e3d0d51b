import { max, min } from '../arithmetic.js';
import { pathLength } from '../path/length.js';
import { shareRounding } from '../tolerance.js';
import { edgePath, neighboursOf } from './outline.js';
import { refusal } from './tellings.js';
import type { Piece } from './types.js';

/**
 * A place on an edge: a share of its stitching length in [0, 1] or a length in mm, counted from the edge's start
 * in clockwise order or from the end that touches the edge or dart `from`.
 */
export type EdgePosition = ({ readonly share: number } | { readonly mm: number }) & {
  readonly from?: string;
};

/**
 * Arc length in mm from the edge's start of a position on it.
 * @throws PatternError `unknown-edge`; `not-a-neighbour` where `from` shares no corner with the edge;
 *   `ambiguous-end` where it touches both; `position-off-edge` where the place lies beyond the edge
 */
export function resolvePosition(piece: Piece, edge: string, position: EdgePosition): number {
  const length = pathLength(edgePath(piece, edge));
  const along = 'share' in position ? position.share * length : position.mm;
  const where = { piece: piece.name, edge };
  if (!(along >= 0 && along <= length * (1 + shareRounding)))
    throw refusal('position-off-edge', { edge: where, alongMm: along, edgeMm: length }, where);
  if (position.from === undefined || position.from === 'start') return min(along, length);
  if (position.from === 'end') return max(0, length - along);
  const { start, end } = neighboursOf(piece, edge);
  const touchesStart = start === position.from,
    touchesEnd = end === position.from;
  if (touchesStart && touchesEnd) throw refusal('ambiguous-end', { edge: where, from: position.from }, where);
  if (!touchesStart && !touchesEnd)
    throw refusal('not-a-neighbour', { edge: where, from: position.from, neighbours: [start, end] }, where);
  return touchesStart ? min(along, length) : max(0, length - along);
}
