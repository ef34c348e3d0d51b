import { boundsOf, distanceToBox } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { runsOn } from '../curve/runs-on.js';
import { between, endOf, isLine, pointAt, type Segment, startOf } from '../curve/segment.js';
import { selfCrossing } from '../curve/self-crossing.js';
import { isStraight, turningPoints } from '../curve/straight.js';
import { forEachNearPairWithin } from '../path/near-segments.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { add, distance, type Point, subtract } from '../vector.js';
import { type Clusters, clustered } from './clusters.js';

/** A closed chain of segments, and which of several sets of chains it belongs to. */
export interface Ring {
  readonly path: Path;
  readonly set: number;
}

/** Where a part of an arc was cut from: the ring, its segment and the parameters on it, in the arc's direction. */
export interface Origin {
  readonly ring: number;
  readonly index: number;
  readonly from: number;
  readonly to: number;
}

/** A curve from one crossing to the next, none within. */
export interface Arc {
  readonly curve: Segment;
  /** The crossings it runs between, by number. */
  readonly from: number;
  readonly to: number;
  /** How often each set passes along it, less how often against it. */
  readonly passes: readonly number[];
  readonly origin: Origin;
}

/**
 * What a set of closed chains is made of: every stretch between two crossings once, however many chains share it. Ends
 * nearer to each other than `within` are one crossing, to which the stretches are drawn; stretches that vanish so, and
 * spurs, which are passed to and fro, are nothing. Each set of passes is a cycle, exactly: at every crossing as many
 * stretches arrive as leave.
 */
export function arcsOf(rings: readonly Ring[], within: number, sets: number): readonly Arc[] {
  const pieces = rings.flatMap((ring, i) => piecesOf(ring, i, within));
  const crossed = cutsOf(pieces);
  const first = stopsOf(pieces, crossed, within);
  const { places } = clustered(pointsOf(pieces, first), within);
  const stops = stopsOf(pieces, cutsAt(places, pieces, first, within), within);
  const crossings = clustered(pointsOf(pieces, stops), within);
  return withoutDoubles(arcsBetween(pieces, stops, crossings, within, sets), within);
}

/** The pieces' ends, two by two, and then the places where they are cut. */
const pointsOf = (pieces: readonly Piece[], stops: readonly (readonly number[])[]): readonly Point[] => [
  ...pieces.flatMap(({ curve }) => [startOf(curve), endOf(curve)]),
  ...pieces.flatMap(({ curve }, i) => stops[i]!.slice(1, -1).map(t => pointAt(curve, t))),
];

function arcsBetween(
  pieces: readonly Piece[],
  stops: readonly (readonly number[])[],
  { numbers, places }: Clusters,
  within: number,
  sets: number,
): readonly Arc[] {
  let next = 2 * pieces.length;
  return pieces.flatMap((piece, i) => {
    const own = stops[i]!;
    const passes = Array.from({ length: sets }, (_, set) => (set === piece.set ? 1 : 0));
    let from = numbers[2 * i]!;
    return own.slice(1).flatMap((t, k): readonly Arc[] => {
      const start = from,
        to = k + 2 === own.length ? numbers[2 * i + 1]! : numbers[next++]!;
      from = to;
      const curve = drawnTo(between(piece.curve, own[k]!, t), places[start]!, places[to]!);
      if (start === to && isCrumb(curve, within)) return [];
      return [{ curve, from: start, to, passes, origin: partOf(piece, own[k]!, t) }];
    });
  });
}

function partOf({ ring, index, from, to }: Piece, t0: number, t1: number): Origin {
  const at = (t: number): number => (t === 0 ? from : t === 1 ? to : from + (to - from) * t);
  return { ring, index, from: at(t0), to: at(t1) };
}

interface Piece extends Origin {
  readonly curve: Segment;
  readonly set: number;
}

/**
 * The segments of a ring that have a length, with a straight one where it leaves a gap; what doubles back along a line,
 * or along one to within `within`, in parts.
 */
function piecesOf({ path, set }: Ring, ring: number, within: number): readonly Piece[] {
  const { segments } = path;
  const pieces = segments.flatMap((segment, index): readonly Piece[] => {
    if (isLine(segment) || !isStraight(segment, within))
      return [{ curve: segment, set, ring, index, from: 0, to: 1 }];
    const stops = [0, ...turningPoints(segment), 1],
      straight = isStraight(segment);
    return stops.slice(1).map((to, i) => {
      const from = stops[i]!;
      const curve: Segment = straight
        ? [pointAt(segment, from), pointAt(segment, to)]
        : between(segment, from, to);
      return { curve, set, ring, index, from, to };
    });
  });
  const last = endOf(segments.at(-1)!),
    first = startOf(segments[0]!);
  if (distance(last, first) > 0)
    pieces.push({ curve: [last, first], set, ring, index: segments.length, from: 0, to: 1 });
  return pieces.filter(({ curve }) => !isCrumb(curve, 0));
}

