import type { Path, Point } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { endTangent, fairCurve, pointAlong, startTangent, subpath } from '@paperhinge/geometry/paths';
import { angleBetween } from '@paperhinge/geometry/plane';
import { areaBetween, roughlyApart } from './apart.js';
import { sharpestOf, turningOf } from './turning.js';

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

/** A curve in place of a stretch of a line. */
export interface FoundBlend {
  readonly from: number;
  readonly to: number;
  readonly curve: Path;
}

/**
 * The widest curve within the limit that hardly changes the piece's area and has room for an allowance along its bend;
 * where all that keep the limit change it by more, the one that does by least, and where all bend tighter, the one that
 * does by least. A curve over a step may also reach equally far on both sides of it: shares of
 * unlike rooms lie to one side of a step between curves.
 *
 * @param before mm of room before the place, `after` behind it
 * @param mostArea mm² that the piece may gain or lose here, if any curve keeps that
 */
export function widestBlend(
  path: Path,
  blend: Blend,
  before: number,
  after: number,
  mostArea: number,
): FoundBlend | FailedBlend {
  let needMm = Number.POSITIVE_INFINITY;
  let best: (FoundBlend & { readonly area: number }) | undefined;
  let widest: (FoundBlend & { readonly bend: number }) | undefined;
  for (const { from, to } of stretchesFor(blend, before, after)) {
    const old = subpath(path, from, to);
    const curve = fairCurve(
      { point: pointAlong(path, from), direction: blend.startDirection ?? startTangent(old) },
      { point: pointAlong(path, to), direction: blend.endDirection ?? endTangent(old) },
    );
    if (blend.stepLimit !== undefined && turningOf(curve) > steepest + netTurn(curve)) continue;
    const movedMm = roughlyApart(old, curve, Number.POSITIVE_INFINITY);
    needMm = Math.min(needMm, movedMm);
    if (movedMm > blend.limit) continue;
    const bend = blend.stepLimit === undefined ? sharpestOf(curve) : 0;
    if (!widest || bend < widest.bend) widest = { from, to, curve, bend };
    if (bend > tightest) continue;
    const area = areaBetween(old, curve);
    if (area <= mostArea) return { from, to, curve };
    if (!best || area < best.area) best = { from, to, curve, area };
  }
  return best ?? widest ?? { blend, needMm };
}

/** 1/mm: a bend tighter than 20 mm has no room for the usual allowances, 15 mm and less (common practice, no source). */
const tightest = 1 / 20;

/** The stretches that a curve may replace, widest first. */
function* stretchesFor(
  { from, to, startDirection, endDirection, limit }: Blend,
  before: number,
  after: number,
): Generator<{ readonly from: number; readonly to: number }> {
  const [back, on] = [startDirection ? 0 : before, endDirection ? 0 : after];
  const least = Math.max(Math.min(limit * leastWidth, back + on + to - from), tolerances.joiningGap);
  const farther = Math.max(back, on);
  const reaches = [(share: number) => [back * share, on * share] as const];
  if (to > from && back > 0 && on > 0)
    reaches.push(share => [Math.min(back, farther * share), Math.min(on, farther * share)]);
  for (const reach of reaches)
    for (let share = 1; share > shortest; share *= 0.8) {
      const [less, more] = reach(share);
      if (less + more + to - from < least) break;
      yield { from: from - less, to: to + more };
    }
}

const netTurn = (curve: Path): number => Math.abs(angleBetween(startTangent(curve), endTangent(curve)));
/** rad. A curve that crosses a step at 40 degrees turns by twice that more than the line does. */
const steepest = (80 * Math.PI) / 180;

/** Times the limit. A blend narrower than this still looks like a corner. */
const leastWidth = 4;
/** Share of the room at which the search for a narrower blend ends. */
const shortest = 1 / 1000;
