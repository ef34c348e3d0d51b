import type { EdgePosition } from '@paperhinge/geometry';
/** Take in (positive `by`) or let out (negative) a seam: mm in the garment, shared equally by the seam's edges. */
export interface TakeIn {
  readonly seam: string;
  readonly by: number;
  /** Places at which the change has tapered to nothing, on the seam's own length; absent = full to the end. */
  readonly from?: EdgePosition;
  readonly to?: EdgePosition;
}
