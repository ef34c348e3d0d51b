import { PatternError } from '../errors.js';
import { contactTolerance, fitTolerance } from '../tolerance.js';
import { type Point, scale, unit } from '../vector.js';
import { arcBetween } from './arc.js';
import { curvatureExtremes, cusps } from './curvature.js';
import { fitParallel } from './offset-fit.js';
import { directionAt, type Parallel, parallelOf, stretchAt } from './parallel.js';
import { xAt, yAt } from './power-form.js';
import { type Cubic, isLine, line, pointAt, type Segment, secondDerivativeAt } from './segment.js';
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
  if (!(tolerance > 0))
    throw new PatternError('tolerance-not-positive', {
      message: `A parallel within ${tolerance} mm cannot be drawn.`,
      remedy: 'Give a tolerance above 0 mm.',
    });
  if (d === 0) return [segment];
  if (isLine(segment)) return offsetLine(segment[0], segment[1], d);
  return isStraight(segment) ? offsetStraight(segment, d) : offsetBent(segment, d, tolerance);
}

function offsetLine(a: Point, b: Point, d: number): readonly Segment[] {
  const { x, y } = unit({ x: b.x - a.x, y: b.y - a.y });
  if (x === 0 && y === 0) return [];
  return [line({ x: a.x + d * y, y: a.y - d * x }, { x: b.x + d * y, y: b.y - d * x })];
}

/** Whether all control points lie on one line, to within a contact; a single point does. */
function isStraight([p, q, r, s]: Cubic): boolean {
  const far = [q, r, s].reduce((a, b) =>
    Math.hypot(b.x - p.x, b.y - p.y) > Math.hypot(a.x - p.x, a.y - p.y) ? b : a,
  );
  const { x, y } = unit({ x: far.x - p.x, y: far.y - p.y });
  return [q, r, s].every(c => Math.abs((c.x - p.x) * y - (c.y - p.y) * x) <= contactTolerance);
}

/** A cubic that runs on a line, perhaps to and fro; about a turning point from one side to the other, beyond it. */
function offsetStraight(curve: Cubic, d: number): readonly Segment[] {
  const stops = [0, ...cusps(curve), 1];
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i]!;
    const straight = offsetLine(pointAt(curve, from), pointAt(curve, to), d);
    if (i === 0) return straight;
    const leaving = unit(secondDerivativeAt(curve, from));
    const side = { x: -leaving.y * d, y: leaving.x * d };
    return [...arcBetween(pointAt(curve, from), side, scale(side, -1), d > 0), ...straight];
  });
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

/** About a place where the curve turns on the spot: the direction sweeps the way the curve turns, at its own ends. */
function roundSpot(parallel: Parallel, from: number, to: number): readonly Segment[] {
  const { form, d, turn } = parallel;
  const u = directionAt(parallel, from),
    v = directionAt(parallel, to);
  const clockwise =
    (turn[2] * from + turn[1]) * from + turn[0] + (turn[2] * to + turn[1]) * to + turn[0] >= 0;
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
  // Between extremes of the curvature 1 + κ d is monotonic: each change of sign brackets one cusp of the parallel.
  const stops = [from, ...curvatureExtremes(curve).filter(t => t > from && t < to), to];
  const cuts = [from];
  const inset = (to - from) * endInset;
  let low = stretchAt(parallel, from + inset);
  for (let i = 1; i < stops.length; i++) {
    const high = stretchAt(parallel, i === stops.length - 1 ? to - inset : stops[i]!);
    if (low < 0 !== high < 0) cuts.push(signChange(parallel, stops[i - 1]!, stops[i]!, low < 0));
    low = high;
  }
  cuts.push(to);
  return cuts.slice(1).flatMap((cut, i) => fitParallel(parallel, cuts[i]!, cut));
}

/** At an end where the curve starts from rest the stretch is zero by its speed, not by its bend. */
const endInset = 1e-7;
/** Parameters this near are one. */
const narrowest = 1e-13;

function signChange(parallel: Parallel, from: number, to: number, rising: boolean): number {
  let low = from,
    high = to;
  while (high - low > narrowest) {
    const middle = (low + high) / 2;
    if (stretchAt(parallel, middle) < 0 === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
