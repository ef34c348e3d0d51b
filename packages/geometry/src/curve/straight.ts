import { abs, min } from '../arithmetic.js';
import { rootsInUnit } from '../polynomial.js';
import { contactTolerance, doubleZero, straightAngle } from '../tolerance.js';
import { cross, distance, norm, type Point, subtract, unit } from '../vector.js';
import { powerForm } from './power-form.js';
import { type Cubic, isLine, type Segment } from './segment.js';

/**
 * Whether all control points lie on one line, to within a contact and a slight angle; a single point does.
 * @param within mm that they may lie off it instead
 */
export function isStraight(curve: Cubic, within?: number): boolean {
  const far = subtract(farthestFromStart(curve), curve[0]),
    axis = unit(far);
  const slack = within ?? min(contactTolerance, norm(far) * straightAngle);
  return curve.every(c => abs(cross(axis, subtract(c, curve[0]))) <= slack);
}

export const farthestFromStart = ([p, q, r, s]: Cubic): Point =>
  [q, r, s].reduce((a, b) => (distance(b, p) > distance(a, p) ? b : a));

/** Unit direction of the line that a straight segment keeps to; of a cubic, to its farthest control point. */
export const axisOf = (segment: Segment): Point =>
  unit(subtract(isLine(segment) ? segment[1] : farthestFromStart(segment), segment[0]));

/** Parameters within a cubic on a line at which it turns back: simple zeros of its speed along the line. */
export function turningPoints(curve: Cubic): readonly number[] {
  const { x1, x2, x3, y1, y2, y3 } = powerForm(curve);
  const upright = abs(x1) + abs(x2) + abs(x3) < abs(y1) + abs(y2) + abs(y3);
  const c = upright ? y1 : x1,
    b = upright ? 2 * y2 : 2 * x2,
    a = upright ? 3 * y3 : 3 * x3;
  const square = b * b - 4 * a * c;
  if (!(square > doubleZero * (b * b + abs(a * c)))) return [];
  return rootsInUnit([c, b, a]).filter(t => t > doubleZero && t < 1 - doubleZero);
}

/** Of a cubic that keeps to a line: from 0 by way of the places where it turns back to 1. Of any other, nothing. */
export const straightStops = (curve: Cubic): readonly number[] | undefined =>
  isStraight(curve) ? [0, ...turningPoints(curve), 1] : undefined;
