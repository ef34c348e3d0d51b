import type { Affine } from '../affine.js';
import type { PatternError } from '../errors.js';
import { farthestCoordinate } from '../tolerance.js';
import type { Point } from '../vector.js';
import { type CurveTellings, refusal } from './tellings.js';

// What every public door of the kernel asks before it sets to work: no search ends on a number that is none.

/** @throws PatternError `coordinate-out-of-range` */
export function requirePoint({ x, y }: Point): void {
  if (!(Math.abs(x) <= farthestCoordinate && Math.abs(y) <= farthestCoordinate)) throw outOfRange();
}

/** @throws PatternError `coordinate-out-of-range`; `not-a-segment`: neither two points nor four */
export function requireSegment(segment: readonly Point[]): void {
  if (segment.length !== 2 && segment.length !== 4) throw refusal('not-a-segment', {});
  // One comparison for the eight that nearly always hold.
  let sum = 0;
  for (let i = 0; i < segment.length; i++) {
    const { x, y } = segment[i]!;
    sum += Math.abs(x) + Math.abs(y);
  }
  if (!(sum <= farthestCoordinate)) segment.forEach(requirePoint);
}

/** @throws PatternError `coordinate-out-of-range` */
export function requireMap({ a, b, c, d, e, f }: Affine): void {
  if (!(Math.abs(a) + Math.abs(b) + Math.abs(c) + Math.abs(d) + Math.abs(e) + Math.abs(f) < largestInMap))
    throw outOfRange();
}

/** Past any drawing's scale; sums and products of such numbers are still finite. */
const largestInMap = 1e30;

/** A length that is clamped: "as far as it goes" is a number, too. @throws PatternError `not-a-number` */
export function requireNumber(value: number, what: Numbered): void {
  if (typeof value !== 'number' || Number.isNaN(value)) throw notANumber(what);
}

/** A distance in mm that is not clamped. @throws PatternError `not-a-number`, `coordinate-out-of-range` */
export function requireDistance(value: number, what: Numbered): void {
  requireNumber(value, what);
  if (Math.abs(value) > farthestCoordinate) throw outOfRange();
}

/** @throws PatternError as {@link requireSegment}; `not-a-number` of the parameter */
export function requirePlace(segment: readonly Point[], t: number): void {
  requireParameter(t);
  requireSegment(segment);
}

/** @throws PatternError `not-a-number` */
export function requireParameter(t: number): void {
  if (!Number.isFinite(t)) throw notANumber('parameter');
}

/** How near a fitted curve must keep. @throws PatternError `tolerance-not-positive` */
export function requireTolerance(tolerance: number): void {
  if (!(tolerance > 0 && tolerance <= farthestCoordinate)) throw refusal('tolerance-not-positive', {});
}

export const outOfRange = (): PatternError => refusal('coordinate-out-of-range', {});

type Numbered = CurveTellings['not-a-number']['what'];
const notANumber = (what: Numbered): PatternError => refusal('not-a-number', { what });
