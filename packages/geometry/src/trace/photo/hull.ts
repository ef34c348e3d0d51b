import { cross, type Point, subtract } from '../../vector.js';

/** The convex hull, clockwise as seen (y down). Source: Andrew, monotone chain, 1979. */
export function hullOf(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const chain = (ordered: readonly Point[]): Point[] => {
    const out: Point[] = [];
    for (const p of ordered) {
      while (out.length > 1 && cross(subtract(out.at(-1)!, out.at(-2)!), subtract(p, out.at(-2)!)) <= 0)
        out.pop();
      out.push(p);
    }
    out.pop();
    return out;
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** Area of a polygon, positive clockwise as seen. */
export const polygonArea = (polygon: readonly Point[]): number =>
  polygon.reduce((sum, p, i) => sum + cross(p, polygon[(i + 1) % polygon.length]!), 0) / 2;
