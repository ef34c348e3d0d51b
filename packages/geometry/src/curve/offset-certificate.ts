import { footStep, restRounding } from '../tolerance.js';
import { type PowerForm, xAt, yAt } from './power-form.js';

/**
 * Whether a fitted cubic F lies within `tolerance` mm of the parallel at distance |d| of a cubic C between two
 * parameters: proven, apart from rounding, not sampled. `sense` is −1 where the parallel runs against the curve.
 *
 * F and C are cut at matching places: F at u, C at the foot of F(u). On each pair of pieces the difference
 * D(v) = F − C is a cubic, so |D|² is bounded by its seven Bernstein coefficients. |D| is the distance to a point
 * near the foot, not to the foot; with g(t) = |F(u) − C(t)|² and g″ ≥ 2m the two differ in square by no more than
 * (D · C′)² / m, and both factors are again bounded by Bernstein coefficients. As feet follow each other in order,
 * every point of the parallel is near F too. Where a bound is not sharp enough, the pair is halved. With d = 0 it
 * is C itself that F is held against.
 * Source: derived; the convex hull property, and strong convexity of g (1 + κ d ≠ 0).
 */
export function isParallel(
  f: PowerForm,
  c: PowerForm,
  t0: number,
  t1: number,
  d: number,
  sense: number,
  tolerance: number,
): boolean {
  const low = Math.abs(d) - tolerance,
    high = Math.abs(d) + tolerance;
  // Within the tolerance of the curve itself nothing is too near.
  const least = low > 0 ? low * low : Number.NEGATIVE_INFINITY;
  const check: Check = { f, c, low: least, high: high * high, reach: tolerance, sense, left: mostPairs };
  let u = 0,
    t = t0;
  for (let i = 1; i <= firstPairs; i++) {
    const nextU = i / firstPairs;
    const nextT = i === firstPairs ? t1 : foot(check, nextU, t + (t1 - t) / (firstPairs - i + 1), t, t1);
    if (!pairHolds(check, u, nextU, t, nextT, 0)) return false;
    u = nextU;
    t = nextT;
  }
  return true;
}

interface Check {
  readonly f: PowerForm;
  readonly c: PowerForm;
  readonly low: number;
  readonly high: number;
  readonly reach: number;
  readonly sense: number;
  left: number;
}

const firstPairs = 2;
/** A fit that needs more pairs than this is refused, and cut. */
const mostPairs = 200;
/** Halvings: two to this is more than the longest curve over the tolerance. */
const deepest = 26;

/** Newton's method for the parameter of C, within its bounds, at which the way to F(u) is square to C. */
function foot({ f, c }: Check, u: number, guess: number, low: number, high: number): number {
  const px = xAt(f, u),
    py = yAt(f, u);
  let t = guess;
  for (let i = 0; i < 8; i++) {
    const x = ((c.x3 * t + c.x2) * t + c.x1) * t + c.x0 - px,
      y = ((c.y3 * t + c.y2) * t + c.y1) * t + c.y0 - py;
    const dx = (3 * c.x3 * t + 2 * c.x2) * t + c.x1,
      dy = (3 * c.y3 * t + 2 * c.y2) * t + c.y1;
    const slope = dx * dx + dy * dy + x * (6 * c.x3 * t + 2 * c.x2) + y * (6 * c.y3 * t + 2 * c.y2);
    const step = (x * dx + y * dy) / slope;
    const next = Math.min(high, Math.max(low, t - step));
    const moved = Math.abs(next - t);
    t = next;
    if (!(moved > footStep)) break;
  }
  return Number.isNaN(t) ? guess : t;
}

