import {
  endTangent,
  fairCurve,
  joined,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  pointAlong,
  startTangent,
  subpath,
} from '@paperhinge/geometry';
import { endingIn, startingIn } from '../edit/meet.js';
import { apartBetween } from './apart.js';

/** A broken stretch of a line (from = to: a kink), or an end (from = to = 0 or its length) with its new direction. */
export interface Blend {
  readonly from: number;
  readonly to: number;
  readonly startDirection?: Point;
  readonly endDirection?: Point;
}

/**
 * Draws a fair curve over each broken place, leaving and joining the line in its own direction as far from the place
 * as the limit allows and half way to the next one at most.
 * @param fixed mm along the line of corners that stay
 */
export function blendedAt(
  path: Path,
  blends: readonly Blend[],
  fixed: readonly number[],
  within: number,
): { readonly path: Path; readonly failed: readonly Blend[] } {
  const length = pathLength(path);
  const failed: Blend[] = [];
  const pieces: Path[] = [];
  let done = 0;
  for (const [i, blend] of blends.entries()) {
    const before = Math.max(
      0,
      ...fixed.filter(f => f < blend.from),
      (blends[i - 1]?.to ?? -blend.from) / 2 + blend.from / 2,
    );
    const next = blends[i + 1];
    const after = Math.min(
      length,
      ...fixed.filter(f => f > blend.to),
      next ? (blend.to + next.from) / 2 : length,
    );
    const found = widest(path, blend, blend.from - before, after - blend.to, within);
    if (!found) {
      failed.push(blend);
      continue;
    }
    if (found.from > done) pieces.push(subpath(path, done, found.from));
    pieces.push(found.curve);
    done = found.to;
  }
  if (pieces.length === 0) return { path, failed };
  if (done < length) pieces.push(subpath(path, done, length));
  const whole = joined(...pieces.map((p, i) => (i === 0 ? p : startingIn(p, pathEnd(pieces[i - 1]!)))));
  return { path: endingIn(startingIn(whole, pathStart(path)), pathEnd(path)), failed };
}

function widest(path: Path, blend: Blend, before: number, after: number, within: number) {
  const least = within * narrowest;
  for (let share = 1; share > shortest; share *= 0.8) {
    const from = blend.startDirection ? 0 : blend.from - before * share,
      to = blend.endDirection ? blend.to : blend.to + after * share;
    if (to - from < Math.min(least, before + after)) return undefined;
    const old = subpath(path, from, to);
    const curve = fairCurve(
      pointAlong(path, from),
      blend.startDirection ?? startTangent(old),
      pointAlong(path, to),
      blend.endDirection ?? endTangent(old),
    );
    if (apartBetween(old, curve) <= within) return { from, to, curve };
  }
  return undefined;
}

/** Times the limit. A blend narrower than this still looks like a corner. */
const narrowest = 4;
/** Share of the room at which the search for a narrower blend ends. */
const shortest = 1 / 1000;
