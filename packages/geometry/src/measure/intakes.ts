import { line } from '../curve/segment.js';
import { intersectPaths } from '../path/intersect.js';
import { type Path, pathEnd, pathOf, pathStart } from '../path/path.js';
import { pleatsOf } from '../pattern/outline.js';
import type { Piece, Pleat } from '../pattern/types.js';
import { containsPoint } from '../region/contains.js';
import { add, type Point, scale, subtract, unit } from '../vector.js';

/**
 * mm that the double-pointed darts of a piece and its pleats take up of a straight line across it, between two places
 * along the line. A pleat takes up its mouth's length down to where its stitching ends; below that it hangs open.
 */
export function intakesAcross(
  piece: Piece,
  across: Path,
  { from, to }: { readonly from: number; readonly to: number },
): number {
  const origin = pathStart(across);
  const direction = unit(subtract(pathEnd(across), origin));
  const folded = [
    ...piece.lines.filter(l => l.kind === 'dart').map(l => l.path),
    ...pleatsOf(piece)
      .filter(p => p.stitched > 0)
      .map(stitchedDown),
  ];
  return folded.reduce((taken, shape) => {
    const cuts = intersectPaths(across, shape)
      .map(c => c.alongA)
      .filter(a => a >= from && a <= to);
    const within = cuts.slice(1).map((cut, i) => {
      const middle = add(origin, scale(direction, (cut + cuts[i]!) / 2));
      return containsPoint(shape, middle) ? cut - cuts[i]! : 0;
    });
    return taken + within.reduce((sum, mm) => sum + mm, 0);
  }, 0);
}

/** The cloth of a pleat that is folded away: from its mouth square down to the end of its stitching. */
function stitchedDown({ mouth, stitched }: Pleat): Path {
  const from = pathStart(mouth),
    to = pathEnd(mouth);
  const along = unit(subtract(to, from));
  // The cloth lies to the right of travel, y pointing down.
  const down: Point = scale({ x: -along.y, y: along.x }, stitched);
  const corners = [from, to, add(to, down), add(from, down)];
  return pathOf(...corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!)));
}
