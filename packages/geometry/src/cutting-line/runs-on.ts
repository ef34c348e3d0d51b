import type { EdgeEnd } from '../joining/corner.js';
import { neighboursRunningOn } from '../joining/meetings.js';
import type { Edge, Pattern, Piece } from '../pattern/types.js';

/**
 * Whether, at an end of a sewn edge, the neighbour runs on across its seam (trade-notes §4): a neck across the
 * shoulder seam, an armhole across the side seam.
 */
export function neighbourRunsOn(
  pattern: Pattern,
  piece: Piece,
  edge: Edge,
  end: EdgeEnd,
  neighbour: Edge,
): boolean {
  const neighbourEnd: EdgeEnd = end === 'end' ? 'start' : 'end';
  return pattern.seams
    .filter(s => [...s.a, ...s.b].some(r => r.piece === piece.name && r.edge === edge.name))
    .flatMap(s => neighboursRunningOn(pattern, s))
    .flatMap(({ first, second }) => [first, second])
    .some(p => p.piece === piece.name && p.edge === neighbour.name && p.end === neighbourEnd);
}
