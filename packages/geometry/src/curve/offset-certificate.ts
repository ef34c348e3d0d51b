import { footStep, restRounding } from '../tolerance.js';
import {
  type Bounds,
  bendBounds,
  type Controls,
  controlsOf,
  difference,
  type Legs,
  leastAlong,
  legsOf,
  longest,
  slantBound,
  squareBounds,
} from './pair-bounds.js';
import { type PowerForm, xAt, yAt } from './power-form.js';

/**
 * Whether a fitted cubic F lies within `tolerance` mm of the parallel of a stretch of a cubic C: proven, apart from
 * rounding, not sampled.
 *
 * F and C are cut at matching places: F at u, C at the foot of F(u). On each pair of pieces the difference
 * D(v) = F − C is a cubic, so |D|² is bounded by its seven Bernstein coefficients. |D| is the distance to a point
 * near the foot, not to the foot; with g(t) = |F(u) − C(t)|² and g″ ≥ 2m the two differ in square by no more than
 * (D · C′)² / m, and both factors are again bounded by Bernstein coefficients. As feet follow each other in order,
 * every point of the parallel is near F too. Where a bound is not sharp enough, the pair is halved. With distance 0 it
 * is C itself that F is held against.
 * Source: derived; the convex hull property, and strong convexity of g (1 + κ d ≠ 0).
 */
export function isParallel(
  fit: PowerForm,
  { curve, from, to }: Stretch,
  beside: Beside,
  tolerance: number,
): boolean {
  const distance = Math.abs(beside.distance);
  const low = distance - tolerance,
    high = distance + tolerance;
  // Within the tolerance of the curve itself nothing is too near.
  const least = low > 0 ? low * low : Number.NEGATIVE_INFINITY;
  const check: Check = {
    f: fit,
    c: curve,
    low: least,
    high: high * high,
    reach: tolerance,
    sense: beside.sense,
    left: mostPairs,
  };
  let u0 = 0,
    t0 = from;
  for (let i = 1; i <= firstPairs; i++) {
    const u1 = i / firstPairs;
    const t1 = i === firstPairs ? to : foot(check, u1, t0 + (to - t0) / (firstPairs - i + 1), t0, to);
    if (!pairHolds(check, { u0, u1, t0, t1 }, 0)) return false;
    u0 = u1;
    t0 = t1;
  }
  return true;
}

/** The part of a curve between two parameters. */
export interface Stretch {
  readonly curve: PowerForm;
  readonly from: number;
  readonly to: number;
}

/** How a parallel lies: mm from its curve, and −1 where it runs against it, else 1. */
export interface Beside {
  readonly distance: number;
  readonly sense: number;
}

/** A piece of F and the piece of C that it lies beside. */
interface Pair {
  readonly u0: number;
  readonly u1: number;
  readonly t0: number;
  readonly t1: number;
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

function pairHolds(check: Check, { u0, u1, t0, t1 }: Pair, depth: number): boolean {
  if (--check.left < 0) return false;
  const f = controlsOf(check.f, u0, u1),
    c = controlsOf(check.c, t0, t1),
    d = difference(f, c);
  // The ends are matched as well as can be: if they are off, so is the fit.
  if (isOff(check, d.x0, d.y0) || isOff(check, d.x3, d.y3)) return false;
  const legsF = legsOf(f),
    legsC = legsOf(c);
  const sizeF = longest(legsF),
    sizeC = longest(legsC);
  // Pieces smaller than the tolerance are near whatever they do.
  if (depth > 0 && (sizeC + sizeF) * 4 < check.reach) return true;
  const bend = bendBounds(d, legsC, sizeC);
  if (isShort(check, c, legsC, sizeF, Math.max(-bend.least, bend.most))) return true;
  if (isNear(check, d, legsC, bend) && leastAlong(legsF, legsC, check.sense) >= -sizeF * restRounding)
    return true;
  if (depth >= deepest) return false;
  const u = (u0 + u1) / 2,
    t = foot(check, u, (t0 + t1) / 2, t0, t1);
  return (
    pairHolds(check, { u0, u1: u, t0, t1: t }, depth + 1) &&
    pairHolds(check, { u0: u, u1, t0: t, t1 }, depth + 1)
  );
}

function isOff({ low, high }: Check, x: number, y: number): boolean {
  const square = x * x + y * y;
  return square < low || square > high;
}

/**
 * Near a cusp of the parallel g″ is next to nothing, and so is the parallel: its speed is g″ / 2 |C′|. Where both it and
 * F are shorter than what is left of the tolerance, they are near whatever they do.
 */
function isShort({ reach }: Check, c: Controls, legs: Legs, sizeF: number, fastest: number): boolean {
  const x = c.x3 - c.x0,
    y = c.y3 - c.y0,
    chord = Math.sqrt(x * x + y * y);
  const { ax, ay, mx, my, bx, by } = legs;
  const slowest = (3 * Math.min(ax * x + ay * y, mx * x + my * y, bx * x + by * y)) / chord;
  return slowest > 0 && (sizeF + fastest / slowest) * 4 < reach;
}

/** Whether every point of F is as far from its foot as it shall be: |D| is, and the foot makes no more than the slip. */
function isNear({ low, high, sense }: Check, d: Controls, legs: Legs, bend: Bounds): boolean {
  const { least, most } = squareBounds(d);
  const steep = sense > 0 ? bend.least : -bend.most;
  if (!(steep > 0)) return false;
  const slip = slantBound(d, legs) ** 2 / steep;
  return sense > 0 ? least - slip >= low && most <= high : least >= low && most + slip <= high;
}
