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
export const armBefore = (run: Run): Arm => ({
  ...sideAt(run, run.end, leftOf(run.endTangent)),
  away: scale(run.endTangent, -1),
  parallel: strandsReversed(run.parallel),
  base: endOf(run.parallel.at(-1)!.segment),
  isCut: run.isEndCut,
});

/** The run that starts at a corner. */
export const armAfter = (run: Run): Arm => ({
  ...sideAt(run, run.start, leftOf(run.startTangent)),
  away: run.startTangent,
  parallel: run.parallel,
  base: startOf(run.parallel[0]!.segment),
  isCut: run.isStartCut,
});

const sideAt = ({ of, allowance }: Run, corner: Point, outward: Point) => ({
  of,
  allowance,
  corner,
  outward,
  square: add(corner, scale(outward, allowance)),
});
