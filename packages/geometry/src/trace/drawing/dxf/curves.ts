import { line, type Segment } from '../../../curve/segment.js';
import { fairLine } from '../../../path/fair-line.js';
import { type Path, pathOf, polyline } from '../../../path/path.js';
import { angleTolerance, weightRounding } from '../../../tolerance.js';
import { distance, lerp, type Point } from '../../../vector.js';
import { type Entity, numberOf, numbersOf } from './groups.js';

// Curves of DXF in its own axes: y runs up.

/** A stretch of a polyline with its bulge, the tangent of a quarter of its arc's angle; to the left of the way where it is positive. */
export function bulged(from: Point, to: Point, bulge: number): readonly Segment[] {
  const chord = distance(from, to);
  if (chord === 0) return [];
  if (Math.abs(bulge) < angleTolerance) return [line(from, to)];
  const angle = 4 * Math.atan(bulge);
  const radius = chord / 2 / Math.abs(Math.sin(angle / 2));
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const away = (radius * Math.cos(angle / 2) * Math.sign(bulge)) / chord;
  const centre = { x: middle.x - (to.y - from.y) * away, y: middle.y + (to.x - from.x) * away };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return arcOf({ centre, across: { x: radius, y: 0 }, ratio: 1 }, start, start + angle);
}

/** An ellipse by its centre, the vector of its longer half axis, and the ratio of the other to it. */
export interface EllipseOf {
  readonly centre: Point;
  readonly across: Point;
  readonly ratio: number;
}

/**
 * An arc of an ellipse from one of its angles to another, by cubics of an eighth of a turn at most: 4e-6 of the radius
 * off at worst (the usual handles of four thirds of the tangent of a quarter of the angle).
 */
export function arcOf({ centre, across, ratio }: EllipseOf, from: number, to: number): readonly Segment[] {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 4)));
  const up = { x: -across.y * ratio, y: across.x * ratio };
  const at = (a: number): Point => ({
    x: centre.x + across.x * Math.cos(a) + up.x * Math.sin(a),
    y: centre.y + across.y * Math.cos(a) + up.y * Math.sin(a),
  });
  const way = (a: number): Point => ({
    x: -across.x * Math.sin(a) + up.x * Math.cos(a),
    y: -across.y * Math.sin(a) + up.y * Math.cos(a),
  });
  return Array.from({ length: steps }, (_, i): Segment => {
    const a = from + ((to - from) * i) / steps,
      b = from + ((to - from) * (i + 1)) / steps;
    const k = (4 / 3) * Math.tan((b - a) / 4);
    const [p, q, u, v] = [at(a), at(b), way(a), way(b)];
    return [p, { x: p.x + k * u.x, y: p.y + k * u.y }, { x: q.x - k * v.x, y: q.y - k * v.y }, q];
  });
}

/**
 * A SPLINE: of degree 3 without weights cut into its cubics exactly (knots inserted until each is threefold, after
 * W. Boehm, 1980); of another kind sampled closely; one of fit points alone is drawn fair through them.
 */
export function splineOf(entity: Entity): Path | undefined {
  const control = pointsOf(entity, 10),
    fit = pointsOf(entity, 11),
    knots = numbersOf(entity, 40),
    weights = numbersOf(entity, 41);
  const degree = numberOf(entity, 71, 3);
  if (control.length > degree && knots.length === control.length + degree + 1)
    return degree === 3 && weights.every(w => Math.abs(w - weights[0]!) < weightRounding)
      ? cubicsOf(control, knots)
      : polyline(...sampled(control, knots, degree, weights));
  const points = fit.length > 1 ? fit : control;
  return points.length > 1 ? fairLine(points) : undefined;
}

/** Points of an entity whose x has this code, in its own axes. */
export function pointsOf(entity: Entity, code: number): readonly Point[] {
  const ys = numbersOf(entity, code + 10);
  return numbersOf(entity, code).flatMap((x, i) => (ys[i] === undefined ? [] : [{ x, y: ys[i]! }]));
}

function cubicsOf(control: readonly Point[], knots: readonly number[]): Path | undefined {
  let points = [...control],
    ts = [...knots];
  const low = ts[3]!,
    high = ts[ts.length - 4]!;
  for (const t of new Set(ts.filter(k => k >= low && k <= high)))
    while (ts.filter(k => k === t).length < 3) [points, ts] = inserted(points, ts, t);
  // Threefold knots: every third control point lies on the curve.
  const first = ts.lastIndexOf(low) - 3;
  const segments: Segment[] = [];
  for (let i = first; i + 3 < points.length && ts[i + 3]! < high; i += 3)
    segments.push([points[i]!, points[i + 1]!, points[i + 2]!, points[i + 3]!]);
  return segments.length > 0 ? pathOf(...segments) : undefined;
}

/** One knot more, the curve the same. */
function inserted(points: readonly Point[], ts: readonly number[], t: number): [Point[], number[]] {
  const k = lastAtMost(ts, t);
  const next: Point[] = [];
  for (let i = 0; i <= points.length; i++) {
    if (i <= k - 3) next.push(points[i]!);
    else if (i > k) next.push(points[i - 1]!);
    else {
      const span = ts[i + 3]! - ts[i]!;
      const share = span === 0 ? 0 : (t - ts[i]!) / span;
      next.push(lerp(points[i - 1]!, points[i]!, share));
    }
  }
  return [next, [...ts.slice(0, k + 1), t, ...ts.slice(k + 1)]];
}
const lastAtMost = (ts: readonly number[], t: number): number => {
  let k = ts.length - 5;
  while (k > 3 && ts[k]! > t) k--;
  return k;
};

const samples = 24;

/** De Boor's points of any spline, a few dozen to a knot. */
function sampled(
  control: readonly Point[],
  knots: readonly number[],
  degree: number,
  weights: readonly number[],
): readonly Point[] {
  const n = control.length;
  const spans = [...new Set(knots.slice(degree, n + 1))];
  const ts = spans
    .slice(1)
    .flatMap((to, i) =>
      Array.from({ length: samples }, (_, j) => spans[i]! + ((to - spans[i]!) * j) / samples),
    );
  return [...ts, spans.at(-1)!].map(t => {
    let k = degree;
    while (k < n - 1 && knots[k + 1]! <= t) k++;
    const d = Array.from({ length: degree + 1 }, (_, j) => {
      const i = k - degree + j,
        w = weights[i] ?? 1;
      return { x: control[i]!.x * w, y: control[i]!.y * w, w };
    });
    for (let r = 1; r <= degree; r++)
      for (let j = degree; j >= r; j--) {
        const i = k - degree + j,
          span = knots[i + degree - r + 1]! - knots[i]!,
          a = span === 0 ? 0 : (t - knots[i]!) / span;
        d[j] = {
          x: d[j - 1]!.x * (1 - a) + d[j]!.x * a,
          y: d[j - 1]!.y * (1 - a) + d[j]!.y * a,
          w: d[j - 1]!.w * (1 - a) + d[j]!.w * a,
        };
      }
    const { x, y, w } = d[degree]!;
    return { x: x / w, y: y / w };
  });
}
