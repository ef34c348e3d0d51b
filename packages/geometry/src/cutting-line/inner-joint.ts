import { isSamePoint } from '../same-point.js';
import { cornerTurn } from '../tolerance.js';
import { distance, scale } from '../vector.js';
import type { Arm } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import { type Joint, jointOf, type Leaving } from './joint.js';
import { firstOnRay } from './line-crossings.js';
import { meetingsOf } from './meetings.js';
import { type Position, type Strand, straight, strandsBetween, strandsReversed } from './strand.js';

/**
 * Cut where the parallels cross. Where that is not plain to see (they cross more than once, or not at all, as in a
 * slot narrower than the allowances) both are led over the corner itself: the loops so made lie within the
 * allowances and go when the whole cutting line is cleared of loops.
 */
export function innerJoint(first: Arm, second: Arm, turn: number): Joint {
  const [before, after] = runOnInside(first, second, turn) ?? cutAtCrossing(first, second);
  const joint = jointOf(before, after);
  return -turn > cornerTurn ? { ...joint, snip: { to: first.corner, after: before.way.length } } : joint;
}

type BothSides = readonly [Leaving, Leaving];

/** An arm's whole parallel, led to the corner. */
export const overCorner = ({ base, corner, of }: Arm): Leaving => ({
  place: 0,
  way: straight(base, corner, of),
});

/**
 * At a flat inner corner of unlike allowances the wider's parallel ends short of the narrower's: it runs on straight
 * along its end tangent until they cross, up to the reach of a mitre.
 */
function runOnInside(first: Arm, second: Arm, turn: number): BothSides | undefined {
  const isFirstWider = first.allowance > second.allowance;
  const [wider, narrower] = isFirstWider ? [first, second] : [second, first];
  if (wider.isCut || wider.allowance * Math.cos(turn) <= narrower.allowance) return undefined;
  const crossing = firstOnRay(narrower.parallel, wider.base, scale(wider.away, -1));
  if (!crossing || distance(crossing.point, wider.corner) > mitreLimit * wider.allowance) return undefined;
  const { place, point } = crossing;
  const runOn = { place: 0, way: straight(wider.base, point, wider.of) },
    cut = { place, way: [] };
  return isFirstWider ? [runOn, cut] : [cut, runOn];
}

function cutAtCrossing(first: Arm, second: Arm): BothSides {
  const spokes = [spokeOf(first), spokeOf(second)] as const;
  const [one, other] = onlyCrossing(
    [...spokes[0], ...first.parallel],
    [...spokes[1], ...second.parallel],
    first.corner,
  ) ?? [0, 0];
  return [cutAt(spokes[0], one), cutAt(spokes[1], other)];
}

/** From an arm's corner to where its parallel starts. */
const spokeOf = ({ corner, base, of }: Arm): readonly Strand[] => straight(corner, base, of);

/** A parallel with its spoke before it, left at a place. */
const cutAt = (spoke: readonly Strand[], place: Position): Leaving => ({
  place: Math.max(0, place - spoke.length),
  way: strandsReversed(strandsBetween(spoke, place, spoke.length)),
});

/** The places on two chains, away from the corner at which both start, where they cross, if there is one alone. */
function onlyCrossing(first: readonly Strand[], second: readonly Strand[], corner: Arm['corner']) {
  const crossings = meetingsOf(first, second).filter(m => !isSamePoint(m.point, corner));
  const [only] = crossings;
  const isOne = crossings.every(m => !m.overlap && isSamePoint(m.point, only!.point));
  return only && isOne ? ([only.a, only.b] as const) : undefined;
}
