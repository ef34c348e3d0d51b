import { abs, hypot, max, min } from '../arithmetic.js';
import { rootsInUnit } from '../polynomial.js';
import { coincidenceTolerance, contactTolerance, sameParameter } from '../tolerance.js';
import { cross, distance, dot, type Point, subtract } from '../vector.js';
import { meetingParameters } from './intersect-cubics.js';
import type { ParameterPair } from './intersect-touches.js';
import { nearestOnSegment } from './nearest.js';
import {
  type Cubic,
  endOf,
  inUnit,
  isLine,
  type Line,
  pointAt,
  reversed,
  type Segment,
  startOf,
} from './segment.js';
import { requireSegment } from './sound.js';
import { axisOf, isStraight, straightStops } from './straight.js';

/** A place where two segments meet, with the parameter on each; `overlap` marks an end of a stretch they share. */
export interface SegmentMeeting {
  readonly ta: number;
  readonly tb: number;
  readonly point: Point;
  readonly overlap?: true;
}

/**
 * Every place where two segments meet, once each, ascending along `a`: crossings, touches (within
 * `contactTolerance`), ends of one on the other, ends they share (within `coincidenceTolerance`). Where they run
 * along each other, the two ends of the shared stretch are given, flagged `overlap`.
 * Error of a crossing: under 1e-9 mm for a metre of curve; of a touch, its point within `contactTolerance`.
 */
export function intersectSegments(a: Segment, b: Segment): readonly SegmentMeeting[] {
  requireSegment(a);
  requireSegment(b);
  if (isLine(a)) return isLine(b) ? meetLines(a, b) : meetLineAndCubic(a, b);
  if (isLine(b)) return meetLineAndCubic(b, a).map(swapped).sort(byTa);
  return meetCubics(a, b);
}

const swapped = ({ ta, tb, ...rest }: SegmentMeeting): SegmentMeeting => ({ ...rest, ta: tb, tb: ta });

/** Meetings at which an end of one lies on an end of the other. */
function sharedEnds(a: Segment, b: Segment): readonly SegmentMeeting[] {
  const found: SegmentMeeting[] = [];
  for (let ta = 0; ta <= 1; ta++) {
    const point = ta === 0 ? startOf(a) : endOf(a);
    if (distance(point, startOf(b)) <= coincidenceTolerance) found.push({ ta, tb: 0, point });
    if (distance(point, endOf(b)) <= coincidenceTolerance) found.push({ ta, tb: 1, point });
  }
  return found;
}

function meetLines(a: Line, b: Line): readonly SegmentMeeting[] {
  const u = subtract(a[1], a[0]),
    v = subtract(b[1], b[0]),
    w = subtract(b[0], a[0]);
  const lu = hypot(u.x, u.y),
    lv = hypot(v.x, v.y);
  const turn = cross(u, v);
  // As far as the shorter reaches, lines that differ by less than a contact cannot be told from parallel.
  if (abs(turn) <= contactTolerance * max(lu, lv)) return alongEachOther(a, b);
  const ends = sharedEnds(a, b);
  if (ends.length > 0) return ends;
  const ta = cross(w, v) / turn,
    tb = cross(w, u) / turn;
  const ka = inUnit(ta),
    kb = inUnit(tb);
  const point = pointAt(a, ka);
  return distance(point, pointAt(b, kb)) <= contactTolerance ? [{ ta: ka, tb: kb, point }] : [];
}

/** What a segment on a line and a segment that keeps to its line, or comes near it at an end only, have in common. */
function alongEachOther(a: Segment, b: Segment): readonly SegmentMeeting[] {
  const places: SegmentMeeting[] = [];
  for (const [ta, tb, point] of endsOnEachOther(a, b))
    if (!places.some(p => distance(p.point, point) <= coincidenceTolerance)) places.push({ ta, tb, point });
  if (places.length < 2) return places;
  const way = axisOf(a);
  const along = ({ point }: SegmentMeeting): number => dot(point, way);
  places.sort((p, q) => along(p) - along(q));
  return [places[0]!, places.at(-1)!].map(p => ({ ...p, overlap: true as const })).sort(byTa);
}

const byTa = (p: SegmentMeeting, q: SegmentMeeting): number => p.ta - q.ta;

/** The ends of a segment, and where on its line it turns back: as far as that it reaches. */
const stopsOf = (segment: Segment): readonly number[] =>
  (isLine(segment) ? undefined : straightStops(segment)) ?? [0, 1];

/** Where the ends and turns of each of two segments lie on the other. */
function endsOnEachOther(a: Segment, b: Segment) {
  const found: (readonly [ta: number, tb: number, point: Point])[] = [];
  for (const tb of stopsOf(b)) {
    const near = nearestOnSegment(a, pointAt(b, tb));
    if (near.distance <= coincidenceTolerance) found.push([near.t, tb, near.point]);
  }
  for (const ta of stopsOf(a)) {
    const point = pointAt(a, ta);
    const near = nearestOnSegment(b, point);
    if (near.distance <= coincidenceTolerance) found.push([ta, near.t, point]);
  }
  return found;
}

