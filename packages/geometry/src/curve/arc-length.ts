import { hypot, infinite } from '../arithmetic.js';
import { type GaussRule, gaussRule } from '../quadrature.js';
import { narrowestStretch, quadratureTolerance } from '../tolerance.js';
import { distance } from '../vector.js';
import { type Cubic, isLine, type Segment } from './segment.js';
import { requireNumber, requireParameter, requirePlace, requireSegment } from './sound.js';

/**
 * Length of a segment along the curve, in mm.
 *
 * Error: under 1e-9 mm up to a metre, proven apart from rounding, whatever the curve (cusps, hairpins, loops,
 * turn-backs). The speed |B′(t)| is the square root of a product over the two complex zeros z of x′ + i y′ and
 * their conjugates, so it is analytic but for these. An n-point Gauss rule on a panel of width w errs by at most
 * (32/15) w M ρ^(−2n) / (1 − ρ^(−2)), where ρ is the sum of the half axes of the largest ellipse about the panel
 * free of zeros and M the largest speed on it; both follow from the zeros in closed form. The cheapest rule that
 * errs by no more than `quadratureTolerance` is taken; where none does, the panel is cut at or towards the zero.
 * Source: L. N. Trefethen, Approximation Theory and Approximation Practice, 2013, theorem 19.3.
 */
export function segmentLength(segment: Segment): number {
  requireSegment(segment);
  return isLine(segment) ? distance(segment[0], segment[1]) : integrate(speedOf(segment), 0, 1);
}

/**
 * Length in mm of the part of a segment between two parameters, t0 <= t1, each clamped to [0, 1]; error as
 * {@link segmentLength}.
 */
export function lengthBetween(segment: Segment, t0: number, t1: number): number {
  requireParameter(t0);
  requirePlace(segment, t1);
  const from = Math.max(0, t0),
    to = Math.min(1, t1);
  if (!(to > from)) return 0;
  return isLine(segment)
    ? distance(segment[0], segment[1]) * (to - from)
    : integrate(speedOf(segment), from, to);
}

/**
 * The parameter in [0, 1] at which the part before it is `length` mm long; clamped to the ends. Steps of
 * the inverse Taylor series of the length, kept within a bracket; each integrates over its own step only.
 * Error: under 1e-9 mm along the curve.
 */
export function parameterAtLength(segment: Segment, length: number): number {
  requireNumber(length, 'length');
  requireSegment(segment);
  if (!(length > 0)) return 0;
  if (isLine(segment)) {
    const whole = distance(segment[0], segment[1]);
    return length < whole ? length / whole : 1;
  }
  const speed = speedOf(segment),
    lead = Math.sqrt(speed.lead2);
  let low = 0,
    high = 1,
    beyond = false;
  let t = Math.min(1, length / roughLength(segment));
  let excess = integrate(speed, 0, t) - length;
  for (let i = 0; i < mostSteps; i++) {
    if (excess > 0) {
      high = t;
      beyond = true;
    } else {
      if (t >= 1) return 1;
      low = t;
    }
    const x = (speed.ax * t + speed.bx) * t + speed.cx,
      y = (speed.ay * t + speed.by) * t + speed.cy;
    const square = x * x + y * y,
      rate = Math.sqrt(square);
    const dx = 2 * speed.ax * t + speed.bx,
      dy = 2 * speed.ay * t + speed.by;
    // The inverse of the length's Taylor series, to the third order; half and a sixth of its derivatives over the first.
    const first = excess / rate;
    const second = (x * dx + y * dy) / (2 * square);
    const spin = dx * dx + dy * dy + 2 * (x * speed.ax + y * speed.ay);
    const third = spin / (6 * square) - (2 / 3) * second * second;
    const bend = first * second,
      bow = first * first * third;
    const series = Math.abs(bend) < 1 / 4 && Math.abs(bow) < 1 / 4;
    let next = t - first * (series ? 1 + bend + 2 * bend * bend - bow : 1);
    // What is left is of the fourth order in the step, measured by how fast the derivative turns and grows over it.
    const order2 = (first * first * (dx * dx + dy * dy + rate * lead)) / square;
    if (Math.abs(excess) * order2 * Math.sqrt(order2) <= quadratureTolerance && next >= low && next <= high)
      return next;
    if (Math.abs(excess) <= quadratureTolerance) return t;
    if (!(next > low)) next = (low + high) / 2;
    if (!(next < high)) next = beyond ? (low + high) / 2 : 1;
    if (next === t || (beyond && (next <= low || next >= high))) return t;
    excess += next > t ? integrate(speed, t, next) : -integrate(speed, next, t);
    t = next;
  }
  return t;
}

/** Halving alone takes 52, and at least every second step halves. */
const mostSteps = 120;

/** Between chord and control polygon; a start for Newton's method. */
const roughLength = ([p, q, r, s]: Cubic): number =>
  (distance(p, q) + distance(q, r) + distance(r, s) + distance(p, s)) / 2;

/** B′ as (ax t² + bx t + cx, ...), and the complex zeros of x′ + i y′, by which the speed is known in the plane. */
interface Speed {
  readonly ax: number;
  readonly bx: number;
  readonly cx: number;
  readonly ay: number;
  readonly by: number;
  readonly cy: number;
  /** Real parts and sizes of the imaginary parts of the two zeros; infinite where there is none. */
  readonly re0: number;
  readonly im0: number;
  readonly re1: number;
  readonly im1: number;
  /** Squared sizes of the leading coefficient a and of the root of the discriminant, a times how far apart the zeros are. */
  readonly lead2: number;
  readonly spread2: number;
}

