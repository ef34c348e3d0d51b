import { cornerTurn } from '../tolerance.js';
import { add, cross, dot, type Point, scale, subtract } from '../vector.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import type { Joint } from './joint.js';
import { firstOnRay } from './line-crossings.js';
import { type Run, turnBetween } from './run.js';
import { type Place, type Strand, straight, strandsReversed, turnedPlace } from './strand.js';

/**
 * A corner at a fold, as the same corner of the piece opened out: the other edge's cutting line is run on, or cut, to the
 * straight line of the fold and stays on it to the corner. Past the limit of a mitre its tip is cut square to the fold.
 * Where its parallel does not come as far as the fold, it is led over the corner: what then lies beyond the fold goes
 * when the whole line is cleared of loops.
 */
export function foldJoint(before: Run, after: Run, fold: 'before' | 'after'): Joint {
  const foldArm = fold === 'before' ? armBefore(before) : armAfter(after);
  const arm = fold === 'before' ? armAfter(after) : armBefore(before);
  if (arm.allowance === 0) return { bridge: [] };
  const { way, place } = wayToFold(arm, scale(foldArm.away, -1), foldArm.of);
  // Opened out, the corner turns by twice as much as it seems to, less the half turn of the fold itself.
  const turn = turnBetween(before, after);
  const isSnipped = Math.PI - 2 * (Math.PI - turn) < -cornerTurn;
  const snip = (index: number): Pick<Joint, 'snip'> =>
    isSnipped ? { snip: { to: arm.corner, after: index } } : {};
  if (fold === 'before')
    return { ...(place ? { after: place } : {}), bridge: strandsReversed(way), ...snip(way.length) };
  const upTo = place ? { before: turnedPlace(place, arm.parallel.length) } : {};
  return { ...upTo, bridge: way, ...snip(0) };
}

interface WayToFold {
  /** From the other edge's parallel to the corner. */
  readonly way: readonly Strand[];
  /** Where the parallel is cut; absent: it is kept from its start. */
  readonly place?: Place;
}

function wayToFold(arm: Arm, outward: Point, fold: string): WayToFold {
  // Seen along the fold, is the parallel's start still on the side that its stitching line leaves to?
  const side = cross(outward, arm.away);
  const lag = cross(outward, subtract(arm.square, arm.corner)) * Math.sign(side);
  if (lag < 0 || (lag === 0 && dot(outward, arm.away) > 0)) {
    const cut = firstOnRay(arm.parallel, arm.corner, outward);
    if (cut) return { way: straight(cut.point, arm.corner, fold), place: cut };
    return { way: straight(arm.base, arm.corner, arm.of) };
  }
  const tip = subtract(arm.square, scale(arm.away, lag / Math.abs(side)));
  const limit = mitreLimit * arm.allowance;
  const corners = dot(subtract(tip, arm.corner), outward) <= limit ? [tip] : cutTip(arm, outward, limit);
  const points = [arm.base, ...corners];
  return {
    way: [
      ...points.slice(1).flatMap((p, i) => straight(points[i]!, p, arm.of)),
      ...straight(points.at(-1)!, arm.corner, fold),
    ],
  };
}

/** Where a tip too long for a mitre is cut: on the line that runs on, and on the fold. */
function cutTip({ square, away, corner }: Arm, outward: Point, limit: number): readonly Point[] {
  const reach = (limit - dot(subtract(square, corner), outward)) / -dot(away, outward);
  return [subtract(square, scale(away, reach)), add(corner, scale(outward, limit))];
}

/** Where an arm's cutting line, run on or cut, meets the ray that leaves its corner in the direction `outward`. */
export function meetingWithLine(
  arm: Arm,
  outward: Point,
  limit = mitreLimit * arm.allowance,
):
  | { readonly point: Point; readonly place?: { index: number; t: number }; readonly runOn?: true }
  | undefined {
  // Seen along the ray, is the parallel's start still on the side that its stitching line leaves to?
  const side = cross(outward, arm.away);
  const lag = cross(outward, subtract(arm.square, arm.corner)) * Math.sign(side);
  if (side !== 0 && lag >= 0) {
    const by = lag / Math.abs(side);
    const point = subtract(arm.square, scale(arm.away, by));
    const along = dot(subtract(point, arm.corner), outward);
    return along >= 0 && along <= limit ? { point, runOn: true } : undefined;
  }
  const cut = firstOnRay(arm.parallel, arm.corner, outward);
  return cut && cut.along <= limit ? { point: cut.point, place: { index: cut.index, t: cut.t } } : undefined;
}
