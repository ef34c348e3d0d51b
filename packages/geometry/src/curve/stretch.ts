import { hypot, max, min } from '../arithmetic.js';
import { type PowerForm, slopeX, slopeY, xAt, yAt } from './power-form.js';

/** The stretch of a cubic between two of its parameters, with its control points; flat, as inner loops make many. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly x3: number;
  readonly y3: number;
  /** The first and the last leg of the control polygon, which differences of far points would blur. */
  readonly ux: number;
  readonly uy: number;
  readonly wx: number;
  readonly wy: number;
}

/** Control points from ends and end derivatives. */
export function stretchOf(f: PowerForm, from: number, to: number): Stretch {
  const third = (to - from) / 3;
  const x0 = xAt(f, from),
    y0 = yAt(f, from);
  const x3 = xAt(f, to),
    y3 = yAt(f, to);
  const ux = slopeX(f, from) * third,
    uy = slopeY(f, from) * third;
  const wx = slopeX(f, to) * third,
    wy = slopeY(f, to) * third;
  const x1 = x0 + ux,
    y1 = y0 + uy,
    x2 = x3 - wx,
    y2 = y3 - wy;
  return { from, to, x0, y0, x1, y1, x2, y2, x3, y3, ux, uy, wx, wy };
}

/** mm. A curve is never longer than the legs of its control polygon together. */
export const legsOf = (s: Stretch): number =>
  hypot(s.ux, s.uy) + hypot(s.x2 - s.x1, s.y2 - s.y1) + hypot(s.wx, s.wy);

/** Whether the upright boxes about the control points lie more than `margin` mm apart, across or down. */
export const boxesApart = (a: Stretch, b: Stretch, margin: number): boolean =>
  min(a.x0, a.x1, a.x2, a.x3) > max(b.x0, b.x1, b.x2, b.x3) + margin ||
  min(b.x0, b.x1, b.x2, b.x3) > max(a.x0, a.x1, a.x2, a.x3) + margin ||
  min(a.y0, a.y1, a.y2, a.y3) > max(b.y0, b.y1, b.y2, b.y3) + margin ||
  min(b.y0, b.y1, b.y2, b.y3) > max(a.y0, a.y1, a.y2, a.y3) + margin;

/**
 * Whether every direction of one stretch lies to one side of every direction of the other: then they meet at most
 * once, as the difference of two chords that close would need a direction in common.
 */
export function meetAtMostOnce(a: Stretch, b: Stretch): boolean {
  const { ux, uy, wx, wy } = a,
    { ux: px, uy: py, wx: rx, wy: ry } = b;
  const vx = a.x2 - a.x1,
    vy = a.y2 - a.y1,
    qx = b.x2 - b.x1,
    qy = b.y2 - b.y1;
  const side = Math.sign(ux * py - uy * px);
  return (
    side !== 0 &&
    (ux * qy - uy * qx) * side > 0 &&
    (ux * ry - uy * rx) * side > 0 &&
    (vx * py - vy * px) * side > 0 &&
    (vx * qy - vy * qx) * side > 0 &&
    (vx * ry - vy * rx) * side > 0 &&
    (wx * py - wy * px) * side > 0 &&
    (wx * qy - wy * qx) * side > 0 &&
    (wx * ry - wy * rx) * side > 0
  );
}
