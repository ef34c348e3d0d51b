import type { Path } from '@paperhinge/geometry';
import { curvatureAt, tangentAt } from '@paperhinge/geometry/curves';
import { angleBetween } from '@paperhinge/geometry/plane';

/** rad: how much a line turns in all, back and forth and at its corners. */
export function turningOf(path: Path): number {
  const directions = path.segments.flatMap(s => Array.from({ length: 17 }, (_, i) => tangentAt(s, i / 16)));
  return directions.slice(1).reduce((sum, d, i) => sum + Math.abs(angleBetween(directions[i]!, d)), 0);
}

/** 1/mm: the sharpest bend of a line, at places along each of its segments. */
export const sharpestOf = (path: Path): number =>
  Math.max(
    ...path.segments.flatMap(s => Array.from({ length: 17 }, (_, i) => Math.abs(curvatureAt(s, i / 16)))),
  );
