import type { Point } from '@paperhinge/geometry';
import { leftOf } from '@paperhinge/geometry/plane';
import { directionOf } from '../drawing/shapes.js';
import type { Chord } from '../plane/polygon.js';
import { type PageField, stepX, stepY } from './field.js';

/** A line on a shape that must not run along a join, as a narrow piece's grain line, and where else it may lie. */
export interface Shaft {
  readonly chord: Chord;
  /** mm to its left between which it can still be moved, parallel to itself: [least, most]. */
  readonly play: readonly [number, number];
}

/** mm kept between a shaft and a strip along which it runs: its arrowheads are 1.8 mm to either side. */
export const clearOfStrip = 5;
/** Sine of 15 degrees: a shaft that leans more runs across a strip, not along it. */
export const leans = 0.26;

/** Columns and rows of pages that are joined into one sheet. */
export interface JoinedPages {
  readonly columns: number;
  readonly rows: number;
}

/** Whether a shaft runs along one of the strips in which pages join, wherever within its play it lies. */
export function runsAlongJoin(field: PageField, { columns, rows }: JoinedPages, shaft: Shaft): boolean {
  const [from, to] = shaft.chord;
  const { x, y } = directionOf(from, to);
  const left = leftOf({ x, y });
  if (Math.abs(x) < leans)
    return isHeld([from.x, to.x], left.x, shaft.play, {
      step: stepX(field),
      overlap: field.overlap,
      pages: columns,
    });
  if (Math.abs(y) < leans)
    return isHeld([from.y, to.y], left.y, shaft.play, {
      step: stepY(field),
      overlap: field.overlap,
      pages: rows,
    });
  return false;
}

interface Joins {
  readonly step: number;
  readonly overlap: number;
  readonly pages: number;
}

/** Whether ends at these places across the joins are held on one, moved by anything within the play. */
function isHeld(
  ends: readonly [number, number],
  sign: number,
  [least, most]: readonly [number, number],
  { step, overlap, pages }: Joins,
): boolean {
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const [back, on] = sign > 0 ? [least, most] : [-most, -least];
  const nearest = Math.round((low + high - overlap) / 2 / step);
  if (nearest < 1 || nearest >= pages) return false;
  const at = nearest * step;
  return high + back > at - clearOfStrip && low + on < at + overlap + clearOfStrip;
}

/** A shaft with its points carried somewhere by a turn and a move. */
export const carriedShaft = ({ chord: [from, to], play }: Shaft, carry: (p: Point) => Point): Shaft => ({
  chord: [carry(from), carry(to)],
  play,
});
