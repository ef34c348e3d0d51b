import { add, angleBetween, distance, type Point, scale, subtract } from '../vector.js';
import { asCubic, type Cubic, line } from './segment.js';

/**
 * The cubic from `from` to `to` that leaves and arrives in the given directions (any length but 0), with handles by
 * the velocity rule that comes near a circle where it can and stays fair elsewhere.
 * Source: J. D. Hobby, Smooth, easy to compute interpolating splines, 1986.
 */
export function hobbyCubic(from: Point, fromDirection: Point, to: Point, toDirection: Point): Cubic {
  const chord = subtract(to, from),
    length = distance(from, to);
  if (length === 0) return asCubic(line(from, to));
  const theta = angleBetween(chord, fromDirection),
    phi = angleBetween(toDirection, chord);
  const u = scale(
    fromDirection,
    (velocity(theta, phi) * length) / (3 * Math.hypot(fromDirection.x, fromDirection.y)),
  );
  const v = scale(
    toDirection,
    (velocity(phi, theta) * length) / (3 * Math.hypot(toDirection.x, toDirection.y)),
  );
  return [from, add(from, u), subtract(to, v), to];
}

function velocity(theta: number, phi: number): number {
  const st = Math.sin(theta),
    sp = Math.sin(phi),
    ct = Math.cos(theta),
    cp = Math.cos(phi);
  const over = 2 + Math.SQRT2 * (st - sp / 16) * (sp - st / 16) * (ct - cp);
  const under = 1 + ((Math.sqrt(5) - 1) / 2) * ct + ((3 - Math.sqrt(5)) / 2) * cp;
  return Math.min(fastest, over / Math.max(under, over / fastest));
}

/** Times a third of the chord: bounds the handles where the ends all but turn back. Hobby's own bound. */
const fastest = 4;

/**
 * The directions of a fair curve through points, first and last given: those for which the curvature of each part,
 * taken to first order in the angles, is the same on both sides of every inner point. The points are distinct.
 * Source: Hobby, 1986 (mock curvature); one tridiagonal system.
 */
export function hobbyDirections(points: readonly Point[], first: Point, last: Point): readonly Point[] {
  const n = points.length - 1;
  const chords = points.slice(1).map((p, i) => subtract(p, points[i]!));
  const lengths = chords.map(c => Math.hypot(c.x, c.y));
  const turns = chords.slice(1).map((c, i) => angleBetween(chords[i]!, c));
  const thetas = new Array<number>(n + 1).fill(0);
  thetas[0] = angleBetween(chords[0]!, first);
  thetas[n] = angleBetween(chords[n - 1]!, last);
  // Thomas's elimination: theta[k] = value[k] − upper[k] theta[k + 1].
  const upper = [0],
    value = [thetas[0]];
  for (let k = 1; k < n; k++) {
    const before = 1 / lengths[k - 1]!,
      after = 1 / lengths[k]!;
    const turn = turns[k - 1]!,
      next = k + 1 < n ? turns[k]! : 0;
    const pivot = 2 * (before + after) - before * upper[k - 1]!;
    upper.push(after / pivot);
    value.push((-2 * before * turn - after * next - before * value[k - 1]!) / pivot);
  }
  for (let k = n - 1; k > 0; k--) thetas[k] = value[k]! - upper[k]! * thetas[k + 1]!;
  return points.map((_, k) => (k === 0 ? first : k === n ? last : turnedBy(chords[k]!, thetas[k]!)));
}

function turnedBy({ x, y }: Point, angle: number): Point {
  const c = Math.cos(angle),
    s = Math.sin(angle);
  return { x: c * x - s * y, y: s * x + c * y };
}
