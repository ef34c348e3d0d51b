import { startOf } from '../curve/segment.js';
import { leftOf, type Point, scale } from '../vector.js';
import type { Run } from './run.js';
import { type Place, type Strand, strandsReversed } from './strand.js';

/** One side of a corner as seen from the corner: its directions and its parallel run away from it. */
export interface Arm {
  readonly of: string;
  readonly allowance: number;
  readonly corner: Point;
  /** Unit direction of the stitching line, away from the corner. */
  readonly away: Point;
  /** Unit direction square to the stitching line at the corner, to the outside. */
  readonly out: Point;
  readonly parallel: readonly Strand[];
  /** Where the parallel starts, square to the corner. */
  readonly base: Point;
}

/** The run that ends at a corner. */
export function armBefore(run: Run): Arm {
  const parallel = strandsReversed(run.parallel);
  return {
    of: run.of,
    allowance: run.allowance,
    corner: run.end,
    away: scale(run.endTangent, -1),
    out: leftOf(run.endTangent),
    parallel,
    base: startOf(parallel[0]!.segment),
  };
}

/** The run that starts at a corner. */
export const armAfter = (run: Run): Arm => ({
  of: run.of,
  allowance: run.allowance,
  corner: run.start,
  away: run.startTangent,
  out: leftOf(run.startTangent),
  parallel: run.parallel,
  base: startOf(run.parallel[0]!.segment),
});

/** A place on an arm's parallel as a place on a chain of `count` strands that runs the other way. */
export const turnedPlace = (place: Place, count: number): Place => ({
  index: count - 1 - place.index,
  t: 1 - place.t,
});
