import { interiorAngle } from '../../joining/corner.js';
import { pathLength } from '../../path/length.js';
import { endTangent, pathEnd, pathStart, startTangent } from '../../path/path.js';
import { edgeNames, edgePath } from '../../pattern/outline.js';
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

/** Four square corners, and sides as long as those across from them. */
export function isRectangle(piece: Piece): boolean {
  const names = edgeNames(piece);
  const mm = names.map(name => pathLength(edgePath(piece, name)));
  return (
    names.length === 4 &&
    names.every((name, i) => {
      const corner = cornerBetween(piece, name, names[(i + 1) % 4]!);
      return (
        corner !== undefined &&
        Math.abs(corner - Math.PI / 2) < square &&
        Math.abs(mm[i]! - mm[(i + 2) % 4]!) < alikeSides
      );
    })
  );
}
/** mm, and rad */
const alikeSides = 0.5,
  square = 0.03;
