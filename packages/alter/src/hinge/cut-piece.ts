import type { Path, Piece, Point } from '@paperhinge/geometry';
import type { Cut } from './cut.js';
import type { Stretch } from './ring.js';

/** A part of the piece between cuts: what moves as one. */
export interface Section {
  /** Indices of the stretches of the outline that bound it. */
  readonly stretches: readonly number[];
  /** Its closed border, clockwise: stretches of the outline and cuts. */
  readonly border: Path;
}

/** One end of a cut at a node: `away` is the unit direction in which the cut leaves it. */
export interface Spoke {
  readonly cut: number;
  readonly end: 'from' | 'to';
  readonly away: Point;
}

/** A place on the outline at which cuts begin or end. */
export interface Node {
  readonly point: Point;
  /** It stands between the stretches `gap` and `gap + 1` of the ring. */
  readonly gap: number;
  /** The cuts that meet here, in the order they are met from the stretch that arrives to the one that leaves. */
  readonly spokes: readonly Spoke[];
}

/** A piece with its cuts made, nothing moved yet. */
export interface CutPiece {
  readonly piece: Piece;
  readonly cuts: readonly Cut[];
  readonly courses: readonly Path[];
  readonly stretches: readonly Stretch[];
  readonly nodes: readonly Node[];
  readonly sections: readonly Section[];
  /** The section that each stretch of the outline borders. */
  readonly sectionOf: readonly number[];
  /** The section to the left and to the right of each cut, looking from its `from` to its `to`. */
  readonly beside: readonly { readonly left: number; readonly right: number }[];
}

/** A place where cuts meet: a node of the outline, or a point inside the piece. */
export interface Joint {
  readonly point: Point;
  readonly gap?: number;
  spokes: Spoke[];
}
