import { rootsInUnit } from '../polynomial.js';
import { coincidenceTolerance, fitTolerance, narrowestStretch, restHair } from '../tolerance.js';
import { add, distance, dot, leftOf, type Point, scale, subtract, unit } from '../vector.js';
import { arcBetween } from './arc.js';
import { curvatureExtremes, paceBounds } from './curvature.js';
import { fitParallel } from './offset-fit.js';
import { directionAt, type Parallel, parallelOf, stretchAt } from './parallel.js';
import { xAt, yAt } from './power-form.js';
import { type Cubic, isLine, line, pointAt, type Segment } from './segment.js';
import { requireDistance, requireSegment, requireTolerance } from './sound.js';
import { axisOf, isStraight, turningPoints } from './straight.js';
import { tightSpots } from './tight-spots.js';

/**
 * The parallel of a segment, d mm to the left of its travel (the outside of a clockwise outline), negative to the
 * right; untrimmed: where d is more than the radius of a bend to that side, the parallel runs back between two
 * cusps. Parts follow each other without a gap. Where the segment itself turns on the spot (a cusp, a bend of less
 * than the tolerance), an arc about that spot joins them. A segment of no length has no parallel: an empty list.
 *
 * Cut where 1 + κ d = 0, where the parallel has its cusps, and then, as far as the tolerance asks, at inflections
 * and into even stretches; few cubics, each proven to lie within `tolerance` mm of the true parallel
 * (see {@link isParallel}) and to have its end points and end directions.
 *
 * @throws PatternError `tolerance-not-positive`
 */
export function offsetSegment(segment: Segment, d: number, tolerance = fitTolerance): readonly Segment[] {
  requireSegment(segment);
  requireDistance(d, 'distance');
  requireTolerance(tolerance);
  if (d === 0) return [segment];
  if (isLine(segment)) return offsetLine(segment[0], segment[1], d);
  const curve = withoutSpecks(segment);
  return isStraight(curve) ? offsetStraight(curve, d) : offsetBent(curve, d, tolerance);
}

function offsetLine(a: Point, b: Point, d: number): readonly Segment[] {
  const { x, y } = unit({ x: b.x - a.x, y: b.y - a.y });
  if (x === 0 && y === 0) return [];
  return [line({ x: a.x + d * y, y: a.y - d * x }, { x: b.x + d * y, y: b.y - d * x })];
}

/** Control points that coincide with an end are moved onto it, so that no direction is taken from a speck. */
function withoutSpecks([p, q, r, s]: Cubic): Cubic {
  const near = (a: Point, b: Point): boolean => distance(a, b) <= coincidenceTolerance;
  if (near(p, s) && near(p, q) && near(p, r)) return [p, p, p, p];
  const start = near(p, q) ? p : near(q, s) ? s : q;
  return [p, start, near(r, s) ? s : near(p, r) ? p : r, s];
}

/** A cubic that runs on a line, perhaps to and fro; about a turning point from one side to the other, beyond it. */
function offsetStraight(curve: Cubic, d: number): readonly Segment[] {
  const stops = [0, ...turningPoints(curve), 1].map(t => pointAt(curve, t));
  const axis = axisOf(curve);
  const parts: Segment[] = [];
  for (let i = 1; i < stops.length; i++) {
    const from = stops[i - 1]!,
      to = stops[i]!;
    const sense = Math.sign(dot(subtract(to, from), axis));
    if (sense === 0) continue;
    const side = scale(leftOf(axis), sense * d);
    if (parts.length > 0) parts.push(...arcBetween(from, scale(side, -1), side, d > 0));
    parts.push(line(add(from, side), add(to, side)));
  }
  return parts;
}

