import type { Point } from '../../vector.js';
import { solved } from './linear.js';

/** A map of one plane onto another as a picture shows it: nine numbers row by row, the last 1. */
export type Homography = readonly number[];

/**
 * The map that carries points onto others, in least squares; four pairs or more, no three of the four in line.
 * Source: Hartley and Zisserman, Multiple View Geometry, 2004, §4.1, the inhomogeneous solution; both sides scaled.
 * @returns undefined where the points do not settle it
 */
export function homographyFrom(from: readonly Point[], to: readonly Point[]): Homography | undefined {
  const f = scaling(from),
    t = scaling(to);
  const normal = Array.from({ length: 8 }, () => new Array<number>(8).fill(0));
  const right = new Array<number>(8).fill(0);
  const take = (row: readonly number[], value: number) => {
    for (let i = 0; i < 8; i++) {
      if (row[i] === 0) continue;
      for (let j = 0; j < 8; j++) normal[i]![j]! += row[i]! * row[j]!;
      right[i]! += row[i]! * value;
    }
  };
  from.forEach((p, i) => {
    const x = (p.x - f.x) / f.s,
      y = (p.y - f.y) / f.s,
      u = (to[i]!.x - t.x) / t.s,
      v = (to[i]!.y - t.y) / t.s;
    take([x, y, 1, 0, 0, 0, -u * x, -u * y], u);
    take([0, 0, 0, x, y, 1, -v * x, -v * y], v);
  });
  const h = solved(normal, right);
  if (!h) return undefined;
  const [a, b, c, d, e, g, k, l] = h as [number, number, number, number, number, number, number, number];
  // Back from the scaled planes: T⁻¹ H F.
  const rows = [
    [t.s * a + t.x * k, t.s * b + t.x * l, t.s * c + t.x],
    [t.s * d + t.y * k, t.s * e + t.y * l, t.s * g + t.y],
    [k, l, 1],
  ].map(([p, q, r]) => [p! / f.s, q! / f.s, r! - (p! * f.x + q! * f.y) / f.s]);
  const w = rows[2]![2]!;
  if (!(Math.abs(w) > 0)) return undefined;
  return rows.flat().map(v => v / w);
}

/** Where a map carries a point. */
export function carried(h: Homography, { x, y }: Point): Point {
  const w = h[6]! * x + h[7]! * y + h[8]!;
  return { x: (h[0]! * x + h[1]! * y + h[2]!) / w, y: (h[3]! * x + h[4]! * y + h[5]!) / w };
}

function scaling(points: readonly Point[]): { readonly x: number; readonly y: number; readonly s: number } {
  const n = points.length;
  const x = points.reduce((sum, p) => sum + p.x, 0) / n,
    y = points.reduce((sum, p) => sum + p.y, 0) / n;
  const s = points.reduce((sum, p) => sum + Math.hypot(p.x - x, p.y - y), 0) / n;
  return { x, y, s: s || 1 };
}
