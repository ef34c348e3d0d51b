import { type Path, pathOf } from '@paperhinge/geometry';
import { max } from '@paperhinge/geometry/internal';
import { nearestOnPath, pathEnd, pathStart } from '@paperhinge/geometry/paths';

/** mm that a path strays at most from the straight line between its ends; of a curve, an upper bound (its control points). */
export function offStraight(path: Path): number {
  const chord = pathOf([pathStart(path), pathEnd(path)]);
  return max(...path.segments.flat().map(p => nearestOnPath(chord, p).distance));
}
