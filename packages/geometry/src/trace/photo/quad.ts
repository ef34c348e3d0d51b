import { cross, distance, type Point, subtract } from '../../vector.js';
import { polygonArea } from './hull.js';

/** Four corners, clockwise as seen. */
export type Quad = readonly [Point, Point, Point, Point];

/** Of the hull's area: what four corners may leave out of a target's hull, whose corners are soft. */
const leastCover = 0.86;
/** A square seen from 60 degrees is half as wide as long; beyond that nothing can be read. */
const mostSlender = 3;

/** The four-cornered shape that fills a hull best, if it is one: a target's outer border as seen. */
export function quadIn(hull: readonly Point[]): Quad | undefined {
  if (hull.length < 4) return undefined;
  let a = hull[0]!,
    c = a;
  for (const p of hull) for (const q of hull) if (distance(p, q) > distance(a, c)) [a, c] = [p, q];
  const off = (p: Point) => cross(subtract(c, a), subtract(p, a));
  const b = hull.reduce((far, p) => (off(p) < off(far) ? p : far));
  const d = hull.reduce((far, p) => (off(p) > off(far) ? p : far));
  const quad: Quad = [a, b, c, d];
  const area = polygonArea(quad);
  if (area <= 0 || area < leastCover * polygonArea(hull)) return undefined;
  const sides = quad.map((p, i) => distance(p, quad[(i + 1) % 4]!));
  return Math.max(...sides) <= mostSlender * Math.min(...sides) ? quad : undefined;
}