function pairHolds(check: Check, u0: number, u1: number, t0: number, t1: number, depth: number): boolean {
  const { f, c, sense } = check;
  if (--check.left < 0) return false;
  const hu = (u1 - u0) / 3,
    ht = (t1 - t0) / 3;
  // Control points of both pieces: ends, and ends moved along a third of the end derivative.
  const fx0 = xAt(f, u0),
    fy0 = yAt(f, u0),
    fx3 = xAt(f, u1),
    fy3 = yAt(f, u1);
  const fx1 = fx0 + ((3 * f.x3 * u0 + 2 * f.x2) * u0 + f.x1) * hu,
    fy1 = fy0 + ((3 * f.y3 * u0 + 2 * f.y2) * u0 + f.y1) * hu;
  const fx2 = fx3 - ((3 * f.x3 * u1 + 2 * f.x2) * u1 + f.x1) * hu,
    fy2 = fy3 - ((3 * f.y3 * u1 + 2 * f.y2) * u1 + f.y1) * hu;
  const cx0 = xAt(c, t0),
    cy0 = yAt(c, t0),
    cx3 = xAt(c, t1),
    cy3 = yAt(c, t1);
  const ax = ((3 * c.x3 * t0 + 2 * c.x2) * t0 + c.x1) * ht,
    ay = ((3 * c.y3 * t0 + 2 * c.y2) * t0 + c.y1) * ht;
  const bx = ((3 * c.x3 * t1 + 2 * c.x2) * t1 + c.x1) * ht,
    by = ((3 * c.y3 * t1 + 2 * c.y2) * t1 + c.y1) * ht;
  const x0 = fx0 - cx0,
    y0 = fy0 - cy0,
    x3 = fx3 - cx3,
    y3 = fy3 - cy3;
  const x1 = fx1 - cx0 - ax,
    y1 = fy1 - cy0 - ay,
    x2 = fx2 - cx3 + bx,
    y2 = fy2 - cy3 + by;

  // The ends are matched as well as can be: if they are off, so is the fit.
  const first = x0 * x0 + y0 * y0,
    last = x3 * x3 + y3 * y3;
  if (first < check.low || first > check.high || last < check.low || last > check.high) return false;

  // Pieces smaller than the tolerance are near whatever they do.
  const middleX = cx3 - bx - cx0 - ax,
    middleY = cy3 - by - cy0 - ay;
  const sizeC =
    Math.sqrt(ax * ax + ay * ay) +
    Math.sqrt(bx * bx + by * by) +
    Math.sqrt(middleX * middleX + middleY * middleY);
  const sizeF =
    Math.abs(fx1 - fx0) +
    Math.abs(fy1 - fy0) +
    Math.abs(fx2 - fx1) +
    Math.abs(fy2 - fy1) +
    Math.abs(fx3 - fx2) +
    Math.abs(fy3 - fy2);
  if (depth > 0 && (sizeC + sizeF) * 4 < check.reach) return true;

  // |D|², Bernstein coefficients of degree six.
  const g1 = x0 * x1 + y0 * y1;
  const g2 = (2 * (x0 * x2 + y0 * y2) + 3 * (x1 * x1 + y1 * y1)) / 5;
  const g3 = (x0 * x3 + y0 * y3 + 9 * (x1 * x2 + y1 * y2)) / 10;
  const g4 = (2 * (x1 * x3 + y1 * y3) + 3 * (x2 * x2 + y2 * y2)) / 5;
  const g5 = x2 * x3 + y2 * y3;
  const least = Math.min(first, g1, g2, g3, g4, g5, last),
    most = Math.max(first, g1, g2, g3, g4, g5, last);

  // C′ / 3 is the quadratic a, m, b; D · C′ / 3 has degree five.
  const e0 = x0 * ax + y0 * ay;
  const e1 = (2 * (x0 * middleX + y0 * middleY) + 3 * (x1 * ax + y1 * ay)) / 5;
  const e2 = (x0 * bx + y0 * by + 6 * (x1 * middleX + y1 * middleY) + 3 * (x2 * ax + y2 * ay)) / 10;
  const e3 = (3 * (x1 * bx + y1 * by) + 6 * (x2 * middleX + y2 * middleY) + x3 * ax + y3 * ay) / 10;
  const e4 = (3 * (x2 * bx + y2 * by) + 2 * (x3 * middleX + y3 * middleY)) / 5;
  const e5 = x3 * bx + y3 * by;
  const slant =
    3 * Math.max(Math.abs(e0), Math.abs(e1), Math.abs(e2), Math.abs(e3), Math.abs(e4), Math.abs(e5));

  // g″ / 2 = |C′|² − (F − C) · C″ for any two points of the pieces: degree four on the diagonal, the rest by size.
  const px = 6 * (middleX - ax),
    py = 6 * (middleY - ay),
    qx = 6 * (bx - middleX),
    qy = 6 * (by - middleY);
  const s0 = 9 * (ax * ax + ay * ay),
    s1 = 9 * (ax * middleX + ay * middleY),
    s4 = 9 * (bx * bx + by * by),
    s3 = 9 * (bx * middleX + by * middleY);
  const s2 = 3 * (ax * bx + ay * by) + 6 * (middleX * middleX + middleY * middleY);
  const k0 = s0 - (x0 * px + y0 * py),
    k4 = s4 - (x3 * qx + y3 * qy);
  const k1 = s1 - (3 * (x1 * px + y1 * py) + x0 * qx + y0 * qy) / 4;
  const k2 = s2 - (x2 * px + y2 * py + x1 * qx + y1 * qy) / 2;
  const k3 = s3 - (x3 * px + y3 * py + 3 * (x2 * qx + y2 * qy)) / 4;
  const spread = sizeC * Math.max(Math.sqrt(px * px + py * py), Math.sqrt(qx * qx + qy * qy));
  const lowest = Math.min(k0, k1, k2, k3, k4) - spread,
    highest = Math.max(k0, k1, k2, k3, k4) + spread;
  const steep = sense > 0 ? lowest : -highest;
  // Near a cusp of the parallel g″ is next to nothing, and so is the parallel: its speed is g″ / 2 |C′|. Where both
  // it and F are shorter than what is left of the tolerance, they are near whatever they do.
  const chordX = cx3 - cx0,
    chordY = cy3 - cy0,
    chord = Math.sqrt(chordX * chordX + chordY * chordY);
  const slowest =
    (3 *
      Math.min(ax * chordX + ay * chordY, middleX * chordX + middleY * chordY, bx * chordX + by * chordY)) /
    chord;
  if (slowest > 0 && (sizeF + Math.max(-lowest, highest) / slowest) * 4 < check.reach) return true;
  const slip = (slant * slant) / steep;
  const sound =
    steep > 0 &&
    (sense > 0
      ? least - slip >= check.low && most <= check.high
      : least >= check.low && most + slip <= check.high);
  // F′ · C′ of one sign, but for rounding where C rests: the foot moves one way.
  const leastAlong = (x: number, y: number): number =>
    Math.min(sense * (x * ax + y * ay), sense * (x * middleX + y * middleY), sense * (x * bx + y * by));
  const order = Math.min(
    leastAlong(fx1 - fx0, fy1 - fy0),
    leastAlong(fx2 - fx1, fy2 - fy1),
    leastAlong(fx3 - fx2, fy3 - fy2),
  );
  if (sound && order >= -sizeF * restRounding) return true;
  if (depth >= deepest) return false;
  const u = (u0 + u1) / 2,
    t = foot(check, u, (t0 + t1) / 2, t0, t1);
  return pairHolds(check, u0, u, t0, t, depth + 1) && pairHolds(check, u, u1, t, t1, depth + 1);
}
