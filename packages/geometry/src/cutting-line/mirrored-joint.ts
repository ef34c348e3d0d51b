import { mirror } from '../affine.js';
import { boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { endOf, tangentAt } from '../curve/segment.js';
import { coincidenceTolerance } from '../tolerance.js';
import { add, distance, type Point, scale, subtract } from '../vector.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import { meetingWithLine } from './fold-joint.js';
import type { Joint } from './joint.js';
import type { Run } from './run.js';
import {
  chainEnd,
  chainStart,
  type Place,
  type Strand,
  straight,
  strandsBetween,
  strandsReversed,
  strandsTransformed,
  turnedPlace,
} from './strand.js';

/** Ends of pressed-open and turned-up allowances are drawn up to this many times the larger allowance away. */
const reachLimit = 2 * mitreLimit;

/**
 * A pressed-open or turned-up corner: the end of the shaped edge's allowance is the mirror image, in its tangent at
 * the corner, of the crossing edge's cutting line, run on until it meets the shaped edge's parallel. Pressed or
 * turned back along the stitching line, the allowance lies exactly under the cloth it is caught in.
 * Nothing where the corner is so sharp or so flat that they do not meet within reach.
 */
export function mirroredJoint(before: Run, after: Run, shapedSide: 'before' | 'after'): Joint | undefined {
  const shaped = shapedSide === 'before' ? armBefore(before) : armAfter(after);
  const crossing = shapedSide === 'before' ? armAfter(after) : armBefore(before);
  if (shaped.allowance === 0) return undefined;
  const limit = reachLimit * Math.max(shaped.allowance, crossing.allowance);
  const outward = scale(shaped.away, -1);
  const turning = meetingWithLine(crossing, outward, limit);
  if (!turning) return undefined;
  const { parallel } = crossing;
  const own = turning.place
    ? strandsBetween(parallel, turning.place, chainEnd(parallel))
    : [...straight(turning.point, crossing.base, crossing.of), ...parallel];
  const image = strandsTransformed(own, mirror(shaped.corner, shaped.away));
  const meeting = firstMeeting(image, shaped, limit);
  if (!meeting) return undefined;
  // From the shaped edge's parallel over the mirrored end to the crossing edge's cutting line.
  const end = meeting.end.map(s => ({ ...s, of: shaped.of, shape: 'corner' as const }));
  const bridge = [
    ...(meeting.place ? [] : straight(shaped.base, meeting.point, shaped.of)),
    ...strandsReversed(end),
    ...(turning.runOn ? straight(turning.point, crossing.base, crossing.of) : []),
  ];
  const placed = (arm: Arm, place: Place | undefined, side: 'before' | 'after'): Partial<Joint> =>
    place ? { [side]: side === 'before' ? turnedPlace(place, arm.parallel.length) : place } : {};
  const crossingSide = shapedSide === 'before' ? 'after' : 'before';
  return {
    ...placed(shaped, meeting.place, shapedSide),
    ...placed(crossing, turning.place, crossingSide),
    bridge: shapedSide === 'before' ? bridge : strandsReversed(bridge),
  };
}

interface Meeting {
  readonly point: Point;
  /** On the shaped edge's parallel; absent where that has to run on. */
  readonly place?: Place;
  /** The mirrored end from the stitching line's tangent to the meeting. */
  readonly end: readonly Strand[];
}

/** Where a mirrored end, run on straight beyond its last segment, first meets the shaped edge's parallel, run on. */
function firstMeeting(image: readonly Strand[], shaped: Arm, limit: number): Meeting | undefined {
  const runOn = straight(subtract(shaped.square, scale(shaped.away, limit)), shaped.base, shaped.of);
  const line = [...runOn, ...shaped.parallel];
  const boxes = line.map(s => boundsOf(s.segment));
  const last = image.at(-1)!.segment,
    tip = endOf(last);
  const chain = [...image, ...straight(tip, add(tip, scale(tangentAt(last, 1), limit)), shaped.of)];
  for (const [i, { segment }] of chain.entries()) {
    const box = boundsOf(segment);
    let first: { ta: number; place: Place; point: Point } | undefined;
    for (const [k, other] of line.entries()) {
      if (!boxesMeet(box, boxes[k]!, coincidenceTolerance)) continue;
      for (const { ta, tb, point } of intersectSegments(segment, other.segment))
        if (!first || ta < first.ta) first = { ta, place: { index: k, t: tb }, point };
    }
    if (!first) continue;
    if (distance(first.point, shaped.corner) > limit) return undefined;
    const end = strandsBetween(chain, chainStart, { index: i, t: first.ta });
    const index = first.place.index - runOn.length;
    return { point: first.point, end, ...(index >= 0 ? { place: { index, t: first.place.t } } : {}) };
  }
  return undefined;
}
