import { restShare } from '../tolerance.js';
import { footWithin } from './foot-within.js';
import {
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
  const check: Check = {
    f: fit,
    c: curve,
    // Within the tolerance of the curve itself nothing is too near.
    low: low * Math.abs(low),
    high: high * high,
    rest: tolerance * restShare,
    sense: beside.sense,
    left: mostPairs,
  };
  return pairHolds(check, { u0: 0, u1: 1, t0: from, t1: to });
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
  readonly rest: number;
  readonly sense: number;
  left: number;
}

/** A fit that needs more pairs than this is refused, and cut. */
const mostPairs = 200;

function pairHolds(check: Check, { u0, u1, t0, t1 }: Pair): boolean {
  if (--check.left < 0) return false;
  const f = controlsOf(check.f, u0, u1),
    c = controlsOf(check.c, t0, t1),
    d = difference(f, c);
  // The ends are matched as well as can be: if they are off, so is the fit.
  if (isOff(check, d.x0, d.y0) || isOff(check, d.x3, d.y3)) return false;
  const legsF = legsOf(f),
    legsC = legsOf(c);
  const sizeC = longest(legsC);
  // Pieces smaller than the tolerance are near whatever they do: where a curve rests no bound is ever sharp.
  if (sizeC + longest(legsF) < check.rest) return true;
  if (isNear(check, d, legsC, sizeC) && leastAlong(check.sense, legsF, legsC) >= 0) return true;
  const u = (u0 + u1) / 2,
    t = footWithin(check.c, { x: xAt(check.f, u), y: yAt(check.f, u) }, t0, t1);
  return pairHolds(check, { u0, u1: u, t0, t1: t }) && pairHolds(check, { u0: u, u1, t0: t, t1 });
}

function isOff({ low, high }: Check, x: number, y: number): boolean {
  const square = x * x + y * y;
  return square < low || square > high;
}

/** Whether every point of F is as far from its foot as it shall be: |D| is, and the foot makes no more than the slip. */
function isNear({ low, high, sense }: Check, d: Controls, legs: Legs, size: number): boolean {
  const { least, most } = squareBounds(d),
    bend = bendBounds(d, legs, size);
  const steep = sense > 0 ? bend.least : -bend.most;
  // Where it is not steep the slip is without end.
  const slip = slantBound(d, legs) ** 2 / Math.max(0, steep);
  return least - slip >= low && most + slip <= high;
}
