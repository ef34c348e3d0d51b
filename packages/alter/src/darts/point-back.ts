import type { Point } from '@paperhinge/geometry';
import { add, lerp, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { refusal } from '../operations/tellings.js';

/**
 * The stitched point of a dart whose legs run from its mouth to a pivot: set back from the pivot along its axis.
 * @throws PatternError `point-back-too-long`
 */
export function pointBackFrom(
  pivot: Point,
  [a, b]: readonly [Point, Point],
  backMm: number,
  dart: { readonly piece: string; readonly dart: string },
): Point {
  const axis = subtract(lerp(a, b, 0.5), pivot);
  const deepMm = Math.hypot(axis.x, axis.y);
  if (backMm < deepMm) return add(pivot, scale(unit(axis), backMm));
  throw refusal('point-back-too-long', { dart, deepMm, backMm });
}
