import type { EdgeEnd } from '../joining/corner.js';
import { neighboursRunningOn } from '../joining/meetings.js';
import type { Edge, Pattern, Piece, Seam } from '../pattern/types.js';

/**
 * Whether a sewn edge's neighbour runs on across its seam from that end of the neighbour (trade-notes §4): a neck across
 * the shoulder seam, an armhole across the side seam.
 */
export function neighbourRunsOn(pattern: Pattern, piece: Piece, neighbour: Edge, end: EdgeEnd): boolean {
  return seamsOf(pattern, piece)
    .flatMap(s => neighboursRunningOn(pattern, s))
    .flatMap(({ first, second }) => [first, second])
    .some(p => p.piece === piece.name && p.edge === neighbour.name && p.end === end);
}

/** The seams that a piece is sewn in. */
export const seamsOf = ({ seams }: Pattern, { name }: Piece): readonly Seam[] =>
  seams.filter(({ a, b }) => [...a, ...b].some(run => run.piece === name));
