import type { Path, Point } from '@paperhinge/geometry';
import { pathEnd, pathStart, transformedPath } from '@paperhinge/geometry/paths';
import {
  type Affine,
  compose,
  distance,
  dot,
  rightOf,
  subtract,
  translation,
} from '@paperhinge/geometry/plane';
import { withEndMoved } from '../moved-edges/end-moved.js';
import { endingIn, startingIn } from '../moved-edges/meet.js';

/**
 * A line with both ends moved, its shape stretched or narrowed along the grain and across it: what ran level or along
 * the grain still does, so that an armhole stays square to shoulder and side. Where its ends lie so nearly on one level
 * that this would distort it, it is turned and scaled as a whole instead.
 *
 * @param down unit direction of the grain
 */
export function withEndsMoved(path: Path, from: Point, to: Point, down: Point): Path {
  const [a, b] = [pathStart(path), pathEnd(path)];
  const across = rightOf(down);
  const was = subtract(b, a),
    is = subtract(to, from);
  const rates = [across, down].map(way => dot(is, way) / dot(was, way));
  const fits = rates.every(rate => rate > 1 / mostStretch && rate < mostStretch);
  if (!fits) return withEndMoved(withEndMoved(path, 'start', from), 'end', to);
  const [k, m] = rates as [number, number];
  // In the frame of grain and cross grain each way has its own scale.
  const map: Affine = {
    a: k * across.x * across.x + m * down.x * down.x,
    b: k * across.x * across.y + m * down.x * down.y,
    c: k * across.x * across.y + m * down.x * down.y,
    d: k * across.y * across.y + m * down.y * down.y,
    e: 0,
    f: 0,
  };
  const moved = transformedPath(
    path,
    compose(compose(translation({ x: -a.x, y: -a.y }), map), translation(from)),
  );
  return distance(from, to) === 0 ? moved : endingIn(startingIn(moved, from), to);
}

/** A line is stretched or narrowed by this at most, either way, before it is turned as a whole instead. */
const mostStretch = 2;
