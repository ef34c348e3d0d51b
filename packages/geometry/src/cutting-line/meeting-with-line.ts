import { cross, dot, type Point, scale, subtract } from '../vector.js';
import type { Arm } from './arm.js';
import type { Leaving } from './joint.js';
import { firstOnRay } from './line-crossings.js';
import { type Strand, straight, strandsBetween, strandsReversed } from './strand.js';

/** Where an arm's cutting line, run on or cut, meets a straight line through its corner. */
export interface MeetingWithLine extends Leaving {
  readonly point: Point;
  /** mm from the corner. */
  readonly along: number;
  /** The cutting line from the meeting on, away from the corner. */
  readonly beyond: readonly Strand[];
}

/** Where it meets the ray that leaves the corner in the direction `outward`, if it does within `limit` mm. */
export function meetingWithLine(arm: Arm, outward: Point, limit: number): MeetingWithLine | undefined {
  // Seen along the ray, is the parallel's start still on the side that its stitching line leaves to?
  const by = cross(outward, subtract(arm.square, arm.corner)) / cross(outward, arm.away);
  const isRunOn = by >= 0;
  const found = isRunOn ? runOnBy(arm, by) : firstOnRay(arm.parallel, arm.corner, outward);
  if (!found) return undefined;
  const { place, point } = found;
  const along = dot(subtract(point, arm.corner), outward);
  if (!(along >= 0 && along <= limit)) return undefined;
  const way = isRunOn ? straight(arm.base, point, arm.of) : [];
  const beyond = [...strandsReversed(way), ...strandsBetween(arm.parallel, place, arm.parallel.length)];
  return { place, point, along, way, beyond };
}

const runOnBy = ({ square, away }: Arm, by: number) => ({
  place: 0,
  point: subtract(square, scale(away, by)),
});
