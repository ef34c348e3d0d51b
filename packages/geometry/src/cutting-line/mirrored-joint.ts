import { mirror } from '../affine.js';
import { endOf, tangentAt } from '../curve/segment.js';
import { add, distance, scale, subtract } from '../vector.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import { type Joint, jointOf, type Leaving } from './joint.js';
import { meetingWithLine } from './meeting-with-line.js';
import { meetingsOf } from './meetings.js';
import type { Run } from './run.js';
import { type Strand, straight, strandsBetween, strandsReversed, strandsTransformed } from './strand.js';

/** Ends of pressed-open and turned-up allowances are drawn up to this many times the larger allowance away. */
const reachLimit = 2 * mitreLimit;

/**
 * A pressed-open or turned-up corner: the end of the shaped edge's allowance is the mirror image, in its tangent at
 * the corner, of the crossing edge's cutting line, run on until it meets the shaped edge's parallel. Pressed or
 * turned back along the stitching line, the allowance lies exactly under the cloth it is caught in.
 * Nothing where the corner is so sharp or so flat that they do not meet within reach, or only where the crossing edge's
 * line ends.
 */
export function mirroredJoint(before: Run, after: Run, shapedSide: 'before' | 'after'): Joint | undefined {
  const first = armBefore(before),
    second = armAfter(after);
  const [shaped, crossing] = shapedSide === 'before' ? [first, second] : [second, first];
  const limit = reachLimit * Math.max(shaped.allowance, crossing.allowance);
  const turning = meetingWithLine(crossing, scale(shaped.away, -1), limit);
  if (!turning || turning.beyond.length === 0) return undefined;
  const image = strandsTransformed(turning.beyond, mirror(shaped.corner, shaped.away));
  const end = shapedEnd(image, shaped, limit);
  if (!end) return undefined;
  return shapedSide === 'before' ? jointOf(end, turning) : jointOf(turning, end);
}

/**
 * From the shaped edge's parallel to its stitching line's tangent, over the mirrored end, which runs on straight beyond
 * its last segment as the parallel does beyond its first, to where they first meet.
 */
function shapedEnd(image: readonly Strand[], shaped: Arm, limit: number): Leaving | undefined {
  const { square, away, base, of } = shaped;
  const runOn = straight(subtract(square, scale(away, limit)), base, of);
  const last = image.at(-1)!.segment,
    tip = endOf(last);
  const mirrored = [...image, ...straight(tip, add(tip, scale(tangentAt(last, 1), limit)), of)];
  const [meeting] = [...meetingsOf(mirrored, [...runOn, ...shaped.parallel])].sort((p, q) => p.a - q.a);
  if (!meeting || distance(meeting.point, shaped.corner) > limit) return undefined;
  const end = strandsBetween(mirrored, 0, meeting.a).map(s => ({ ...s, of, shape: 'corner' as const }));
  return {
    place: Math.max(0, meeting.b - runOn.length),
    way: [...strandsReversed(strandsBetween(runOn, meeting.b, runOn.length)), ...strandsReversed(end)],
  };
}
