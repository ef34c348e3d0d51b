import { boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { endOf, startOf } from '../curve/segment.js';
import { angleTolerance, coincidenceTolerance, cornerTurn, smoothJoint } from '../tolerance.js';
import { add, angleBetween, distance, dot, leftOf, type Point, scale, subtract, unit } from '../vector.js';
import { armAfter, armBefore } from './arm.js';
import { mitreLimit } from './corner-rule.js';
import type { Joint } from './joint.js';
import { firstOnRay } from './line-crossings.js';
import { type Run, squareOut, turnBetween } from './run.js';
import {
  chainEnd,
  chainStart,
  type Place,
  type Strand,
  straight,
  strandsBetween,
  strandsReversed,
  turnedPlace,
} from './strand.js';

/**
 * The joint of two parallels at an outer or an inner corner (trade-notes §1). Outside, each runs on straight along
 * its end tangent until they cross: the tip lies √(a² + b² + 2ab cos φ) / sin φ from the corner. Inside, both are
 * cut where they cross; where only the narrower allowance's parallel gets that far, the wider's runs on to it.
 *
 * The crossing can lie over the wider edge itself, where the corner is flat and the allowances differ: then the
 * wider allowance ends square to its edge, and the narrower runs on to that end, so that neither is cut into.
 */
export function plainJoint(before: Run, after: Run): Joint {
  const from = endOf(before.parallel.at(-1)!.segment),
    to = startOf(after.parallel[0]!.segment);
  const turn = turnBetween(before, after);
  const isFlat = Math.abs(turn) < Math.PI / 2;
  if ((isFlat || before.allowance + after.allowance === 0) && distance(from, to) <= smoothJoint)
    return { bridge: [] };
  return turn >= 0 ? { bridge: outerBridge(before, after, from, to, turn) } : innerJoint(before, after, turn);
}

/** The same joint with nothing cut off the parallels: an inner corner is led over the corner itself. */
export function untrimmedJoint(before: Run, after: Run): Joint {
  const joint = plainJoint(before, after);
  return joint.before || joint.after ? ledOverCorner(before, after, joint) : joint;
}

/** A joint that is led over the corner instead, which is snipped to as before. */
export function ledOverCorner(before: Run, after: Run, { snip }: Joint): Joint {
  const [inwards, outwards] = overCorner(before, after);
  return {
    bridge: [...inwards, ...outwards],
    ...(snip ? { snip: { ...snip, after: inwards.length } } : {}),
  };
}

/** From the end of one parallel to the corner, and out to the start of the next. */
const overCorner = (before: Run, after: Run): readonly [readonly Strand[], readonly Strand[]] => [
  straight(endOf(before.parallel.at(-1)!.segment), before.end, before.of),
  straight(after.start, startOf(after.parallel[0]!.segment), after.of),
];

function outerBridge(before: Run, after: Run, from: Point, to: Point, turn: number): readonly Strand[] {
  const a = before.allowance,
    b = after.allowance,
    corner = before.end;
  const sin = Math.sin(turn),
    cos = Math.cos(turn);
  const arriving = before.endTangent,
    leaving = after.startTangent;
  const limit = mitreLimit * Math.max(a, b);
  if (sin <= angleTolerance && cos < 0) return cutTip(before, after, limit, limit);
  const beyond = b - a * cos,
    ahead = a - b * cos;
  // A cut parallel that does not come down to the neighbour's: by way of the corner's own circle.
  const isAbove = (p: Point, tangent: Point, by: number): boolean =>
    dot(subtract(p, corner), leftOf(tangent)) > by;
  if (before.isEndCut && (beyond < 0 || isAbove(from, leaving, b)))
    return [...overCutEnd(from, corner, after, 1), ...legFrom(after)];
  if (after.isStartCut && (ahead < 0 || isAbove(to, arriving, a)))
    return [...legTo(before), ...strandsReversed(overCutEnd(to, corner, before, -1))];
  if (beyond < 0) {
    const knee = add(corner, scale(leftOf(arriving), b / cos));
    return [...straight(from, knee, before.of), ...legFrom(after, knee)];
  }
  if (ahead < 0) {
    const knee = add(corner, scale(leftOf(leaving), a / cos));
    return [...legTo(before, knee), ...straight(knee, to, after.of)];
  }
  if (sin <= angleTolerance) return [...legTo(before), ...legFrom(after)];
  const tip = add(squareOut(corner, arriving, a), scale(arriving, beyond / sin));
  const bisector = unit(subtract(arriving, leaving));
  if (dot(subtract(tip, corner), bisector) <= limit) return [...legTo(before, tip), ...legFrom(after, tip)];
  const pace = dot(arriving, bisector);
  const reach = (p: Point): number => (limit - dot(subtract(p, corner), bisector)) / pace;
  const reachBefore = reach(squareOut(corner, arriving, a)),
    reachAfter = reach(squareOut(corner, leaving, b));
  return cutTip(before, after, reachBefore, reachAfter);
}

function cutTip(before: Run, after: Run, reachBefore: number, reachAfter: number): readonly Strand[] {
  const first = add(
    squareOut(before.end, before.endTangent, before.allowance),
    scale(before.endTangent, reachBefore),
  );
  const second = subtract(
    squareOut(after.start, after.startTangent, after.allowance),
    scale(after.startTangent, reachAfter),
  );
  return [
    ...legTo(before, first),
    ...straight(first, second, before.allowance >= after.allowance ? before.of : after.of),
    ...legFrom(after, second),
  ];
}

/**
 * From the end of a run's parallel by way of square to its end to a point ahead, and from a point behind by way of
 * square to its start to its parallel. Where the parallel is cut, it crosses its leg, and what lies between, within
 * the allowance, goes as a loop. It does cross: the circle of curvature at the cusp passes round the end, as circles
 * of curvature lie within one another.
 * Source: Kneser, Bemerkungen über die Anzahl der Extreme der Krümmung auf geschlossenen Kurven, 1912.
 */
function legTo(run: Run, to?: Point): readonly Strand[] {
  const square = squareOut(run.end, run.endTangent, run.allowance);
  return [
    ...straight(endOf(run.parallel.at(-1)!.segment), square, run.of),
    ...(to ? straight(square, to, run.of) : []),
  ];
}
function legFrom(run: Run, from?: Point): readonly Strand[] {
  const square = squareOut(run.start, run.startTangent, run.allowance);
  return [
    ...(from ? straight(from, square, run.of) : []),
    ...straight(square, startOf(run.parallel[0]!.segment), run.of),
  ];
}

/**
 * From where a wider allowance's parallel is cut, on its circle about the corner, straight towards the corner, to
 * which all of that way is nearest, as far as the neighbour's allowance; then about the corner at that distance to
 * square to the neighbour. `sense` 1: the neighbour comes after.
 */
function overCutEnd(from: Point, corner: Point, neighbour: Run, sense: 1 | -1): readonly Strand[] {
  const { allowance: by, of } = neighbour;
  const tangent = sense === 1 ? neighbour.startTangent : neighbour.endTangent;
  const outward = unit(subtract(from, corner)),
    square = leftOf(tangent);
  const near = add(corner, scale(outward, by)),
    last = add(corner, scale(square, by));
  const turn = sense * angleBetween(outward, square);
  const way = [from, near];
  // The tangents of the circle at the two meet half way; they lie less than a right angle apart, as the cut end lies
  // ahead of square to its own edge.
  if (turn > angleTolerance) {
    const half = turn / 2;
    way.push(add(corner, scale(rotated(outward, sense * half), by / Math.cos(half))));
  }
  way.push(last);
  return way.slice(1).flatMap((p, i) => straight(way[i]!, p, of));
}

const rotated = ({ x, y }: Point, angle: number): Point => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
});

