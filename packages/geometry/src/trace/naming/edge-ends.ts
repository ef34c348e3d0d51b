import { interiorAngle } from '../../joining/corner.js';
import { pathLength } from '../../path/length.js';
import { endTangent, pathEnd, pathStart, startTangent } from '../../path/path.js';
import { edgePath } from '../../pattern/outline.js';
import type { Piece } from '../../pattern/types.js';
import { joiningGap } from '../../tolerance.js';
import { distance } from '../../vector.js';

/** rad within a piece at the corner between an edge and the one that follows it; undefined where a dart lies between. */
export function cornerBetween(piece: Piece, edge: string, next: string): number | undefined {
  const [before, after] = [edgePath(piece, edge), edgePath(piece, next)];
  return distance(pathEnd(before), pathStart(after)) > joiningGap
    ? undefined
    : interiorAngle(endTangent(before), startTangent(after));
}

/** mm from the beginning of a line of edges to each of its notches, darts not counted. */
export function notchesAlong(piece: Piece, edges: readonly string[]): readonly number[] {
  let from = 0;
  return edges.flatMap(edge => {
    const start = from;
    from += pathLength(edgePath(piece, edge));
    return piece.notches.filter(notch => notch.edge === edge).map(notch => start + notch.at);
  });
}
