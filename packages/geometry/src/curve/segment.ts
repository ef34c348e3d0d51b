import { type Affine, apply } from '../affine.js';
import { max, min } from '../arithmetic.js';
import { legRounding } from '../tolerance.js';
import { add, lerp, norm, type Point, scale, subtract, unit } from '../vector.js';
import { requireParameter, requirePlace, requirePoint, requireSegment } from './sound.js';

/** A straight segment from its first point to its second, in mm. */
export type Line = readonly [Point, Point];
/** A cubic Bézier by its four control points, in mm. */
export type Cubic = readonly [Point, Point, Point, Point];
/** One piece of an edge. A line has two points, a cubic four. */
export type Segment = Line | Cubic;

/** Whether a segment is straight by its kind: two points, not four. */
export const isLine = (segment: Segment): segment is Line => segment.length === 2;
/** The straight segment between two points. */
export function line(from: Point, to: Point): Line {
  requirePoint(from);
  requirePoint(to);
  return [from, to];
}
/** Where a segment starts. */
export const startOf = (segment: Segment): Point => segment[0];
/** Where a segment ends. */
export const endOf = (segment: Segment): Point => (isLine(segment) ? segment[1] : segment[3]);
/** The same segment travelled the other way. */
export const reversed = (segment: Segment): Segment =>
  isLine(segment) ? [segment[1], segment[0]] : [segment[3], segment[2], segment[1], segment[0]];
/** A segment carried by an affine map; exact, as Béziers are affinely invariant. */
export function transformed(segment: Segment, map: Affine): Segment {
  const carried: Segment = isLine(segment)
    ? [apply(map, segment[0]), apply(map, segment[1])]
    : [apply(map, segment[0]), apply(map, segment[1]), apply(map, segment[2]), apply(map, segment[3])];
  requireSegment(carried);
  return carried;
}

/** The same curve written as a cubic; a line's control points lie at its thirds, so that its speed is constant. */
export function asCubic(segment: Segment): Cubic {
  requireSegment(segment);
  return isLine(segment)
    ? [segment[0], lerp(segment[0], segment[1], 1 / 3), lerp(segment[0], segment[1], 2 / 3), segment[1]]
    : segment;
}

/** The quadratic Bézier a, b, c as a cubic; exact. */
export function quadratic(a: Point, b: Point, c: Point): Cubic {
  const curve: Cubic = [a, lerp(a, b, 2 / 3), lerp(c, b, 2 / 3), c];
  requireSegment(curve);
  return curve;
}

/** The point at parameter t in [0, 1]. The ends are returned exactly. */
export function pointAt(segment: Segment, t: number): Point {
  requirePlace(segment, t);
  if (t <= 0) return startOf(segment);
  if (t >= 1) return endOf(segment);
  if (isLine(segment)) return lerp(segment[0], segment[1], t);
  const [p, q, r, s] = segment;
  const u = 1 - t,
    a = u * u * u,
    b = 3 * u * u * t,
    c = 3 * u * t * t,
    d = t * t * t;
  return { x: a * p.x + b * q.x + c * r.x + d * s.x, y: a * p.y + b * q.y + c * r.y + d * s.y };
}

/** A parameter kept within [0, 1]. */
export const inUnit = (t: number): number => min(1, max(0, t));

/** First derivative by the parameter, clamped to [0, 1], in mm. */
export function derivativeAt(segment: Segment, at: number): Point {
  requirePlace(segment, at);
  if (isLine(segment)) return subtract(segment[1], segment[0]);
  const [p, q, r, s] = segment;
  const t = inUnit(at),
    u = 1 - t;
  return add(
    add(scale(subtract(q, p), 3 * u * u), scale(subtract(r, q), 6 * u * t)),
    scale(subtract(s, r), 3 * t * t),
  );
}

/** Second derivative by the parameter, clamped to [0, 1], in mm. */
export function secondDerivativeAt(segment: Segment, at: number): Point {
  requirePlace(segment, at);
  if (isLine(segment)) return { x: 0, y: 0 };
  const [p, q, r, s] = segment;
  const t = inUnit(at),
    u = 1 - t;
  return {
    x: 6 * (u * (p.x - 2 * q.x + r.x) + t * (q.x - 2 * r.x + s.x)),
    y: 6 * (u * (p.y - 2 * q.y + r.y) + t * (q.y - 2 * r.y + s.y)),
  };
}

/**
 * Unit direction of travel at parameter t. Where the derivative vanishes (coincident control points) the limit
 * direction is taken: from the next control point that differs at an end, from nearby parameters within.
 * A segment that is a single point has direction zero.
 */
export function tangentAt(segment: Segment, t: number): Point {
  requirePlace(segment, t);
  if (isLine(segment)) return unit(subtract(segment[1], segment[0]));
  const [p, q, r, s] = segment;
  const size = max(norm(subtract(q, p)), norm(subtract(r, q)), norm(subtract(s, r)));
  const tiny = size * legRounding;
  if (t <= 0) return firstDirection([subtract(q, p), subtract(r, p), subtract(s, p)], tiny);
  if (t >= 1) return firstDirection([subtract(s, r), subtract(s, q), subtract(s, p)], tiny);
  const d = derivativeAt(segment, t);
  if (norm(d) > 3 * tiny) return unit(d);
  // A cusp: the direction it arrives in is against its second derivative, the one it leaves in along it.
  return unit(secondDerivativeAt(segment, t));
}

function firstDirection(candidates: readonly Point[], tiny: number): Point {
  const found = candidates.find(v => norm(v) > tiny);
  return found ? unit(found) : { x: 0, y: 0 };
}

/** The two parts of a segment on either side of a parameter, clamped to [0, 1] (de Casteljau); exact but for rounding. */
export function splitAt(segment: Segment, at: number): readonly [Segment, Segment] {
  requirePlace(segment, at);
  const t = inUnit(at);
  if (isLine(segment)) {
    const m = lerp(segment[0], segment[1], t);
    return [
      [segment[0], m],
      [m, segment[1]],
    ];
  }
  const [p, q, r, s] = segment;
  const a = lerp(p, q, t),
    b = lerp(q, r, t),
    c = lerp(r, s, t);
  const d = lerp(a, b, t),
    e = lerp(b, c, t),
    m = lerp(d, e, t);
  return [
    [p, a, d, m],
    [m, e, c, s],
  ];
}

/** The part of a segment between two parameters, t0 <= t1. */
export function between(segment: Segment, t0: number, t1: number): Segment {
  requireParameter(t0);
  requirePlace(segment, t1);
  const tail = t0 <= 0 ? segment : splitAt(segment, t0)[1];
  return t1 >= 1 ? tail : splitAt(tail, t0 >= 1 ? 1 : (t1 - max(t0, 0)) / (1 - max(t0, 0)))[0];
}
