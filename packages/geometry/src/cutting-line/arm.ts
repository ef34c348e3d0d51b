import { endOf, startOf } from '../curve/segment.js';
import { add, leftOf, type Point, scale } from '../vector.js';
import type { Run } from './run.js';
import { type Strand, strandsReversed } from './strand.js';

/** One side of a corner as seen from the corner: its directions and its parallel run away from it. */
export interface Arm {
  readonly of: string;
  readonly allowance: number;
  readonly corner: Point;
  /** Unit direction of the stitching line, away from the corner. */
  readonly away: Point;
  /** Unit direction square to the stitching line, out of the piece. */
  readonly outward: Point;
  readonly parallel: readonly Strand[];
  /** Square to the corner at the allowance: from here the parallel is run on. */
  readonly square: Point;
  /** Where the parallel starts: there, but for a bend tighter than the allowance. */
  readonly base: Point;
  /** Whether it starts elsewhere for such a bend. */
  readonly isCut: boolean;
}

/** The run that ends at a corner. */
export const armBefore = (run: Run): Arm =>
  armOf(run, {
    corner: run.end,
    away: scale(run.endTangent, -1),
    outward: leftOf(run.endTangent),
    parallel: strandsReversed(run.parallel),
    base: endOf(run.parallel.at(-1)!.segment),
    isCut: run.isEndCut,
  });

/** The run that starts at a corner. */
export const armAfter = (run: Run): Arm =>
  armOf(run, {
    corner: run.start,
    away: run.startTangent,
    outward: leftOf(run.startTangent),
    parallel: run.parallel,
    base: startOf(run.parallel[0]!.segment),
    isCut: run.isStartCut,
  });

// Field by field: laid together from parts they would take three times as long, and every corner has two.
const armOf = (
  { of, allowance }: Run,
  { corner, away, outward, parallel, base, isCut }: Omit<Arm, 'of' | 'allowance' | 'square'>,
): Arm => ({
  of,
  allowance,
  corner,
  away,
  outward,
  parallel,
  square: add(corner, scale(outward, allowance)),
  base,
  isCut,
});
