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
  const moved = transformedPath(path, similarity([fixed, moving], [fixed, to]));
  return which === 'end' ? endingIn(startingIn(moved, fixed), to) : startingIn(endingIn(moved, fixed), to);
}

/** A line between two points: turned, and drawn larger or smaller where its own ends lie further apart or nearer. */
export function laidBetween(path: Path, from: Point, to: Point): Path {
  const moved = transformedPath(path, similarity([pathStart(path), pathEnd(path)], [from, to]));
  return endingIn(startingIn(moved, from), to);
}

/** Turned, moved and scaled so that two points come to lie where they should. */
function similarity([p, q]: readonly [Point, Point], [from, to]: readonly [Point, Point]): Affine {
  const u = subtract(q, p),
    v = subtract(to, from);
  const size = dot(u, u);
  const a = dot(u, v) / size,
    b = dot(rightOf(u), v) / size;
  return { a, b, c: -b, d: a, e: from.x - a * p.x + b * p.y, f: from.y - b * p.x - a * p.y };
}
