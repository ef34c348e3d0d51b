import { type PowerForm, xAt, yAt } from './power-form.js';

/** Control points of a piece of a cubic, or of the difference of two such pieces, in mm. */
export interface Controls {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly x3: number;
  readonly y3: number;
}

/** Of a piece between two parameters: its ends, and its ends moved along a third of the end derivatives. */
export function controlsOf(f: PowerForm, from: number, to: number): Controls {
  const h = (to - from) / 3;
  const x0 = xAt(f, from),
    y0 = yAt(f, from),
    x3 = xAt(f, to),
    y3 = yAt(f, to);
  return {
    x0,
    y0,
    x1: x0 + ((3 * f.x3 * from + 2 * f.x2) * from + f.x1) * h,
    y1: y0 + ((3 * f.y3 * from + 2 * f.y2) * from + f.y1) * h,
    x2: x3 - ((3 * f.x3 * to + 2 * f.x2) * to + f.x1) * h,
    y2: y3 - ((3 * f.y3 * to + 2 * f.y2) * to + f.y1) * h,
    x3,
    y3,
  };
}

/** a − b: again a cubic, whose control points are the differences. */
export const difference = (a: Controls, b: Controls): Controls => ({
  x0: a.x0 - b.x0,
  y0: a.y0 - b.y0,
  x1: a.x1 - b.x1,
  y1: a.y1 - b.y1,
  x2: a.x2 - b.x2,
  y2: a.y2 - b.y2,
  x3: a.x3 - b.x3,
  y3: a.y3 - b.y3,
});

/** The three legs of a control polygon: a third of the derivative is the quadratic of these. */
export interface Legs {
  readonly ax: number;
  readonly ay: number;
  readonly mx: number;
  readonly my: number;
  readonly bx: number;
  readonly by: number;
}

export const legsOf = (c: Controls): Legs => ({
  ax: c.x1 - c.x0,
  ay: c.y1 - c.y0,
  mx: c.x2 - c.x1,
  my: c.y2 - c.y1,
  bx: c.x3 - c.x2,
  by: c.y3 - c.y2,
});

/** No piece is longer than its control polygon; mm. */
export const longest = ({ ax, ay, mx, my, bx, by }: Legs): number =>
  Math.sqrt(ax * ax + ay * ay) + Math.sqrt(mx * mx + my * my) + Math.sqrt(bx * bx + by * by);

/** Least and greatest Bernstein coefficient: what they bound lies between. */
export interface Bounds {
  readonly least: number;
  readonly most: number;
}

/** Of |D|², by its seven Bernstein coefficients. */
export function squareBounds({ x0, y0, x1, y1, x2, y2, x3, y3 }: Controls): Bounds {
  const g0 = x0 * x0 + y0 * y0;
  const g1 = x0 * x1 + y0 * y1;
  const g2 = (2 * (x0 * x2 + y0 * y2) + 3 * (x1 * x1 + y1 * y1)) / 5;
  const g3 = (x0 * x3 + y0 * y3 + 9 * (x1 * x2 + y1 * y2)) / 10;
  const g4 = (2 * (x1 * x3 + y1 * y3) + 3 * (x2 * x2 + y2 * y2)) / 5;
  const g5 = x2 * x3 + y2 * y3;
  const g6 = x3 * x3 + y3 * y3;
  return { least: Math.min(g0, g1, g2, g3, g4, g5, g6), most: Math.max(g0, g1, g2, g3, g4, g5, g6) };
}

/** The greatest size of D · C′, of degree five. */
export function slantBound(d: Controls, { ax, ay, mx, my, bx, by }: Legs): number {
  const { x0, y0, x1, y1, x2, y2, x3, y3 } = d;
  const e0 = x0 * ax + y0 * ay;
  const e1 = (2 * (x0 * mx + y0 * my) + 3 * (x1 * ax + y1 * ay)) / 5;
  const e2 = (x0 * bx + y0 * by + 6 * (x1 * mx + y1 * my) + 3 * (x2 * ax + y2 * ay)) / 10;
  const e3 = (3 * (x1 * bx + y1 * by) + 6 * (x2 * mx + y2 * my) + x3 * ax + y3 * ay) / 10;
  const e4 = (3 * (x2 * bx + y2 * by) + 2 * (x3 * mx + y3 * my)) / 5;
  const e5 = x3 * bx + y3 * by;
  const most = Math.max(Math.abs(e0), Math.abs(e1), Math.abs(e2), Math.abs(e3), Math.abs(e4), Math.abs(e5));
  return 3 * most;
}

/**
 * Of g″ / 2 = |C′|² − (F − C) · C″ for any two points of the pieces: on the diagonal of degree four, by its Bernstein
 * coefficients; off it no more different than the size of C times that of C″.
 */
export function bendBounds(d: Controls, { ax, ay, mx, my, bx, by }: Legs, size: number): Bounds {
  const { x0, y0, x1, y1, x2, y2, x3, y3 } = d;
  const px = 6 * (mx - ax),
    py = 6 * (my - ay),
    qx = 6 * (bx - mx),
    qy = 6 * (by - my);
  const s0 = 9 * (ax * ax + ay * ay),
    s1 = 9 * (ax * mx + ay * my),
    s2 = 3 * (ax * bx + ay * by) + 6 * (mx * mx + my * my),
    s3 = 9 * (bx * mx + by * my),
    s4 = 9 * (bx * bx + by * by);
  const k0 = s0 - (x0 * px + y0 * py);
  const k1 = s1 - (3 * (x1 * px + y1 * py) + x0 * qx + y0 * qy) / 4;
  const k2 = s2 - (x2 * px + y2 * py + x1 * qx + y1 * qy) / 2;
  const k3 = s3 - (x3 * px + y3 * py + 3 * (x2 * qx + y2 * qy)) / 4;
  const k4 = s4 - (x3 * qx + y3 * qy);
  const spread = size * Math.max(Math.sqrt(px * px + py * py), Math.sqrt(qx * qx + qy * qy));
  return { least: Math.min(k0, k1, k2, k3, k4) - spread, most: Math.max(k0, k1, k2, k3, k4) + spread };
}

/** The least Bernstein coefficient, by columns, of F′ · C′ / 9 for any two points of the pieces, times `sense`. */
export function leastAlong(sense: number, f: Legs, { ax, ay, mx, my, bx, by }: Legs): number {
  const along = (x: number, y: number): number =>
    Math.min(sense * (x * ax + y * ay), sense * (x * mx + y * my), sense * (x * bx + y * by));
  return Math.min(along(f.ax, f.ay), along(f.mx, f.my), along(f.bx, f.by));
}
