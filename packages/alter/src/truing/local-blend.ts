import { type Path, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { joined, pathEnd, pathStart, subpath } from '@paperhinge/geometry/paths';
import { endingIn, startingIn } from '../moved-edges/meet.js';
import { type Blend, type FailedBlend, widestBlend } from './blend.js';
import { mostMeanOff } from './fair-throughout.js';

/**
 * Draws a fair curve over each broken place, leaving and joining the line in its own direction as far from the place
 * as the limit allows and half way to the next one at most.
 * @param fixed mm along the line of corners that stay
 */
export function blendedAt(
  path: Path,
  blends: readonly Blend[],
  fixed: readonly number[],
): { readonly path: Path; readonly failed: readonly FailedBlend[] } {
  const length = pathLength(path);
  const failed: FailedBlend[] = [];
  const pieces: Path[] = [];
  let done = 0;
  for (const [i, blend] of blends.entries()) {
    const { reach = length } = blend;
    const last = blends[i - 1];
    const next = blends[i + 1];
    const before = Math.max(
      0,
      blend.from - reach,
      ...fixed.filter(f => f < blend.from),
      last ? (last.to + blend.from) / 2 : 0,
    );
    const after = Math.min(
      length,
      blend.to + reach,
      ...fixed.filter(f => f > blend.to),
      next ? (blend.to + next.from) / 2 : length,
    );
    const room = [blend.from - before, after - blend.to] as const;
    const mostArea = (Math.min(mostMeanOff * blend.limit, mostMeanMm) * length) / blends.length;
    const first = widestBlend(path, blend, ...room, mostArea);
    const again = 'needMm' in first && blend.stepLimit !== undefined && blend.stepLimit > blend.limit;
    const found = again ? widestBlend(path, { ...blend, limit: blend.stepLimit! }, ...room, mostArea) : first;
    if ('needMm' in found) {
      failed.push(found);
      continue;
    }
    if (found.from > done) pieces.push(subpath(path, done, found.from));
    pieces.push(found.curve);
    done = found.to;
  }
  if (pieces.length === 0) return { path, failed };
  if (length - done > tolerances.coincidenceTolerance) pieces.push(subpath(path, done, length));
  const whole = joined(...pieces.map((p, i) => (i === 0 ? p : startingIn(p, pathEnd(pieces[i - 1]!)))));
  return { path: endingIn(startingIn(whole, pathStart(path)), pathEnd(path)), failed };
}

/** mm. However much it is allowed to move, a line keeps its piece's area this near on its length, if any curve does. */
const mostMeanMm = 0.25;
