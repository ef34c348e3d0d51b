import type { EdgePosition } from '@paperhinge/geometry/pattern';

/** The edge where slashes begin or end, and where on it. */
export interface SpreadEnd {
  readonly edge: string;
  /** One place (one slash) or a range [a, b] (several); absent = the middle, or the whole edge. */
  readonly at?: EdgePosition | readonly [EdgePosition, EdgePosition];
}
/** Slash a piece from one edge to another and spread, or overlap, it. */
export interface Spread {
  readonly piece: string;
  readonly from: SpreadEnd;
  readonly to: SpreadEnd;
  /** Total on the piece as drawn: mm of chord on the edge that opens. Negative overlaps. Or `angle`. */
  readonly by?: number;
  /** rad, instead of `by`. */
  readonly angle?: number;
  /** Where the paper holds together; `none`: the sides part in parallel. Default `to`. */
  readonly hinge?: 'from' | 'to' | 'none';
  /** Default 1. */
  readonly slashes?: number;
  /** The same to the pieces beside it, where they have edges that answer to these. */
  readonly matching?: boolean;
}
/** A spread with its usual values. */
export type WholeSpread = Spread & Required<Pick<Spread, 'hinge' | 'slashes'>>;