function offsetBent(curve: Cubic, d: number, tolerance: number): readonly Segment[] {
  const parallel = parallelOf(curve, d, tolerance);
  const parts: Segment[] = [];
  let done = 0;
  for (const { from, to } of tightSpots(curve, tolerance)) {
    if (from > done) parts.push(...offsetSmooth(curve, parallel, done, from));
    parts.push(...roundSpot(parallel, from, to));
    done = to;
  }
  if (done < 1) parts.push(...offsetSmooth(curve, parallel, done, 1));
  return parts;
}

/** About a place where the curve turns on the spot: the way the curve turns, to and fro where it turns both ways. */
function roundSpot(parallel: Parallel, from: number, to: number): readonly Segment[] {
  const bendAt = (t: number): number => (parallel.turn[2] * t + parallel.turn[1]) * t + parallel.turn[0];
  const stops = [from, ...rootsInUnit(parallel.turn).filter(t => t > from && t < to), to];
  const parts: { from: number; to: number; clockwise: boolean }[] = [];
  for (let i = 1; i < stops.length; i++) {
    const clockwise = bendAt((stops[i - 1]! + stops[i]!) / 2) >= 0;
    const last = parts.at(-1);
    // At a cusp the bend is zero, and of one sign on both sides of it.
    if (last?.clockwise === clockwise) last.to = stops[i]!;
    else parts.push({ from: stops[i - 1]!, to: stops[i]!, clockwise });
  }
  return parts.flatMap(part => roundTurn(parallel, part.from, part.to, part.clockwise));
}

function roundTurn(parallel: Parallel, from: number, to: number, clockwise: boolean): readonly Segment[] {
  const { form, d } = parallel;
  const u = directionAt(parallel, from),
    v = directionAt(parallel, to);
  const a = { x: xAt(form, from), y: yAt(form, from) },
    b = { x: xAt(form, to), y: yAt(form, to) };
  const arcs = arcBetween(a, { x: d * u.y, y: -d * u.x }, { x: d * v.y, y: -d * v.x }, clockwise);
  // The centre moves from a to b with the sweep, by less than the tolerance.
  const moved = (p: Point, k: number): Point => ({ x: p.x + (b.x - a.x) * k, y: p.y + (b.y - a.y) * k });
  return arcs.map(([p, q, r, s], i): Cubic => {
    const k = i / arcs.length,
      l = (i + 1) / arcs.length;
    return [moved(p, k), moved(q, k), moved(r, l), moved(s, l)];
  });
}

function offsetSmooth(curve: Cubic, parallel: Parallel, from: number, to: number): readonly Segment[] {
  if (!mayTurnBack(curve, parallel.d)) return fitParallel(parallel, from, to);
  // Between extremes of the curvature 1 + κ d is monotonic: each change of sign brackets one cusp of the parallel.
  const first = from + (to - from) * restHair,
    last = to - (to - from) * restHair;
  const stops = [first, ...curvatureExtremes(curve).filter(t => t > first && t < last), last];
  const cuts = [from];
  let low = stretchAt(parallel, first);
  for (let i = 1; i < stops.length; i++) {
    const high = stretchAt(parallel, stops[i]!);
    if (low < 0 !== high < 0) cuts.push(signChange(parallel, stops[i - 1]!, stops[i]!, low < 0));
    low = high;
  }
  cuts.push(to);
  return cuts.slice(1).flatMap((cut, i) => fitParallel(parallel, cuts[i]!, cut));
}

/** Whether 1 + κ d may be less than 0 anywhere: by bounds, so that a plain curve is not searched. */
function mayTurnBack(curve: Cubic, d: number): boolean {
  const { speedSquared, leastTurn, mostTurn } = paceBounds(curve);
  return !(
    speedSquared > 0 && speedSquared * Math.sqrt(speedSquared) + Math.min(d * leastTurn, d * mostTurn) > 0
  );
}

function signChange(parallel: Parallel, from: number, to: number, rising: boolean): number {
  let low = from,
    high = to;
  while (high - low > narrowestStretch) {
    const middle = (low + high) / 2;
    if (stretchAt(parallel, middle) < 0 === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
