import { cross, dot, type Point, scale, subtract } from '../vector.js';
import { type Arm, armAfter, armBefore, turnedPlace } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import type { Joint } from './joint.js';
import { firstOnRay } from './line-crossings.js';
import type { Run } from './run.js';
import { straight, strandsReversed } from './strand.js';

/**
 * A corner at a fold: the other edge's cutting line is run on, or cut, to the straight line of the fold and stays
 * on it to the corner, so that the cloth lies edge to edge when it is opened out.
 * Nothing where the two do not meet within reach of a mitre.
 */
export function foldJoint(before: Run, after: Run, fold: 'before' | 'after'): Joint | undefined {
  const foldArm = fold === 'before' ? armBefore(before) : armAfter(after);
  const arm = fold === 'before' ? armAfter(after) : armBefore(before);
  if (arm.allowance === 0) return { bridge: [] };
  const outward = scale(foldArm.away, -1);
  const meeting = meetingWithLine(arm, outward);
  if (!meeting) return undefined;
  // From the other edge to the corner.
  const inwards = [
    ...straight(meeting.runOn ? arm.base : meeting.point, meeting.point, arm.of),
    ...straight(meeting.point, arm.corner, foldArm.of),
  ];
  return fold === 'after'
    ? {
        ...(meeting.place ? { before: turnedPlace(meeting.place, arm.parallel.length) } : {}),
        bridge: inwards,
      }
    : { ...(meeting.place ? { after: meeting.place } : {}), bridge: strandsReversed(inwards) };
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