const isCrumb = (curve: Segment, within: number): boolean =>
  curve.every(p => distance(p, curve[0]) <= 2 * within);

/** The parameters at which each piece meets another, or itself. */
function cutsOf(pieces: readonly Piece[]): readonly (readonly number[])[] {
  const cuts: number[][] = pieces.map(({ curve }) => {
    const own = isLine(curve) ? undefined : selfCrossing(curve);
    return own ? [own.t0, own.t1] : [];
  });
  forEachNearPairWithin({ segments: pieces.map(p => p.curve) }, (i, k) => {
    const first = pieces[i]!.curve,
      second = pieces[k]!.curve;
    if (runsOn(first, second) || runsOn(second, first)) return false;
    for (const { ta, tb } of intersectSegments(first, second)) {
      cuts[i]!.push(ta);
      cuts[k]!.push(tb);
    }
    return false;
  });
  return cuts;
}

/** The stops, and where a piece passes through a crossing of others so closely that it is one with it. */
function cutsAt(
  places: readonly Point[],
  pieces: readonly Piece[],
  stops: readonly (readonly number[])[],
  within: number,
): readonly (readonly number[])[] {
  return pieces.map(({ curve }, i) => {
    const box = boundsOf(curve),
      known = stops[i]!.map(t => pointAt(curve, t));
    const passed = places.filter(
      place => distanceToBox(box, place) <= within && !known.some(p => distance(p, place) <= within),
    );
    const feet = passed.map(place => nearestOnSegment(curve, place));
    return [...stops[i]!, ...feet.filter(foot => foot.distance <= within).map(foot => foot.t)];
  });
}

/** Of each piece from 0 to 1 by way of its cuts; of those that are one place, one. */
const stopsOf = (
  pieces: readonly Piece[],
  cuts: readonly (readonly number[])[],
  within: number,
): readonly (readonly number[])[] => pieces.map(({ curve }, i) => stopsAlong(curve, cuts[i]!, within));

function stopsAlong(curve: Segment, cuts: readonly number[], within: number): readonly number[] {
  const isOne = (s: number, t: number): boolean =>
    t - s < samePlace && distance(pointAt(curve, s), pointAt(curve, t)) <= within;
  const stops = [0];
  for (const t of [...cuts].sort((a, b) => a - b))
    if (t > 0 && t < 1 && !isOne(stops.at(-1)!, t) && !isOne(t, 1)) stops.push(t);
  return [...stops, 1];
}

/** Parameter. Farther apart than this, two passes of one point are the ends of a loop. */
const samePlace = 1 / 64;

/** A curve whose ends are moved a little, the handles with them. */
export function drawnTo(curve: Segment, from: Point, to: Point): Segment {
  if (isLine(curve)) return [from, to];
  const [p, q, r, s] = curve;
  return [from, add(q, subtract(from, p)), add(r, subtract(to, s)), to];
}

/** Arcs that lie on each other as one; those that are passed as often to as fro as none. */
function withoutDoubles(arcs: readonly Arc[], within: number): readonly Arc[] {
  const byEnds = new Map<string, Arc[]>();
  for (const arc of arcs) {
    const key = arc.from < arc.to ? `${arc.from} ${arc.to}` : `${arc.to} ${arc.from}`;
    const known = byEnds.get(key) ?? [];
    byEnds.set(key, known);
    const i = known.findIndex(other => isOnto(arc.curve, other.curve, within));
    if (i < 0) known.push(arc);
    else known[i] = together(known[i]!, arc);
  }
  return [...byEnds.values()].flat().filter(({ passes }) => passes.some(count => count !== 0));
}

function together(one: Arc, other: Arc): Arc {
  const isAlong =
    one.from === one.to
      ? nearestOnSegment(one.curve, pointAt(other.curve, 1 / 4)).t < 1 / 2
      : one.from === other.from;
  const passes = one.passes.map((count, set) => count + (isAlong ? 1 : -1) * other.passes[set]!);
  return { ...one, passes };
}

/** Whether two curves between the same ends are one. */
function isOnto(a: Segment, b: Segment, within: number): boolean {
  if (isLine(a) && isLine(b)) return true;
  const reach = 2 * Math.max(within, coincidenceTolerance);
  return [1 / 4, 1 / 2, 3 / 4].every(
    t =>
      nearestOnSegment(b, pointAt(a, t)).distance <= reach &&
      nearestOnSegment(a, pointAt(b, t)).distance <= reach,
  );
}
