import type { Point } from '../vector.js';
import { type Cubic, pointAt } from './segment.js';

/** Where a cubic crosses itself: twice at one point, in mm, t0 < t1. */
export interface SelfCrossing {
  readonly t0: number;
  readonly t1: number;
  readonly point: Point;
}

/**
 * The one place where a cubic crosses itself, if it does. Closed form: with B(t) = a t³ + b t² + c t + d, two
 * parameters of one point have a (S² − P) + b S + c = 0 for their sum S and product P; the cross products with
 * a and with b give both. Source: derived; cf. Stone and DeRose, A Geometric Characterization of Parametric Cubic
 * Curves, 1989. A cusp, a curve that only closes (its ends meet), and one that doubles back on a line do not cross.
 */
export function selfCrossing(cubic: Cubic): SelfCrossing | undefined {
  const [p, q, r, s] = cubic;
  const cx = 3 * (q.x - p.x),
    cy = 3 * (q.y - p.y);
  const bx = 3 * (r.x - q.x) - cx,
    by = 3 * (r.y - q.y) - cy;
  const ax = s.x - p.x - cx - bx,
    ay = s.y - p.y - cy - by;
  const ab = ax * by - ay * bx;
  if (ab === 0) return undefined;
  const sum = -(ax * cy - ay * cx) / ab;
  const product = sum * sum - (bx * cy - by * cx) / ab;
  const square = sum * sum - 4 * product;
  if (!(square > 0)) return undefined;
  const half = Math.sqrt(square);
  // The larger root without cancellation, the other from the product.
  const far = (sum + (sum < 0 ? -half : half)) / 2;
  const near = far === 0 ? 0 : product / far;
  const t0 = Math.min(far, near),
    t1 = Math.max(far, near);
  if (!(t0 >= 0 && t1 <= 1) || (t0 === 0 && t1 === 1)) return undefined;
  return { t0, t1, point: pointAt(cubic, t0) };
}
