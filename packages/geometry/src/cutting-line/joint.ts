import type { Point } from '../vector.js';
import { type Position, type Strand, strandsReversed } from './strand.js';

/** How the cutting line gets from one run's parallel to the next. */
export interface Joint {
  /** Where the parallel before is left, counted back from its end. */
  readonly before: Position;
  /** Where the parallel after is joined, from its start. */
  readonly after: Position;
  /** What lies between the two, in clockwise order. */
  readonly bridge: readonly Strand[];
  /**
   * At an inner corner: the corner of the stitching line, to which the maker snips, and how many strands into the
   * bridge the cutting line turns.
   */
  readonly snip?: { readonly to: Point; readonly after: number };
}

/** One side of a joint, seen from the corner: where its parallel is left, and the way on from there. */
export interface Leaving {
  readonly place: Position;
  readonly way: readonly Strand[];
}

/** The joint whose two sides lead to one point, or to the ends of what lies between them. */
export const jointOf = (first: Leaving, second: Leaving, between: readonly Strand[] = []): Joint => ({
  before: first.place,
  after: second.place,
  bridge: [...first.way, ...between, ...strandsReversed(second.way)],
});
