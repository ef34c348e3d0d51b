import { angleTolerance, smoothJoint } from '../tolerance.js';
import { add, angleBetween, distance, dot, type Point, scale, subtract, unit } from '../vector.js';
import { type Arm, armAfter, armBefore } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import { innerJoint, overCorner } from './inner-joint.js';
import { type Joint, jointOf, type Leaving } from './joint.js';
import { type Run, turnBetween } from './run.js';
import { straight } from './strand.js';

/**
 * The joint of two parallels at an outer or an inner corner (trade-notes §1). Outside, each runs on straight along
 * its end tangent until they cross: the tip lies √(a² + b² + 2ab cos φ) / sin φ from the corner. Inside, both are
 * cut where they cross; where only the narrower allowance's parallel gets that far, the wider's runs on to it.
 *
 * The crossing can lie over the wider edge itself, where the corner is flat and the allowances differ: then the
 * wider allowance ends square to its edge, and the narrower runs on to that end, so that neither is cut into.
 */
export function plainJoint(before: Run, after: Run): Joint {
  const first = armBefore(before),
    second = armAfter(after);
  if (distance(first.base, second.base) <= smoothJoint) return jointOf(keptWhole, keptWhole);
  const turn = turnBetween(before, after);
  return turn >= 0 ? outerJoint(first, second, turn) : innerJoint(first, second, turn);
}

const keptWhole: Leaving = { place: 0, way: [] };

/** The same joint with nothing cut off the parallels: an inner corner is led over the corner itself. */
export function untrimmedJoint(before: Run, after: Run): Joint {
  const joint = plainJoint(before, after);
  return joint.before || joint.after ? ledOverCorner(before, after, joint) : joint;
}

/** A joint that is led over the corner instead, which is snipped to as before. */
export function ledOverCorner(before: Run, after: Run, { snip }: Joint): Joint {
  const first = overCorner(armBefore(before));
  const joint = jointOf(first, overCorner(armAfter(after)));
  return snip ? { ...joint, snip: { ...snip, after: first.way.length } } : joint;
}

function outerJoint(first: Arm, second: Arm, turn: number): Joint {
  // A cut parallel that does not come down to the neighbour's: by way of the corner's own circle.
  if (startsAbove(first, second)) return jointOf(overCutEnd(first, second), wayTo(second, second.square));
  if (startsAbove(second, first)) return jointOf(wayTo(first, first.square), overCutEnd(second, first));
  const from = endOfRunOn(first, second, turn),
    to = endOfRunOn(second, first, turn);
  const wider = first.allowance >= second.allowance ? first : second;
  return jointOf(wayTo(first, from), wayTo(second, to), straight(from, to, wider.of));
}

/** Where an arm's line, run on straight, ends: where the other's crosses it, at the limit of a mitre, or where the other ends square. */
function endOfRunOn(own: Arm, other: Arm, turn: number): Point {
  const sin = Math.max(Math.sin(turn), angleTolerance),
    cos = Math.cos(turn);
  const crossing = (other.allowance - own.allowance * cos) / sin;
  const otherEnd = cos > 0 ? (own.allowance * sin) / cos : crossing;
  const inward = unit(add(own.away, other.away));
  const limit = mitreLimit * Math.max(own.allowance, other.allowance);
  const atLimit = (limit + dot(subtract(own.square, own.corner), inward)) / dot(own.away, inward);
  return subtract(own.square, scale(own.away, Math.max(0, Math.min(crossing, otherEnd, atLimit))));
}

/**
 * From the start of an arm's parallel by way of square to its corner to a point ahead. Where the parallel is cut, it
 * crosses its leg, and what lies between, within the allowance, goes as a loop. It does cross: the circle of curvature
 * at the cusp passes round the end, as circles of curvature lie within one another.
 * Source: Kneser, Bemerkungen über die Anzahl der Extreme der Krümmung auf geschlossenen Kurven, 1912.
 */
const wayTo = ({ base, square, of }: Arm, to: Point): Leaving => ({
  place: 0,
  way: [...straight(base, square, of), ...straight(square, to, of)],
});

/** Whether an arm's parallel is cut and starts above the other's line, seen from the other's edge. */
const startsAbove = (cut: Arm, other: Arm): boolean =>
  cut.isCut && dot(subtract(cut.base, cut.corner), other.outward) > other.allowance;

/**
 * From where a wider allowance's parallel is cut, on its circle about the corner, straight towards the corner, to
 * which all of that way is nearest, as far as the other's allowance; then about the corner at that distance to square
 * to the other. The tangents of the circle at the two meet half way; they lie less than a right angle apart, as the cut
 * end lies ahead of square to its own edge.
 */
function overCutEnd({ base, corner }: Arm, { allowance, outward, square, of }: Arm): Leaving {
  const down = unit(subtract(base, corner));
  const half = angleBetween(down, outward) / 2;
  const near = add(corner, scale(down, allowance)),
    knee = add(corner, scale(rotated(down, half), allowance / Math.cos(half)));
  return {
    place: 0,
    way: [...straight(base, near, of), ...straight(near, knee, of), ...straight(knee, square, of)],
  };
}

const rotated = ({ x, y }: Point, angle: number): Point => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
});
