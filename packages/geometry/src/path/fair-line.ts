import { hobbyCubic, hobbyDirections } from '../curve/hobby.js';
import { line } from '../curve/segment.js';
import { requirePoint } from '../curve/sound.js';
import { refusal } from '../curve/tellings.js';
import { coincidenceTolerance } from '../tolerance.js';
import { cross, distance, dot, type Point, subtract, unit } from '../vector.js';
import { type Path, pathOf } from './path.js';

/**
 * A fair line through points, one cubic between each two, with one tangent at every point between; straight through
 * two where neither end has a direction. Where no end direction is given it is that of the circle through the three
 * points there, or, of two points, the circle that leaves the other end as asked.
 * @throws PatternError `too-few-points`: fewer than two that differ; `no-direction` where a direction is zero
 */
export function fairLine(points: readonly Point[], startDirection?: Point, endDirection?: Point): Path {
  points.forEach(requirePoint);
  const knots = distinct(points);
  if (knots.length < 2) throw refusal('too-few-points', {});
  const [start, end] = [startDirection, endDirection].map(d => d && directed(d));
  if (knots.length === 2) return throughTwo(knots[0]!, knots[1]!, start, end);
  const [y, x, w] = [knots.at(-1)!, knots.at(-2)!, knots.at(-3)!];
  return chain(
    knots,
    start ?? circleDirection(knots[0]!, knots[1]!, knots[2]!),
    end ?? opposite(circleDirection(y, x, w)),
  );
}

function throughTwo(from: Point, to: Point, start: Point | undefined, end: Point | undefined): Path {
  if (!start && !end) return pathOf(line(from, to));
  const along = unit(subtract(to, from));
  // A circle leaves its chord at both ends by one angle.
  const mirrored = (d: Point): Point => {
    const k = 2 * dot(d, along);
    return { x: k * along.x - d.x, y: k * along.y - d.y };
  };
  return pathOf(hobbyCubic(from, start ?? mirrored(end!), to, end ?? mirrored(start!)));
}

/** The fair chain through distinct points whose end directions are known. */
export function chain(points: readonly Point[], first: Point, last: Point): Path {
  const directions = hobbyDirections(points, first, last);
  return {
    segments: points.slice(1).map((p, i) => hobbyCubic(points[i]!, directions[i]!, p, directions[i + 1]!)),
  };
}

/** A direction of length 1. @throws PatternError `no-direction` */
export function directed(direction: Point): Point {
  requirePoint(direction);
  const d = unit(direction);
  if (d.x * d.x + d.y * d.y > 0) return d;
  throw refusal('no-direction', {});
}

/** Points without those that repeat the one before. */
export const distinct = (points: readonly Point[]): readonly Point[] =>
  points.filter((p, i) => i === 0 || distance(p, points[i - 1]!) > coincidenceTolerance);

export const opposite = (d: Point): Point => ({ x: -d.x, y: -d.y });

/** The direction at `a` of the circle through a, b and c; that of the line where they are in line. */
export function circleDirection(a: Point, b: Point, c: Point): Point {
  const u = subtract(b, a),
    v = subtract(c, a);
  const uu = dot(u, u),
    vv = dot(v, v);
  if (cross(u, v) === 0) return unit(u);
  // Inversion in a: circles through a become lines, so the tangent is the direction of the inverse chord.
  const d = { x: u.x / uu - v.x / vv, y: u.y / uu - v.y / vv };
  const tangent = unit(d);
  return dot(tangent, u) < 0 ? opposite(tangent) : tangent;
}