/**
 * Cut where the parallels cross. Where that is not plain to see (they cross more than once, or not at all, as in a
 * slot narrower than the allowances) both are led over the corner itself: the loops so made lie within the
 * allowances and go when the whole cutting line is cleared of loops.
 */
function innerJoint(before: Run, after: Run, turn: number): Joint {
  const corner = before.end;
  const isSnipped = -turn > cornerTurn && before.allowance + after.allowance > 0;
  const snip = (strandsBefore: number): Pick<Joint, 'snip'> =>
    isSnipped ? { snip: { to: corner, after: strandsBefore } } : {};
  const runOn = runOnInside(before, after, turn);
  if (runOn) return { ...runOn, ...snip('after' in runOn ? 1 : 0) };
  const [inwards, outwards] = overCorner(before, after);
  const first = [...before.parallel, ...inwards],
    second = [...outwards, ...after.parallel];
  const crossing = before === after ? undefined : onlyCrossing(first, second, corner);
  if (!crossing) return { bridge: [...inwards, ...outwards], ...snip(inwards.length) };
  const [p, q] = crossing;
  const onSpokeBefore = p.index - before.parallel.length;
  const ahead =
    onSpokeBefore < 0 ? [] : strandsBetween(inwards, chainStart, { index: onSpokeBefore, t: p.t });
  const beyond = q.index >= outwards.length ? [] : strandsBetween(outwards, q, chainEnd(outwards));
  return {
    ...(onSpokeBefore < 0 ? { before: p } : {}),
    ...(q.index >= outwards.length ? { after: { index: q.index - outwards.length, t: q.t } } : {}),
    bridge: [...ahead, ...beyond],
    ...snip(ahead.length),
  };
}

