import { isLine, pointAt, type Segment } from '../curve/segment.js';
import { rootsInUnit } from '../polynomial.js';
import { contactTolerance } from '../tolerance.js';
import { cross, dot, type Point, subtract } from '../vector.js';
import type { Place, Strand } from './strand.js';

/** Where a chain meets a straight line: the place on the chain and how far along the line, in mm from its origin. */
export interface LineCrossing extends Place {
  readonly along: number;
  readonly point: Point;
}

/** Parameters in [0, 1], ascending, at which a segment crosses or touches the endless line through `on`. */
function lineCrossings(segment: Segment, on: Point, direction: Point): readonly number[] {
  const side = (p: Point): number => cross(direction, subtract(p, on));
  if (isLine(segment)) {
    const from = side(segment[0]);
    return rootsInUnit([from, side(segment[1]) - from], contactTolerance);
  }
  const [p, q, r, s] = segment.map(side) as [number, number, number, number];
  if (Math.min(p, q, r, s) > contactTolerance || Math.max(p, q, r, s) < -contactTolerance) return [];
  return rootsInUnit([p, 3 * (q - p), 3 * (p - 2 * q + r), s - p + 3 * (q - r)], contactTolerance);
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
      if (along >= least - contactTolerance) return { index, t, along, point };
    }
  return undefined;
}
