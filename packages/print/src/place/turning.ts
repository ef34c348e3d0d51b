import type { Point } from '@paperhinge/geometry';
import { boxOf, type Polygon } from '../plane/polygon.js';

/** By how much a piece may be turned on the paper to save pages; it is never turned over. */
export type Turning = 'none' | 'half' | 'quarter' | 'any';
/** How far pieces may be turned on paper. */
export const turnings: readonly Turning[] = ['none', 'half', 'quarter', 'any'];

/** A turn by where it carries the way to the right: (cos, sin). Quarter turns are exact. */
export type Turn = Point;
const upright: Turn = { x: 1, y: 0 };
const quarters: readonly Turn[] = [upright, { x: -1, y: 0 }, { x: 0, y: 1 }, { x: 0, y: -1 }];

/** degrees between the turns that are tried where any is allowed, beside those that lay a long side straight. */
const step = 15;
/** The long sides that are tried. */
const sides = 3;

/** The turns to try for a shape, the least first; `sides` are those of `any` that lay a long side straight. */
export function turnsFor(polygons: readonly Polygon[], turning: Turning | 'sides'): readonly Turn[] {
  if (turning === 'none') return [upright];
  if (turning === 'half') return quarters.slice(0, 2);
  if (turning === 'quarter') return quarters;
  const inSteps = Array.from({ length: 360 / step }, (_, i) => turnBy((i * step * Math.PI) / 180));
  const laidStraight = longSides(polygons[0]!).flatMap(s => {
    const back = { x: s.x, y: -s.y };
    return quarters.map(q => ({ x: q.x * back.x - q.y * back.y, y: q.x * back.y + q.y * back.x }));
  });
  const leaning = turning === 'sides' ? [] : inSteps;
  return [...quarters, ...leaning.filter(t => !quarters.some(q => near(q, t))), ...laidStraight].filter(
    (t, i, all) => all.findIndex(u => near(u, t)) === i,
  );
}

const turnBy = (angle: number): Turn => ({ x: Math.cos(angle), y: Math.sin(angle) });
export const turnedPoint = (p: Point, t: Turn): Point => ({
  x: t.x * p.x - t.y * p.y,
  y: t.y * p.x + t.x * p.y,
});

/** A tenth of a degree. */
const near = (a: Turn, b: Turn): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 0.0017;

/** Directions of the longest sides of a polygon's hull: laid along the paper's edge they waste least. */
function longSides(polygon: Polygon): readonly Turn[] {
  const hull = hullOf(polygon);
  const all = hull.map((p, i) => {
    const q = hull[(i + 1) % hull.length]!;
    return { x: q.x - p.x, y: q.y - p.y, length: Math.hypot(q.x - p.x, q.y - p.y) };
  });
  const { width, height } = boxOf([polygon]);
  return all
    .filter(s => s.length > Math.max(width, height) / 4)
    .sort((a, b) => b.length - a.length)
    .slice(0, sides)
    .map(s => ({ x: s.x / s.length, y: s.y / s.length }));
}

/** Convex hull by sorted points (Andrew's monotone chain, 1979). */
function hullOf(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (list: readonly Point[]) => {
    const chain: Point[] = [];
    for (const p of list) {
      while (chain.length > 1) {
        const [a, b] = [chain.at(-2)!, chain.at(-1)!];
        if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 0) break;
        chain.pop();
      }
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}