/**
 * At a flat inner corner of unlike allowances the wider's parallel ends short of the narrower's: it runs on straight
 * along its end tangent until they cross, up to the reach of a mitre.
 */
function runOnInside(before: Run, after: Run, turn: number): Omit<Joint, 'snip'> | undefined {
  const least = Math.min(before.allowance, after.allowance),
    most = Math.max(before.allowance, after.allowance);
  if (most * Math.cos(turn) <= least) return undefined;
  const isBeforeWider = before.allowance > after.allowance;
  if (isBeforeWider ? before.isEndCut : after.isStartCut) return undefined;
  const [wider, narrower] = isBeforeWider
    ? [armBefore(before), armAfter(after)]
    : [armAfter(after), armBefore(before)];
  const crossing = firstOnRay(narrower.parallel, wider.base, scale(wider.away, -1));
  if (!crossing || distance(crossing.point, wider.corner) > mitreLimit * most) return undefined;
  const { index, t, point } = crossing;
  return isBeforeWider
    ? { after: { index, t }, bridge: straight(wider.base, point, wider.of) }
    : {
        before: turnedPlace({ index, t }, narrower.parallel.length),
        bridge: straight(point, wider.base, wider.of),
      };
}

function onlyCrossing(first: readonly Strand[], second: readonly Strand[], corner: Point) {
  const found: [Place, Place, Point][] = [];
  const boxes = second.map(s => boundsOf(s.segment));
  for (const [i, { segment }] of first.entries()) {
    const box = boundsOf(segment);
    for (const [k, other] of second.entries()) {
      if (!boxesMeet(box, boxes[k]!, coincidenceTolerance)) continue;
      for (const { ta, tb, point, overlap } of intersectSegments(segment, other.segment)) {
        if (overlap) return undefined;
        if (distance(point, corner) <= coincidenceTolerance) continue;
        if (found.some(f => distance(f[2], point) <= coincidenceTolerance)) continue;
        found.push([{ index: i, t: ta }, { index: k, t: tb }, point]);
        if (found.length > 1) return undefined;
      }
    }
  }
  return found[0];
}
