import type { EdgePosition } from '@paperhinge/geometry/pattern';

/** Take in or let out a seam: mm in the garment, shared equally by the seam's edges in all their copies. */
export interface TakeIn {
  readonly seam: string;
  /** mm in the whole garment, 0 or more: at `from`, or at `from` and at `to`. */
  readonly by: number | readonly [number, number];
  /** The full amount up to here; absent = the seam's beginning. */
  readonly from?: EdgePosition;
  /** Nothing (or the second amount) from here on; absent = the seam's end. */
  readonly to?: EdgePosition;
  /** Instead: nothing at both places and outside them, all of it half way. */
  readonly between?: readonly [EdgePosition, EdgePosition];
  /** As much of each edge of the seams that go on from it, such as a sleeve's underarm from a side. */
  readonly matching?: boolean;
}
