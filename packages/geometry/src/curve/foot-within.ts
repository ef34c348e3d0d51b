import type { Point } from '../vector.js';
import type { PowerForm } from './power-form.js';

/**
 * The parameter of a curve, between two of its parameters, at which the way to a point is square to it: four steps of
 * Newton's method from the middle, each of which squares the error; where they have not settled, the pair that the foot
 * parts is halved again. Where they do not lead on, as for a curve that stands still, the middle.
 */
export function footWithin(c: PowerForm, point: Point, low: number, high: number): number {
  const nearer = (t: number): number => {
    const x = ((c.x3 * t + c.x2) * t + c.x1) * t + c.x0 - point.x,
      y = ((c.y3 * t + c.y2) * t + c.y1) * t + c.y0 - point.y;
    const dx = (3 * c.x3 * t + 2 * c.x2) * t + c.x1,
      dy = (3 * c.y3 * t + 2 * c.y2) * t + c.y1;
    const slope = dx * dx + dy * dy + x * (6 * c.x3 * t + 2 * c.x2) + y * (6 * c.y3 * t + 2 * c.y2);
    return Math.min(high, Math.max(low, t - (x * dx + y * dy) / slope));
  };
  const middle = (low + high) / 2;
  const foot = nearer(nearer(nearer(nearer(middle))));
  return Number.isNaN(foot) ? middle : foot;
}
