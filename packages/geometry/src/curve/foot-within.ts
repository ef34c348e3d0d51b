import { footStep } from '../tolerance.js';
import type { Point } from '../vector.js';
import type { PowerForm } from './power-form.js';

/**
 * The parameter of a curve, between two of its parameters, at which the way to a point is square to it: Newton's method
 * from the middle. Where that does not lead on, as for a curve that stands still, the middle.
 */
export function footWithin(c: PowerForm, point: Point, low: number, high: number): number {
  const middle = (low + high) / 2;
  let t = middle;
  for (let i = 0; i < mostSteps; i++) {
    const x = ((c.x3 * t + c.x2) * t + c.x1) * t + c.x0 - point.x,
      y = ((c.y3 * t + c.y2) * t + c.y1) * t + c.y0 - point.y;
    const dx = (3 * c.x3 * t + 2 * c.x2) * t + c.x1,
      dy = (3 * c.y3 * t + 2 * c.y2) * t + c.y1;
    const slope = dx * dx + dy * dy + x * (6 * c.x3 * t + 2 * c.x2) + y * (6 * c.y3 * t + 2 * c.y2);
    const step = (x * dx + y * dy) / slope;
    const next = Math.min(high, Math.max(low, t - step));
    const moved = Math.abs(next - t);
    t = next;
    if (!(moved > footStep)) break;
  }
  return Number.isNaN(t) ? middle : t;
}

/** Steps that a foot may take; where it has not settled by then, the pair that it parts is halved again. */
const mostSteps = 8;
