import { max, min } from '../arithmetic.js';
import { boxOfPoints, distanceToBox } from '../curve/bounds.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { type Cubic, isLine, pointAt, type Segment } from '../curve/segment.js';
import { requirePoint } from '../curve/sound.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { bracketedRoot, rootsInUnit, valueAt } from '../polynomial.js';
import { coincidenceTolerance } from '../tolerance.js';
import type { Point } from '../vector.js';

/**
 * Whether a point lies within a closed path, or on it (within `coincidenceTolerance`). Within: the path winds round
 * it, in either sense. A gap from the last point to the first is closed straight.
 */
export function containsPoint(path: Path, p: Point): boolean {
  requirePath(path);
  requirePoint(p);
  const onPath = path.segments.some(
    segment =>
      distanceToBox(boxOfPoints(segment), p) <= coincidenceTolerance &&
      nearestOnSegment(segment, p).distance <= coincidenceTolerance,
  );
  return onPath || windingNumber(path, p) !== 0;
}

/**
 * How often a closed path winds round a point that is not on it, clockwise positive as seen. Counts the crossings of
 * the ray to the right, with each piece that rises or falls owning its upper end only, so that no joint and no
 * highest point is counted twice. Source: the crossings rule, after D. Sunday, Practical Geometry Algorithms, 2021.
 */
function windingNumber(path: Path, p: Point): number {
  let winding = 0;
  let last = path.segments.at(-1)!.at(-1)!;
  for (const segment of path.segments) {
    winding += crossed(last.x - p.x, last.y - p.y, segment[0].x - p.x, segment[0].y - p.y);
    last = segment.at(-1)!;
    winding += crossingsToTheRight(segment, p);
  }
  return winding;
}

/** How often a segment crosses the ray from a point to the right: downwards counts 1, upwards −1. */
export function crossingsToTheRight(segment: Segment, p: Point): number {
  if (isLine(segment)) {
    const [a, b] = segment;
    return crossed(a.x - p.x, a.y - p.y, b.x - p.x, b.y - p.y);
  }
  const [a, b, c, d] = segment;
  if (max(a.x, b.x, c.x, d.x) < p.x) return 0;
  if (max(a.y, b.y, c.y, d.y) < p.y || min(a.y, b.y, c.y, d.y) > p.y) return 0;
  return crossedByCubic(segment, p);
}

/** +1 where a straight step relative to the point crosses the ray to the right downwards, −1 upwards, else 0. */
function crossed(x0: number, y0: number, x1: number, y1: number): number {
  if (y0 <= 0 === y1 <= 0) return 0;
  const right = x0 * y1 - x1 * y0;
  if (y1 > y0) return right > 0 ? 1 : 0;
  return right < 0 ? -1 : 0;
}

function crossedByCubic(cubic: Cubic, p: Point): number {
  const [p0, p1, p2, p3] = cubic;
  const c = [p0.y - p.y, 3 * (p1.y - p0.y), 3 * (p0.y - 2 * p1.y + p2.y), p3.y - p0.y + 3 * (p1.y - p2.y)];
  const stops = [...rootsInUnit([c[1]!, 2 * c[2]!, 3 * c[3]!]), 1];
  let winding = 0;
  let low = 0,
    isAbove = c[0]! <= 0;
  for (const high of stops) {
    // The end itself, so that the next segment, which starts there, sees it on the same side.
    const wasAbove = isAbove;
    isAbove = (high === 1 ? p3.y - p.y : valueAt(c, 3, high)) <= 0;
    // Between two stops the ray is crossed once. The point is off the path, so the side is never in doubt.
    if (wasAbove !== isAbove && pointAt(cubic, bracketedRoot(c, 3, low, high, wasAbove)).x > p.x)
      winding += wasAbove ? 1 : -1;
    low = high;
  }
  return winding;
}
