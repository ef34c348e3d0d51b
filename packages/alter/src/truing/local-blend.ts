import { type Path, type Point, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  endTangent,
  fairCurve,
  joined,
  pathEnd,
  pathStart,
  pointAlong,
  startTangent,
  subpath,
} from '@paperhinge/geometry/paths';
import { angleBetween } from '@paperhinge/geometry/plane';
import { endingIn, startingIn } from '../moved-edges/meet.js';
import { areaBetween, roughlyApart } from './apart.js';
import { mostMeanOff } from './fair-throughout.js';
import { turningOf } from './turning.js';

/** A broken stretch of a line (from = to: a kink), or an end (from = to = 0 or its length) with its new direction. */
export interface Blend {
  readonly from: number;
  readonly to: number;
  readonly startDirection?: Point;
  readonly endDirection?: Point;
  /** mm the new line may lie from the old here. */
  readonly limit: number;
  /** Of a step: the limit where no curve keeps that one and runs across gently, so that it does not only round it off. */
  readonly stepLimit?: number;
  /** mm that the blend reaches beyond its place at most; absent: half way to the next. */
  readonly reach?: number;
}

/** A blend that would lie too far from the line, and the limit that would let it be drawn. */
export interface FailedBlend {
  readonly blend: Blend;
  readonly needMm: number;
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
    const mostArea = (mostMeanOff * blend.limit * length) / blends.length;
    const first = widest(path, blend, ...room, mostArea);
    const again = 'needMm' in first && blend.stepLimit !== undefined && blend.stepLimit > blend.limit;
    const found = again ? widest(path, { ...blend, limit: blend.stepLimit! }, ...room, mostArea) : first;
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

interface Found {
  readonly from: number;
  readonly to: number;
  readonly curve: Path;
}

/** @param mostArea mm² that the piece may gain or lose here, unless no other blend is left */
function widest(
  path: Path,
  blend: Blend,
  before: number,
  after: number,
  mostArea: number,
): Found | FailedBlend {
  const { startDirection, endDirection, limit } = blend;
  const room = (startDirection ? 0 : before) + (endDirection ? 0 : after);
  const least = Math.min(limit * leastWidth, room + blend.to - blend.from);
  let needMm = Number.POSITIVE_INFINITY;
  let narrowest: Found | undefined;
  for (let share = 1; share > shortest; share *= 0.8) {
    const from = startDirection ? blend.from : blend.from - before * share,
      to = endDirection ? blend.to : blend.to + after * share;
    if (to - from <= tolerances.joiningGap || to - from < least) break;
    const old = subpath(path, from, to);
    const curve = fairCurve(
      { point: pointAlong(path, from), direction: startDirection ?? startTangent(old) },
      { point: pointAlong(path, to), direction: endDirection ?? endTangent(old) },
    );
    if (blend.stepLimit !== undefined && turningOf(curve) > steepest + netTurn(curve)) continue;
    const movedMm = roughlyApart(old, curve, Number.POSITIVE_INFINITY);
    if (movedMm <= limit) {
      narrowest = { from, to, curve };
      if (areaBetween(old, curve) <= mostArea) return narrowest;
    }
    needMm = Math.min(needMm, movedMm);
  }
  return narrowest ?? { blend, needMm };
}

const netTurn = (curve: Path): number => Math.abs(angleBetween(startTangent(curve), endTangent(curve)));
/** rad. A curve that crosses a step at 40 degrees turns by twice that more than the line does. */
const steepest = (80 * Math.PI) / 180;

/** Times the limit. A blend narrower than this still looks like a corner. */
const leastWidth = 4;
/** Share of the room at which the search for a narrower blend ends. */
const shortest = 1 / 1000;