function meetLineAndCubic(a: Line, b: Cubic): readonly SegmentMeeting[] {
  const length = distance(a[0], a[1]);
  if (length === 0) return onPoint(a, b);
  const along = axisOf(a);
  const off = offLine(a, b),
    [e0, e1, e2, e3] = off;
  if (min(...off) > contactTolerance || max(...off) < -contactTolerance) return sharedEnds(a, b);
  if (isOnLine(off)) return alongEachOther(a, b);
  const found: SegmentMeeting[] = [...sharedEnds(a, b)];
  const roots = rootsInUnit(
    [e0, 3 * (e1 - e0), 3 * (e0 - 2 * e1 + e2), e3 - e0 + 3 * (e1 - e2)],
    contactTolerance,
  );
  for (const tb of roots) {
    const point = pointAt(b, tb);
    const ta = dot(subtract(point, a[0]), along) / length;
    const beyond = max(-ta, ta - 1) * length;
    const known = found.some(
      f => abs(f.tb - tb) < 1 / 64 && distance(f.point, point) <= coincidenceTolerance,
    );
    if (beyond <= contactTolerance && !known) found.push({ ta: inUnit(ta), tb, point });
  }
  return found.sort(byTa);
}

type Four = readonly [number, number, number, number];

/** mm by which the control points of a cubic lie to the left of the line that a segment keeps to. */
const offLine = (a: Segment, cubic: Cubic): Four =>
  cubic.map(p => cross(subtract(p, a[0]), axisOf(a))) as unknown as Four;

const isOnLine = (off: Four): boolean => off.every(e => abs(e) <= contactTolerance);

function onPoint(a: Line, b: Cubic): readonly SegmentMeeting[] {
  const near = nearestOnSegment(b, a[0]);
  return near.distance <= coincidenceTolerance ? [{ ta: 0, tb: near.t, point: a[0] }] : [];
}

const isPoint = (cubic: Cubic): boolean => cubic.every(p => distance(p, cubic[0]) <= contactTolerance);

function meetCubics(a: Cubic, b: Cubic): readonly SegmentMeeting[] {
  if (isPoint(a)) return onPoint([a[0], a[0]], b);
  if (isPoint(b)) return onPoint([b[0], b[0]], a).map(swapped);
  const meeting = ([ta, tb]: ParameterPair): SegmentMeeting => ({ ta, tb, point: pointAt(a, ta) });
  const alike = sameCurve(a, b);
  if (alike) return alike.map(pair => ({ ...meeting(pair), overlap: true }));
  if (isStraight(a) && isOnLine(offLine(a, b))) return alongEachOther(a, b);
  const quick = meetingParameters(a, b, quickLimit, false);
  if (quick) return quick.map(meeting);
  const shared = sharedStretch(a, b);
  if (!shared) return (meetingParameters(a, b, fullLimit, true) ?? []).map(meeting);
  const [start, end] = shared;
  // The rest of each against the whole of the other, leaving out what only says again where the stretch ends.
  const rest: ParameterPair[] = [];
  const lowB = min(start[1], end[1]),
    highB = max(start[1], end[1]);
  const add = (range: readonly [number, number, number, number]): void => {
    if (range[1] - range[0] <= Number.EPSILON || range[3] - range[2] <= Number.EPSILON) return;
    for (const pair of meetingParameters(a, b, fullLimit, true, range) ?? [])
      if (![start, end, ...rest].some(p => isSamePlace(a, p, pair))) rest.push(pair);
  };
  add([0, start[0], 0, 1]);
  add([end[0], 1, 0, 1]);
  add([start[0], end[0], 0, lowB]);
  add([start[0], end[0], highB, 1]);
  const ends = [start, end].map(pair => ({ ...meeting(pair), overlap: true as const }));
  return [...ends, ...rest.map(meeting)].sort(byTa);
}

/** The ends of the whole of both, where they are one curve, travelled one way or the other. */
function sameCurve(a: Cubic, b: Cubic): readonly [ParameterPair, ParameterPair] | undefined {
  const isOn = (p: Point, i: number): boolean => distance(p, a[i]!) <= contactTolerance;
  if (b.every(isOn))
    return [
      [0, 0],
      [1, 1],
    ];
  if (reversed(b).every(isOn))
    return [
      [0, 1],
      [1, 0],
    ];
  return undefined;
}

const isSamePlace = (a: Cubic, p: ParameterPair, q: ParameterPair): boolean =>
  abs(p[0] - q[0]) < 1 / 64 &&
  abs(p[1] - q[1]) < 1 / 64 &&
  distance(pointAt(a, p[0]), pointAt(a, q[0])) <= coincidenceTolerance;

/** Pairs of pieces looked at before it is asked whether the curves run along each other; crossings need about ten. */
const quickLimit = 300;
/** Enough for two curves of a metre that run a thousandth of a millimetre apart. */
const fullLimit = 60_000;

/**
 * The first and last parameters of the stretch two cubics share. Its ends are ends of one of them. Two different
 * cubics meet in at most nine places (Bézout), so ten that lie on both, between such ends, make them one curve.
 */
function sharedStretch(a: Cubic, b: Cubic): readonly [ParameterPair, ParameterPair] | undefined {
  const ends = endsOnEachOther(a, b).map(([ta, tb]): ParameterPair => [ta, tb]);
  ends.sort((p, q) => p[0] - q[0]);
  // The ends of a closed curve are one point: of the pairs that can be, the longest that are on both all along.
  const pairs = ends.flatMap((first, i) => ends.slice(i + 1).map(last => [first, last] as const));
  return pairs
    .filter(([first, last]) => last[0] - first[0] > sameParameter && first[1] !== last[1])
    .sort((p, q) => q[1][0] - q[0][0] - (p[1][0] - p[0][0]))
    .find(([first, last]) => isShared(a, b, first[0], last[0]));
}

function isShared(a: Cubic, b: Cubic, from: number, to: number): boolean {
  for (let i = 1; i <= 10; i++) {
    const point = pointAt(a, from + ((to - from) * i) / 11);
    if (nearestOnSegment(b, point).distance > coincidenceTolerance) return false;
  }
  return true;
}
