import { rootsInUnit } from '../polynomial.js';
import { distance } from '../vector.js';
import { speedSquared, turnPolynomial } from './curvature.js';
import { powerForm } from './power-form.js';
import { type Cubic, derivativeAt, pointAt, secondDerivativeAt } from './segment.js';

/** A stretch of parameters within which a curve hardly moves and yet turns much. */
export interface TightSpot {
  readonly from: number;
  readonly to: number;
}

/**
 * The cusps of a cubic, and bends so tight that they are all but cusps, ascending and apart: about each place where
 * the curve is slowest, the widest stretch on which it stays within an eighth of `tolerance` mm of that place, if it
 * turns there by about a quarter turn or more.
 */
export function tightSpots(curve: Cubic, tolerance: number): readonly TightSpot[] {
  const form = powerForm(curve),
    s = speedSquared(form),
    turn = turnPolynomial(form);
  const slowest = [0, ...rootsInUnit([s[1], 2 * s[2], 3 * s[3], 4 * s[4]]), 1];
  const bends = rootsInUnit(turn);
  const spots: TightSpot[] = [];
  for (const t of slowest) {
    const speed = Math.hypot(...xy(derivativeAt(curve, t))),
      pull = Math.hypot(...xy(secondDerivativeAt(curve, t)));
    if (pull === 0 || (speed === 0 && (t === 0 || t === 1))) continue;
    let reach = Math.sqrt(tolerance / 4 / pull);
    if (speed > reach * pull) continue;
    const still = (k: number): boolean => distance(pointAt(curve, k), pointAt(curve, t)) <= tolerance / 8;
    while (
      reach > narrowest &&
      !(
        still(t - reach) &&
        still(t + reach) &&
        !bends.some(b => Math.abs(b - t) < reach && b > 0 && b < 1 && b !== t)
      )
    )
      reach /= 2;
    const from = Math.max(spots.at(-1)?.to ?? 0, t - reach),
      to = Math.min(1, t + reach);
    if (speed <= reach * pull && to - from > narrowest) spots.push({ from, to });
  }
  return spots;
}

const xy = ({ x, y }: { readonly x: number; readonly y: number }): readonly [number, number] => [x, y];
/** Parameters this near are one. */
const narrowest = 1e-12;
