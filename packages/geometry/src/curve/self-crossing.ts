import { abs, max, min } from '../arithmetic.js';
import { crossRounding } from '../tolerance.js';
import type { Point } from '../vector.js';
import { powerForm, slopeX, slopeY, xAt, yAt } from './power-form.js';
import { type Cubic, pointAt } from './segment.js';
import { requireSegment } from './sound.js';

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
  requireSegment(cubic);
  const form = powerForm(cubic);
  const { x1: cx, x2: bx, x3: ax, y1: cy, y2: by, y3: ay } = form;
  const ab = ax * by - ay * bx;
  // A cubic on one line, to rounding, only doubles back.
  if (!(abs(ab) > crossRounding * (abs(ax * by) + abs(ay * bx)))) return undefined;
  const sum = -(ax * cy - ay * cx) / ab;
  const product = sum * sum - (bx * cy - by * cx) / ab;
  const square = sum * sum - 4 * product;
  if (!(square > 0)) return undefined;
  const half = Math.sqrt(square);
  // The larger root without cancellation, the other from the product.
  const far = (sum + (sum < 0 ? -half : half)) / 2;
  const near = far === 0 ? 0 : product / far;
  const first = min(far, near),
    second = max(far, near);
  if (!(first >= 0 && second <= 1) || (first === 0 && second === 1)) return undefined;
  // One step of Newton's method on B(t0) − B(t1) takes back what rounding lost where the loop is slight.
  const ux = slopeX(form, first),
    uy = slopeY(form, first),
    vx = slopeX(form, second),
    vy = slopeY(form, second);
  const ex = xAt(form, second) - xAt(form, first),
    ey = yAt(form, second) - yAt(form, first),
    det = ux * vy - uy * vx;
  const s0 = (ex * vy - ey * vx) / det,
    s1 = (ex * uy - ey * ux) / det;
  const sure = abs(s0) + abs(s1) < (second - first) / 4;
  const t0 = sure ? max(0, first + s0) : first,
    t1 = sure ? min(1, second + s1) : second;
  return { t0, t1, point: pointAt(cubic, t0) };
}
