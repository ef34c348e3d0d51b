import { hypot, max, min } from '../arithmetic.js';
import type { Stretch } from './stretch.js';

/**
 * The strip along a stretch's chord that holds all of it: a point and the unit normal of the chord, and how far the
 * strip reaches to either side, in mm. Where the ends fall together there is no chord, and the strip has no width.
 * Source: Sederberg and Nishita, Curve intersection using Bézier clipping, 1990.
 */
export interface FatLine {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
  readonly low: number;
  readonly high: number;
  readonly chord: number;
}

export function fatLineOf(s: Stretch): FatLine {
  const dx = s.x3 - s.x0,
    dy = s.y3 - s.y0,
    chord = hypot(dx, dy);
  if (chord === 0) return { x: s.x0, y: s.y0, nx: 0, ny: 0, low: 0, high: 0, chord };
  const nx = -dy / chord,
    ny = dx / chord;
  const d1 = (s.x1 - s.x0) * nx + (s.y1 - s.y0) * ny,
    d2 = (s.x2 - s.x0) * nx + (s.y2 - s.y0) * ny;
  const factor = d1 * d2 > 0 ? 3 / 4 : 4 / 9;
  const low = factor * min(0, d1, d2),
    high = factor * max(0, d1, d2);
  return { x: s.x0, y: s.y0, nx, ny, low, high, chord };
}

/**
 * The shares of the stretch between which its control hull lies within `margin` mm of the fat line; undefined where
 * none of it does.
 */
export function clipTo(line: FatLine, s: Stretch, margin: number): readonly [number, number] | undefined {
  const { x, y, nx, ny } = line;
  const low = line.low - margin,
    high = line.high + margin;
  // The distances from the chord, as an explicit cubic over the parameter.
  const e0 = (s.x0 - x) * nx + (s.y0 - y) * ny,
    e1 = (s.x1 - x) * nx + (s.y1 - y) * ny,
    e2 = (s.x2 - x) * nx + (s.y2 - y) * ny,
    e3 = (s.x3 - x) * nx + (s.y3 - y) * ny;
  if (e0 >= low && e0 <= high && e3 >= low && e3 <= high) return whole;
  let first = 2,
    last = -1;
  const meet = (t: number): void => {
    if (t < first) first = t;
    if (t > last) last = t;
  };
  if (e0 >= low && e0 <= high) meet(0);
  if (e3 >= low && e3 <= high) meet(1);
  const cut = (ta: number, ea: number, tb: number, eb: number): void => {
    if (ea < low !== eb < low) meet(ta + ((tb - ta) * (low - ea)) / (eb - ea));
    if (ea > high !== eb > high) meet(ta + ((tb - ta) * (high - ea)) / (eb - ea));
  };
  // All six sides and diagonals of the control polygon: the hull's sides are among them.
  cut(0, e0, 1 / 3, e1);
  cut(0, e0, 2 / 3, e2);
  cut(0, e0, 1, e3);
  cut(1 / 3, e1, 2 / 3, e2);
  cut(1 / 3, e1, 1, e3);
  cut(2 / 3, e2, 1, e3);
  return last < 0 ? undefined : [max(0, first), min(1, last)];
}

const whole = [0, 1] as const;
