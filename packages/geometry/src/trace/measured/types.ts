import type { PieceSpec } from '../../pattern/build.js';
import type { EdgeKind, EdgeRole, LineKind, LineRole, NotchStyle } from '../../pattern/types.js';
import type { Point } from '../../vector.js';

/** A piece as it is read off paper with ruler, square and tape: points, and which lines run through them. mm. */
export interface MeasuredPiece extends Pick<PieceSpec, 'title' | 'role' | 'cutting'> {
  readonly name: string;
  readonly points: Readonly<Record<string, MeasuredPoint>>;
  /** Once round the piece, either way: each begins where the last ended, or across the mouth of a dart. */
  readonly edges: readonly MeasuredEdge[];
  readonly darts?: readonly MeasuredDart[];
  readonly lines?: readonly MeasuredLine[];
  readonly notches?: readonly MeasuredNotch[];
  readonly marks?: readonly MeasuredMark[];
  /** Of every seam and hem edge; absent = none. */
  readonly allowance?: number;
  /** The points lie on the cutting line, this far outside the stitching line; absent = on the stitching line. */
  readonly includedAllowance?: number;
}

/** Where a point lies: across to the right and down; by its distances from others; or across a line from another. */
export type MeasuredPoint = Point | PointByDistances | MirroredPoint;

/** A point by its distances in mm from two points or more; `towards` says which of two places is meant. */
export interface PointByDistances {
  readonly from: Readonly<Record<string, number>>;
  readonly towards?: Towards;
}
/** Which way a measured point lies from the line between those it is measured from. */
export type Towards = 'up' | 'down' | 'left' | 'right';

/** A point as far behind the line through two others as another lies before it. */
export interface MirroredPoint {
  readonly mirror: string;
  readonly over: readonly [string, string];
}

/** How an edge meets its neighbour: at a right angle, or running on from it. */
export type EdgeEnd = 'square' | 'smooth';

/** A line through points: straight through two, a fair curve through more or where an end says how it meets. */
export interface MeasuredEdge {
  readonly name: string;
  readonly through: readonly string[];
  readonly starts?: EdgeEnd;
  readonly ends?: EdgeEnd;
  /** mm by the tape, dart mouths not counted: a curve is drawn fuller or flatter until it has this length. */
  readonly length?: number;
  readonly kind?: EdgeKind;
  readonly role?: EdgeRole;
}

/** A dart by three points, its point in the middle, the others in the edge; by four, one that lies within the piece. */
export interface MeasuredDart {
  readonly name: string;
  readonly points: readonly string[];
}

/** A line within a piece, straight or fair through its points. */
export interface MeasuredLine {
  readonly name: string;
  readonly kind: LineKind;
  readonly through: readonly string[];
  readonly role?: LineRole;
}

/** A notch at the place of the edge that is nearest to a point. */
export interface MeasuredNotch {
  readonly at: string;
  readonly style?: NotchStyle;
}

/** A spot within a piece. */
export interface MeasuredMark {
  readonly name: string;
  readonly at: string;
}
