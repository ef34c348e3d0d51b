import type { Station } from '../../curve/hermite-fit.js';
import { distance, lerp, type Point, unit } from '../../vector.js';
import { outlineStep } from './edge-of-patch.js';

/**
 * How much a change of curvature weighs: at most (waves shorter than about 45 mm are taken out), at least (6 mm), and
 * how much less in turn where a bend is moved.
 */
const most = 9e6,
  least = 60,
  less = 1 / 12;
/**
 * mm, and times the noise: what evening may move the mean of a stretch of so many points, in which noise cancels (not
 * all: neighbours share dots of the picture) and a bend does not.
 */
const leastMove = 0.045,
  noiseMoves = 2;
const stretchPoints = 12;
/** Times a traced point's: the weight of a corner, which many points speak for. */
const cornerWeight = 6;

/**
 * Stations along an edge from its traced points, noise taken out: the line that is nearest to them while its curvature
 * changes least, as much evened as moves no bend. Between a corner and the points next to it, where the picture is
 * soft, the line alone decides. Source: Whittaker, On a new method of graduation, 1923, with third differences.
 */
export function evenedEdge(from: Point, between: readonly Point[], to: Point): readonly Station[] {
  const missing = (a: Point, b: Point): readonly Weighed[] => {
    const steps = Math.round(distance(a, b) / outlineStep);
    return Array.from({ length: Math.max(0, steps - 1) }, (_, k) => ({
      point: lerp(a, b, (k + 1) / steps),
      weight: 0,
    }));
  };
  return evened([
    { point: from, weight: cornerWeight },
    ...missing(from, between[0]!),
    ...between.map(point => ({ point, weight: 1 })),
    ...missing(between.at(-1)!, to),
    { point: to, weight: cornerWeight },
  ]);
}

/** Points over which a closed line is evened beyond its seam. */
const seam = 80;

/** The same for a closed line without corners; the first station stands again at the end. */
export function evenedRing(points: readonly Point[]): readonly Station[] {
  const n = points.length;
  const round = Array.from({ length: n + 2 * seam + 1 }, (_, k) => ({
    point: points[(((k - seam) % n) + n) % n]!,
    weight: 1,
  }));
  const even = evened(round).slice(seam, seam + n + 1);
  return [...even.slice(0, -1), even[0]!];
}

interface Weighed {
  readonly point: Point;
  readonly weight: number;
}

function evened(points: readonly Weighed[]): readonly Station[] {
  const weights = points.map(p => p.weight);
  const [xs, ys] = [points.map(p => p.point.x), points.map(p => p.point.y)];
  const lineAt = (evening: Float64Array): readonly Point[] => {
    const x = graduated(xs, weights, evening),
      y = graduated(ys, weights, evening);
    return points.map((_, i) => ({ x: x[i]!, y: y[i]! }));
  };
  const evening = new Float64Array(points.length).fill(least);
  const limit = Math.max(leastMove, noiseMoves * noiseOf(points, lineAt(evening)));
  evening.fill(most);
  let line = lineAt(evening);
  for (let round = 0; round < 6; round++) {
    const moved = bendsMoved(points, line, limit);
    if (moved.length === 0) break;
    for (const place of moved) {
      // Beside a bend too, or the line would swing out there.
      const from = Math.max(0, place - stretchPoints),
        to = Math.min(points.length, place + 2 * stretchPoints);
      for (let i = from; i < to; i++) evening[i] = Math.max(least, evening[i]! * less);
    }
    line = lineAt(evening);
  }
  return line.map((point, i) => {
    const a = line[Math.max(0, i - 1)]!,
      b = line[Math.min(line.length - 1, i + 1)]!;
    return { point, direction: unit({ x: b.x - a.x, y: b.y - a.y }) };
  });
}

/** mm: how far the points lie from a line that follows all but the finest waves. */
function noiseOf(points: readonly Weighed[], line: readonly Point[]): number {
  const offs = points.flatMap(({ point, weight }, i) => (weight > 0 ? [distance(point, line[i]!)] : []));
  return offs.sort((a, b) => a - b)[offs.length >> 1] ?? 0;
}

/** Where stretches begin whose mean the line lies off by more than a limit. */
function bendsMoved(points: readonly Weighed[], line: readonly Point[], limit: number): readonly number[] {
  const moved: number[] = [];
  for (let from = 0; from + stretchPoints <= points.length; from += stretchPoints) {
    let x = 0,
      y = 0,
      n = 0;
    for (let i = from; i < from + stretchPoints; i++) {
      if (points[i]!.weight === 0) continue;
      x += points[i]!.point.x - line[i]!.x;
      y += points[i]!.point.y - line[i]!.y;
      n++;
    }
    if (n > stretchPoints / 2 && Math.hypot(x, y) / n > limit) moved.push(from);
  }
  return moved;
}

/** Figures nearest to those given whose third differences are least: (W + λ D′D) z = W y, a band of three. */
function graduated(
  values: readonly number[],
  weights: readonly number[],
  evening: Float64Array,
): Float64Array {
  const n = values.length,
    z = Float64Array.from(values);
  if (n < 5) return z;
  // Rows of the lower triangle: the diagonal, then one, two and three below it.
  const band = [0, 1, 2, 3].map(() => new Float64Array(n));
  for (let i = 0; i < n; i++) {
    band[0]![i] = weights[i]!;
    z[i] = weights[i]! * values[i]!;
  }
  const difference = [-1, 3, -3, 1];
  for (let i = 0; i + 3 < n; i++)
    for (let p = 0; p < 4; p++)
      for (let q = p; q < 4; q++) band[q - p]![i + q]! += evening[i]! * difference[p]! * difference[q]!;
  for (let i = 0; i < n; i++)
    for (let d = Math.min(3, i); d >= 0; d--) {
      let sum = band[d]![i]!;
      for (let k = d + 1; k <= Math.min(3, i); k++) sum -= band[k]![i]! * band[k - d]![i - d]!;
      band[d]![i] = d === 0 ? Math.sqrt(sum) : sum / band[0]![i - d]!;
    }
  for (let i = 0; i < n; i++) {
    for (let d = 1; d <= Math.min(3, i); d++) z[i]! -= band[d]![i]! * z[i - d]!;
    z[i]! /= band[0]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let d = 1; d <= 3 && i + d < n; d++) z[i]! -= band[d]![i + d]! * z[i + d]!;
    z[i]! /= band[0]![i]!;
  }
  return z;
}