function speedOf([p, q, r, s]: Cubic): Speed {
  const cx = 3 * (q.x - p.x),
    cy = 3 * (q.y - p.y);
  const bx = 6 * (r.x - 2 * q.x + p.x),
    by = 6 * (r.y - 2 * q.y + p.y);
  const ax = 3 * (s.x - p.x + 3 * (q.x - r.x)),
    ay = 3 * (s.y - p.y + 3 * (q.y - r.y));
  // The complex quadratic a t² + b t + c, by the formula that does not cancel.
  const dx = bx * bx - by * by - 4 * (ax * cx - ay * cy),
    dy = 2 * bx * by - 4 * (ax * cy + ay * cx);
  const spread2 = Math.sqrt(dx * dx + dy * dy);
  let rx = Math.sqrt((spread2 + Math.abs(dx)) / 2),
    ry = rx === 0 ? 0 : dy / (2 * rx);
  if (dx < 0) {
    const swap = Math.abs(ry);
    ry = dy < 0 ? -rx : rx;
    rx = swap;
  }
  const way = bx * rx + by * ry < 0 ? -1 : 1;
  const qx = (bx + way * rx) / -2,
    qy = (by + way * ry) / -2;
  const qq = qx * qx + qy * qy,
    lead2 = ax * ax + ay * ay;
  return {
    ax,
    bx,
    cx,
    ay,
    by,
    cy,
    re0: lead2 > 0 ? (qx * ax + qy * ay) / lead2 : infinite,
    im0: lead2 > 0 ? Math.abs((qy * ax - qx * ay) / lead2) : 0,
    re1: qq > 0 ? (cx * qx + cy * qy) / qq : lead2 > 0 ? 0 : infinite,
    im1: qq > 0 ? Math.abs((cy * qx - cx * qy) / qq) : 0,
    lead2,
    spread2,
  };
}

function integrate(speed: Speed, from: number, to: number): number {
  const { re0, im0, re1, im1, lead2, spread2 } = speed;
  const width = to - from,
    width2 = width * width;
  const slight = tolerance2 / (2 * width2) / (lead2 * width2 + spread2);
  const sum0 = ellipseThrough(re0, im0, from, to, slight),
    sum1 = ellipseThrough(re1, im1, from, to, slight);
  const axis = Math.min(sum0, sum1, farthest * width);
  const h = axis / width;
  const rho = h + Math.sqrt(Math.max(0, h * h - 1));
  // All squared, which saves roots. At a distance r from the nearer zero the speed is at most |a| r² + |a| r times
  // how far apart the zeros are; and (p + q)² is at most 2 p² + 2 q².
  const r2 = 1 / (rho * rho),
    r4 = r2 * r2,
    r8 = r4 * r4;
  const most2 = 2 * width2 * axis * axis * (lead2 * axis * axis + spread2);
  const allowed2 = most2 > tolerance2 ? (tolerance2 * (1 - r2) * (1 - r2)) / (trefethen2 * most2) : 1;
  let error2 = 1;
  for (const rule of rules) {
    // Four points more than the rule before.
    error2 *= r8 * r8;
    if (error2 <= allowed2) return panel(speed, from, to, rule);
  }
  if (!(width > narrowestStretch)) return panel(speed, from, to, rules[0]!);
  const cut = sum0 <= sum1 ? cutTowards(re0, im0, from, to) : cutTowards(re1, im1, from, to);
  return integrate(speed, from, cut) + integrate(speed, cut, to);
}

/** Of 4, 8, ... 24 points. */
const rules = /* @__PURE__ */ [4, 8, 12, 16, 20, 24].map(gaussRule);
const tolerance2 = quadratureTolerance ** 2;
const trefethen2 = (32 / 15) ** 2;
/** In panel widths. Where no zero is near the ellipse is bounded all the same: four nodes do. */
const farthest = 64;

/** The sum of a zero's distances from the ends of the panel: the axis of the ellipse about them that it lies on. */
function ellipseThrough(re: number, im: number, from: number, to: number, slight: number): number {
  const before = re - from,
    beyond = re - to,
    im2 = im * im;
  // A real zero that is not within the panel is no bar: the speed is its distance times something analytic.
  if (im2 <= slight && before * beyond >= 0) return infinite;
  return Math.sqrt(before * before + im2) + Math.sqrt(beyond * beyond + im2);
}

/** At a zero's real part within the panel; beyond an end, four times as far in as the zero is off, at most half way. */
function cutTowards(re: number, im: number, from: number, to: number): number {
  const width = to - from,
    least = width * leastShare;
  if (re > from && re < to) return Math.min(to - least, Math.max(from + least, re));
  const before = hypot(re - from, im),
    beyond = hypot(re - to, im);
  const step = Math.min(width / 2, Math.max(least, 4 * Math.min(before, beyond)));
  return before <= beyond ? from + step : to - step;
}

/** A cut nearer to an end would be lost to rounding in a panel near the narrowestStretch. */
const leastShare = 1 / 1024;

function panel(
  { ax, bx, cx, ay, by, cy }: Speed,
  from: number,
  to: number,
  { nodes, weights }: GaussRule,
): number {
  const half = (to - from) / 2,
    middle = (from + to) / 2;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const step = half * nodes[i]!;
    const t = middle - step,
      u = middle + step;
    const x = (ax * t + bx) * t + cx,
      y = (ay * t + by) * t + cy;
    const v = (ax * u + bx) * u + cx,
      w = (ay * u + by) * u + cy;
    sum += weights[i]! * (Math.sqrt(x * x + y * y) + Math.sqrt(v * v + w * w));
  }
  return half * sum;
}
