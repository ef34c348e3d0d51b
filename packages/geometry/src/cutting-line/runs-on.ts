import type { EdgeEnd } from '../joining/corner.js';
import { neighboursRunningOn } from '../joining/meetings.js';
import type { Edge, Pattern, Piece } from '../pattern/types.js';

/**
 * Whether a sewn edge's neighbour runs on across its seam from that end of the neighbour (trade-notes §4): a neck across
 * the shoulder seam, an armhole across the side seam.
 */
export function neighbourRunsOn(pattern: Pattern, piece: Piece, neighbour: Edge, end: EdgeEnd): boolean {
  return pattern.seams
    .filter(s => [...s.a, ...s.b].some(r => r.piece === piece.name))
    .flatMap(s => neighboursRunningOn(pattern, s))
    .flatMap(({ first, second }) => [first, second])
    .some(p => p.piece === piece.name && p.edge === neighbour.name && p.end === end);
}
