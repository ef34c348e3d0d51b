import type { Path, Point } from '@paperhinge/geometry';
import { pathEnd, pathStart, transformedPath } from '@paperhinge/geometry/paths';
import { type Affine, dot, rightOf, subtract } from '@paperhinge/geometry/plane';
import { endingIn, startingIn } from './meet.js';

/**
 * A line with one end moved and the other where it was, its shape kept: turned about that end and drawn larger or
 * smaller. A straight line stays straight, a curve keeps its fullness.
 */
export function withEndMoved(path: Path, which: 'start' | 'end', to: Point): Path {
  const [fixed, moving] =
    which === 'end' ? [pathStart(path), pathEnd(path)] : [pathEnd(path), pathStart(path)];
  const moved = transformedPath(path, carriedAbout(fixed, moving, to));
  return which === 'end' ? endingIn(startingIn(moved, fixed), to) : startingIn(endingIn(moved, fixed), to);
}

/** Turned and scaled about a fixed point so that another comes to lie where it should. */
function carriedAbout(fixed: Point, from: Point, to: Point): Affine {
  const u = subtract(from, fixed),
    v = subtract(to, fixed);
  const size = dot(u, u);
  const a = dot(u, v) / size,
    b = dot(rightOf(u), v) / size;
  return {
    a,
    b,
    c: -b,
    d: a,
    e: fixed.x - a * fixed.x + b * fixed.y,
    f: fixed.y - b * fixed.x - a * fixed.y,
  };
}
