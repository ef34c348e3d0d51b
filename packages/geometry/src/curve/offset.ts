import { PatternError } from '../errors.js';
import { fitTolerance } from '../tolerance.js';
import { cross, distance, dot, type Point, scale, unit } from '../vector.js';
import { arcBetween } from './arc.js';
import { curvatureExtremes, cusps, inflections } from './curvature.js';
import { fitHandles, type HermiteFit, type Station } from './hermite-fit.js';
import {
  type Cubic,
  derivativeAt,
  isLine,
  line,
  pointAt,
  type Segment,
  secondDerivativeAt,
  tangentAt,
} from './segment.js';

/**
 * The parallel of a segment, d mm to the left of its travel (the outside of a clockwise outline), negative to the
 * right; untrimmed: where d is more than the radius of a bend to that side, the parallel runs back between two
 * cusps. Parts follow each other without a gap. Where the segment itself stops and turns back, a half circle about
 * that point joins them.
 *
 * Cut where 1 + κ d = 0, then, as far as the tolerance asks, at inflections and into equal turns.
 * A zero-length segment has no parallel: the list is empty.
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
  const stops = cusps(segment);
  const ranges = [0, ...stops, 1];
  const bendsOver = inflections(segment);
  const parts: Segment[] = [];
  for (let i = 1; i < ranges.length; i++) {
    const source: Source = { curve: segment, d, tolerance, from: ranges[i - 1]!, to: ranges[i]!, bendsOver };
    if (i > 1) parts.push(...roundTip(segment, ranges[i - 1]!, d));
    parts.push(...offsetSmooth(source));
  }
  return parts;
}

interface Source {
  readonly curve: Cubic;
  readonly d: number;
  readonly tolerance: number;
  readonly from: number;
  readonly to: number;
  /** Parameters at which the curve goes over from one bend to the other. */
  readonly bendsOver: readonly number[];
}

function offsetLine(a: Point, b: Point, d: number): readonly Segment[] {
  const { x, y } = unit({ x: b.x - a.x, y: b.y - a.y });
  if (x === 0 && y === 0) return [];
  return [line({ x: a.x + d * y, y: a.y - d * x }, { x: b.x + d * y, y: b.y - d * x })];
}

/** About the tip of a cusp, from the side it is reached on to the side it is left on, the long way round the tip. */
function roundTip(curve: Cubic, t: number, d: number): readonly Segment[] {
  const tip = pointAt(curve, t);
  const leaving = unit(secondDerivativeAt(curve, t));
  const arriving = scale(leaving, -1);
  const side = { x: arriving.y * d, y: -arriving.x * d };
  return arcBetween(tip, side, scale(side, -1), d > 0);
}

/** The direction of travel within a range that ends at cusps: one-sided there. */
function directionAt({ curve, from, to }: Source, t: number): Point {
  if (t <= from && from > 0) return unit(secondDerivativeAt(curve, from));
  if (t >= to && to < 1) return scale(unit(secondDerivativeAt(curve, to)), -1);
  return tangentAt(curve, t);
}

function stationAt(source: Source, t: number, sense: number): Station {
  const direction = directionAt(source, t);
  const p = pointAt(source.curve, t);
  return {
    point: { x: p.x + source.d * direction.y, y: p.y - source.d * direction.x },
    direction: sense > 0 ? direction : scale(direction, -1),
  };
}

/** The factor 1 + κ d by which the parallel's speed differs from the curve's, times |B′|³: finite where B′ = 0. */
function stretchAt({ curve, d }: Source, t: number): number {
  const v = derivativeAt(curve, t),
    speed = Math.hypot(v.x, v.y);
  return speed * speed * speed + d * cross(v, secondDerivativeAt(curve, t));
}

function offsetSmooth(source: Source): readonly Segment[] {
  const { curve, from, to } = source;
  if (distance(curve[0], curve[3]) + distance(curve[0], curve[1]) + distance(curve[2], curve[3]) === 0)
    return [];
  const within = (t: number): boolean => t > from && t < to;
  // Between extremes of the curvature 1 + κ d is monotonic: each change of sign brackets one cusp of the parallel.
  const stops = [from, ...curvatureExtremes(curve).filter(within), to];
  const cuts = [from];
  for (let i = 1; i < stops.length; i++) {
    const low = stops[i - 1]!,
      high = stops[i]!;
    const inset = (high - low) * endInset;
    const a = stretchAt(source, low + (i === 1 ? inset : 0)),
      b = stretchAt(source, high - (i === stops.length - 1 ? inset : 0));
    if (a < 0 !== b < 0) cuts.push(halve(source, low, high, a < 0));
  }
  cuts.push(to);
  const parts: Segment[] = [];
  for (let i = 1; i < cuts.length; i++) {
    const t0 = cuts[i - 1]!,
      t1 = cuts[i]!;
    if (t1 - t0 < narrowest) continue;
    const sense = Math.sign(stretchAt(source, (t0 + t1) / 2)) || 1;
    parts.push(...fitRange(source, t0, t1, sense, 0));
  }
  return parts;
}

