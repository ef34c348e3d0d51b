import { powerForm } from '../curve/power-form.js';
import { asCubic, pointAt, type Segment } from '../curve/segment.js';
import { rootsInUnit } from '../polynomial.js';
import { contactTolerance } from '../tolerance.js';
import { dot, leftOf, type Point, subtract } from '../vector.js';
import type { Position, Strand } from './strand.js';

/** Where a chain meets a straight line: the place on the chain and how far along the line, in mm from its origin. */
export interface LineCrossing {
  readonly place: Position;
  readonly along: number;
  readonly point: Point;
}

/** Parameters in [0, 1], ascending, at which a segment crosses or touches the endless line through `on`. */
function lineCrossings(segment: Segment, on: Point, direction: Point): readonly number[] {
  const { x0, x1, x2, x3, y0, y1, y2, y3 } = powerForm(asCubic(segment));
  const square = leftOf(direction);
  const across = (x: number, y: number): number => dot(square, { x, y });
  return rootsInUnit(
    [across(x0 - on.x, y0 - on.y), across(x1, y1), across(x2, y2), across(x3, y3)],
    contactTolerance,
  );
}

/**
 * The first place, along the chain, where it meets the ray from `on` in a unit `direction`, no less than `least` mm
 * from its origin (a contact less counts).
 */
export function firstOnRay(
  chain: readonly Strand[],
  on: Point,
  direction: Point,
  least = 0,
): LineCrossing | undefined {
  for (const [index, { segment }] of chain.entries())
    for (const t of lineCrossings(segment, on, direction)) {
      const point = pointAt(segment, t);
      const along = dot(subtract(point, on), direction);
      if (along >= least - contactTolerance) return { place: index + t, along, point };
    }
  return undefined;
}
