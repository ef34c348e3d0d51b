import { startOf } from '../curve/segment.js';
import { type Point, scale } from '../vector.js';
import { type Run, squareOut } from './run.js';
import { type Strand, strandsReversed } from './strand.js';

/** One side of a corner as seen from the corner: its directions and its parallel run away from it. */
export interface Arm {
  readonly of: string;
  readonly allowance: number;
  readonly corner: Point;
  /** Unit direction of the stitching line, away from the corner. */
  readonly away: Point;
  readonly parallel: readonly Strand[];
  /** Square to the corner at the allowance: from here the parallel is run on. */
  readonly square: Point;
  /** Where the parallel starts: there, but for a bend tighter than the allowance. */
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
    square: squareOut(run.end, run.endTangent, run.allowance),
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
  square: squareOut(run.start, run.startTangent, run.allowance),
  parallel: run.parallel,
  base: startOf(run.parallel[0]!.segment),
});