/** At an end where the curve starts from rest the stretch is zero by its speed, not by its bend. */
const endInset = 1e-6;
const narrowest = 1e-12;

function halve(source: Source, from: number, to: number, rising: boolean): number {
  let low = from,
    high = to;
  for (let i = 0; i < 60 && high - low > narrowest; i++) {
    const middle = (low + high) / 2;
    if (stretchAt(source, middle) < 0 === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const deepest = 24;

function fitRange(source: Source, t0: number, t1: number, sense: number, depth: number): readonly Segment[] {
  const from = stationAt(source, t0, sense),
    to = stationAt(source, t1, sense);
  const direct = fitOnce(source, t0, t1, sense, from, to);
  if (direct.deviation <= source.tolerance * 0.8) return [direct.curve];
  if (depth >= deepest || t1 - t0 < narrowest) return [line(from.point, to.point)];
  return cutsWithin(source, t0, t1, direct.deviation).flatMap(([a, b]) =>
    fitRange(source, a, b, sense, depth + 1),
  );
}

function fitOnce(
  source: Source,
  t0: number,
  t1: number,
  sense: number,
  from: Station,
  to: Station,
): HermiteFit {
  // Two handles do not follow more than a third of a turn.
  if (dot(from.direction, to.direction) < -0.5)
    return { curve: [from.point, from.point, to.point, to.point], deviation: Number.POSITIVE_INFINITY };
  const inner: Station[] = [];
  const count = 9;
  for (let i = 1; i <= count; i++)
    inner.push(stationAt(source, between(source, t0, t1, i / (count + 1)), sense));
  return fitHandles(from, to, inner);
}

/** Half way, in parameter and in turn alike, by a share of both. */
function between({ curve, bendsOver }: Source, t0: number, t1: number, share: number): number {
  const even = t0 + (t1 - t0) * share;
  // A curve that turns both ways has no one place for a share of its turn.
  if (bendsOver.some(t => t > t0 && t < t1)) return even;
  const u = tangentAt(curve, t0),
    v = tangentAt(curve, t1);
  const turn = Math.atan2(cross(u, v), dot(u, v));
  if (Math.abs(turn) < 0.02) return even;
  const c = Math.cos(turn * share),
    s = Math.sin(turn * share);
  const x = u.x * c - u.y * s,
    y = u.x * s + u.y * c;
  const low = derivativeAt(curve, t0),
    high = derivativeAt(curve, t1);
  if ((low.x * y - low.y * x) * (high.x * y - high.y * x) >= 0) return even;
  let a = t0,
    b = t1;
  const rising = low.x * y - low.y * x < 0;
  for (let i = 0; i < 40; i++) {
    const m = (a + b) / 2,
      v = derivativeAt(curve, m);
    if (v.x * y - v.y * x < 0 === rising) a = m;
    else b = m;
  }
  return (even + (a + b) / 2) / 2;
}

function cutsWithin(
  source: Source,
  t0: number,
  t1: number,
  deviation: number,
): readonly (readonly [number, number])[] {
  const margin = (t1 - t0) / 50;
  const inner = source.bendsOver.filter(t => t > t0 + margin && t < t1 - margin);
  if (inner.length > 0) return spans([t0, ...inner, t1]);
  const pieces = Number.isFinite(deviation)
    ? Math.min(4, Math.max(2, Math.ceil((deviation / (source.tolerance * 0.6)) ** (1 / 6))))
    : 2;
  const stops = [t0];
  for (let i = 1; i < pieces; i++) stops.push(between(source, t0, t1, i / pieces));
  return spans([...stops, t1]);
}

const spans = (stops: readonly number[]): readonly (readonly [number, number])[] =>
  stops.slice(1).map((t, i) => [stops[i]!, t] as const);
