import { joinedLinesOf } from '../measure/joined-lines.js';
import type { Edge, Pattern, Piece } from '../pattern/types.js';

/**
 * Whether, at an end of a sewn edge, the neighbour runs on across its seam (trade-notes §4): a neck across the
 * shoulder seam, an armhole across the side seam.
 */
export function neighbourRunsOn(
  pattern: Pattern,
  piece: Piece,
  edge: Edge,
  _end: 'start' | 'end',
  neighbour: Edge,
): boolean {
  const isNeighbour = (r: { readonly piece: string; readonly edge: string }): boolean =>
    r.piece === piece.name && r.edge === neighbour.name;
  return pattern.seams
    .filter(s => [...s.a, ...s.b].some(r => r.piece === piece.name && r.edge === edge.name))
    .some(s =>
      joinedLinesOf(pattern, s, 0).some(line => isNeighbour(line.first) || isNeighbour(line.second)),
    );
}
