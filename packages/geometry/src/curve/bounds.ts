import { hypot, infinite, max, min } from '../arithmetic.js';
import { rootsInUnit } from '../polynomial.js';
import type { Point } from '../vector.js';
import { type Cubic, isLine, pointAt, type Segment } from './segment.js';
import { requireSegment } from './sound.js';

/** The smallest upright rectangle about something, in mm; `min` is its top left corner as seen. */
export interface Box {
  readonly min: Point;
  readonly max: Point;
}

/** The exact upright box of a segment: its ends and the places where it runs level or upright. */
export function boundsOf(segment: Segment): Box {
  requireSegment(segment);
  if (isLine(segment)) return boxOfPoints(segment);
  const x = extent(segment, 'x');
  const y = extent(segment, 'y');
  return { min: { x: x.low, y: y.low }, max: { x: x.high, y: y.high } };
}

function extent(curve: Cubic, axis: 'x' | 'y') {
  const p = curve[0][axis],
    q = curve[1][axis],
    r = curve[2][axis],
    s = curve[3][axis];
  let low = min(p, s),
    high = max(p, s);
  // A curve lies within the hull of its control points: nothing to look for if the inner two are within.
  if (q >= low && q <= high && r >= low && r <= high) return { low, high };
  for (const t of rootsInUnit([q - p, 2 * (p - 2 * q + r), s - p + 3 * (q - r)])) {
    const value = pointAt(curve, t)[axis];
    low = min(low, value);
    high = max(high, value);
  }
  return { low, high };
}

export function boxOfPoints(points: readonly Point[]): Box {
  let left = infinite,
    right = -infinite,
    top = left,
    bottom = right;
  for (const { x, y } of points) {
    left = min(left, x);
    right = max(right, x);
    top = min(top, y);
    bottom = max(bottom, y);
  }
  return { min: { x: left, y: top }, max: { x: right, y: bottom } };
}

/** The least box about two boxes. */
export const boxAround = (a: Box, b: Box): Box => boxOfPoints([a.min, a.max, b.min, b.max]);

/** Distance in mm from a point to a box; 0 within it. */
export const distanceToBox = ({ min: low, max: high }: Box, p: Point): number =>
  hypot(max(low.x - p.x, 0, p.x - high.x), max(low.y - p.y, 0, p.y - high.y));

/** Whether two boxes come within `margin` mm of each other in both directions. */
export const boxesMeet = (a: Box, b: Box, margin = 0): boolean =>
  a.min.x <= b.max.x + margin &&
  b.min.x <= a.max.x + margin &&
  a.min.y <= b.max.y + margin &&
  b.min.y <= a.max.y + margin;
