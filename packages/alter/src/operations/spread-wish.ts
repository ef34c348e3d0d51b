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
  /** Total on the piece as drawn: mm of chord on the edge that opens. Negative overlaps. Or `angle`, or `ratio`. */
  readonly by?: number;
  /** 1.5 spreads the edge that opens to one and a half times its length. */
  readonly ratio?: number;
  /** mm by which the end at the hinge opens (negative: overlaps) as well, so that the slash tapers. */
  readonly otherEnd?: number;
  /** rad, instead of `by`. */
  readonly angle?: number;
  /** Where the paper holds together; `none`: the sides part in parallel. Default `to`. */
  readonly hinge?: 'from' | 'to' | 'none';
  /** Default 1. */
  readonly slashes?: number;
  /** How what opens is taken up when it is sewn; absent = left as it is. */
  readonly into?: 'ease' | 'gathers' | Fold;
  /** What a fold is called; several are numbered. Needed for folds. */
  readonly name?: string;
  /** mm down from the edge that folds are stitched; default 0, laid only. */
  readonly stitched?: number;
  /** The same to the pieces beside it, where they have edges that answer to these. */
  readonly matching?: boolean;
}
/** A spread with its usual values. */
export type WholeSpread = Spread & Required<Pick<Spread, 'hinge' | 'slashes' | 'stitched'>>;

/** Folds that take up what opens, as a maker calls them, and as a pattern does. */
export const folds = {
  'knife pleats': 'knife',
  'box pleats': 'box',
  'inverted pleats': 'inverted',
  tucks: 'tuck',
} as const;
/** A sort of fold. */
export type Fold = keyof typeof folds;

/** The end of the slashes that opens, the wider one where both do. */
export const openEnd = ({ hinge }: WholeSpread): 'from' | 'to' => (hinge === 'from' ? 'to' : 'from');
