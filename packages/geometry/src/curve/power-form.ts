import type { Cubic } from './segment.js';

/** A cubic as x3 t³ + x2 t² + x1 t + x0, likewise y; for inner loops that evaluate it often. */
export interface PowerForm {
  readonly x0: number;
  readonly x1: number;
  readonly x2: number;
  readonly x3: number;
  readonly y0: number;
  readonly y1: number;
  readonly y2: number;
  readonly y3: number;
}

export function powerForm([p, q, r, s]: Cubic): PowerForm {
  return {
    x0: p.x,
    x1: 3 * (q.x - p.x),
    x2: 3 * (p.x - 2 * q.x + r.x),
    x3: s.x - p.x + 3 * (q.x - r.x),
    y0: p.y,
    y1: 3 * (q.y - p.y),
    y2: 3 * (p.y - 2 * q.y + r.y),
    y3: s.y - p.y + 3 * (q.y - r.y),
  };
}

export const xAt = (f: PowerForm, t: number): number => ((f.x3 * t + f.x2) * t + f.x1) * t + f.x0;
export const yAt = (f: PowerForm, t: number): number => ((f.y3 * t + f.y2) * t + f.y1) * t + f.y0;
/** Derivatives by the parameter. */
export const slopeX = (f: PowerForm, t: number): number => (3 * f.x3 * t + 2 * f.x2) * t + f.x1;
export const slopeY = (f: PowerForm, t: number): number => (3 * f.y3 * t + 2 * f.y2) * t + f.y1;
