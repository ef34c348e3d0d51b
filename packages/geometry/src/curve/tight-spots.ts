import { rootsInUnit } from '../polynomial.js';
import { narrowestStretch } from '../tolerance.js';
import { distance, dot, norm } from '../vector.js';
import { paceBounds, speedSquared } from './curvature.js';
import { powerForm } from './power-form.js';
import { type Cubic, derivativeAt, pointAt, secondDerivativeAt, tangentAt } from './segment.js';

/** A stretch of parameters within which a curve hardly moves and yet turns much. */
export interface TightSpot {
  readonly from: number;
  readonly to: number;
}

/**
 * The cusps of a cubic, and bends and hooks so tight that they are all but cusps, ascending and apart: about each
 * place where the curve is slowest, the widest stretch on which it stays within an eighth of `tolerance` mm of that
 * place, if it turns there by more than about an eighth of a turn.
 */
export function tightSpots(curve: Cubic, tolerance: number): readonly TightSpot[] {
  if (isBrisk(curve, tolerance)) return [];
  const s = speedSquared(powerForm(curve));
  const slowest = [0, ...rootsInUnit([s[1], 2 * s[2], 3 * s[3], 4 * s[4]]), 1];
  const size = Math.sqrt(Math.max(s[0], s[0] + s[1] + s[2] + s[3] + s[4]));
  const spots: TightSpot[] = [];
  for (const t of slowest) {
    const speed = norm(derivativeAt(curve, t)),
      pull = norm(secondDerivativeAt(curve, t));
    // A radius of curvature above the tolerance, at no low speed, is no spot.
    if (speed > size * slow && speed * speed > tolerance * pull) continue;
    const place = pointAt(curve, t);
    const still = (k: number): boolean => distance(pointAt(curve, k), place) <= tolerance / 8;
    let reach = pull > 0 ? Math.min(1 / 4, Math.sqrt(tolerance / 4 / pull)) : 1 / 4;
    while (
      reach > narrowestStretch &&
      !(still(t - reach) && still(t - reach / 2) && still(t + reach / 2) && still(t + reach))
    )
      reach /= 2;
    const from = Math.max(spots.at(-1)?.to ?? 0, t - reach),
      to = Math.min(1, t + reach);
    if (to - from > narrowestStretch && turnsWithin(curve, from, to)) spots.push({ from, to });
  }
  return spots;
}

/** Whether bounds alone show that no place is slow enough to be a spot. */
function isBrisk(curve: Cubic, tolerance: number): boolean {
  const least = paceBounds(curve).speedSquared;
  const fastest = Math.max(norm(derivativeAt(curve, 0)), norm(derivativeAt(curve, 1))),
    pull = Math.max(norm(secondDerivativeAt(curve, 0)), norm(secondDerivativeAt(curve, 1)));
  return least > (fastest * slow) ** 2 && least > tolerance * pull;
}

function turnsWithin(curve: Cubic, from: number, to: number): boolean {
  const u = tangentAt(curve, from),
    v = tangentAt(curve, (2 * from + to) / 3),
    w = tangentAt(curve, to);
  return dot(u, v) < Math.SQRT1_2 || dot(v, w) < Math.SQRT1_2 || dot(u, w) < Math.SQRT1_2;
}

/** Of the speed at the ends; below this a place is looked at more closely. */
const slow = 1 / 100;
