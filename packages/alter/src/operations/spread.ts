import type { EdgePosition } from '@paperhinge/geometry';
export interface SpreadEnd {
  readonly edge: string;
  /** One place (one slash) or a range [a, b] (several); absent = the middle, or the whole edge. */
  readonly at?: EdgePosition | readonly [EdgePosition, EdgePosition];
}
export interface Spread {
  readonly piece: string;
  readonly from: SpreadEnd;
  readonly to: SpreadEnd;
  /** Total on the piece as drawn: mm of chord on the edge that opens, or rad. Negative overlaps. */
  readonly amount: { readonly by: number } | { readonly angle: number };
  readonly hinge: 'from' | 'to' | 'none';
  readonly slashes: number;
}
