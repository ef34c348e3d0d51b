import { rootsInUnit } from '../polynomial.js';
import { distance, type Point } from '../vector.js';
import { powerForm } from './power-form.js';
import { type Cubic, isLine, pointAt, type Segment } from './segment.js';
import { requirePoint, requireSegment } from './sound.js';

/** The point of a segment nearest to another point, and how far it is, in mm. */
export interface NearestOnSegment {
  readonly t: number;
  readonly point: Point;
  readonly distance: number;
}

/**
 * The nearest point of a segment, among all places where the way to it is square to the curve, and the ends.
 * For a cubic those places are the roots of a quintic, all of which are found ({@link rootsInUnit}), so the global
 * minimum is never missed. Of several equally near the first is given. Error: rounding, under 1e-9 mm for a metre.
 */
export function nearestOnSegment(segment: Segment, p: Point): NearestOnSegment {
  requireSegment(segment);
  requirePoint(p);
  let t = 0,
    best = distance(segment[0], p);
  const consider = (candidate: number): void => {
    const d = distance(pointAt(segment, candidate), p);
    if (d < best) {
      best = d;
      t = candidate;
    }
  };
  for (const candidate of isLine(segment) ? footOnLine(segment, p) : feetOnCubic(segment, p))
    consider(candidate);
  consider(1);
  return { t, point: pointAt(segment, t), distance: best };
}

function footOnLine([a, b]: readonly [Point, Point], p: Point): readonly number[] {
  const x = b.x - a.x,
    y = b.y - a.y,
    square = x * x + y * y;
  const t = square === 0 ? 0 : ((p.x - a.x) * x + (p.y - a.y) * y) / square;
  return t > 0 && t < 1 ? [t] : [];
}

/** Parameters at which (B(t) − p) · B′(t) = 0. */
function feetOnCubic(cubic: Cubic, p: Point): readonly number[] {
  const { x0, x1: cx, x2: bx, x3: ax, y0, y1: cy, y2: by, y3: ay } = powerForm(cubic);
  const dx = x0 - p.x,
    dy = y0 - p.y;
  return rootsInUnit([
    cx * dx + cy * dy,
    cx * cx + cy * cy + 2 * (bx * dx + by * dy),
    3 * (bx * cx + by * cy + ax * dx + ay * dy),
    4 * (ax * cx + ay * cy) + 2 * (bx * bx + by * by),
    5 * (ax * bx + ay * by),
    3 * (ax * ax + ay * ay),
  ]);
}
