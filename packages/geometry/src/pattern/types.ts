import type { Path } from '../path/path.js';
import type { LengthUnit } from '../units.js';
import type { Point } from '../vector.js';

/** Outlines run clockwise as seen on the page; the stitching line is the truth, the cutting line always derived. */
export interface Pattern {
  readonly name: string;
  /** The unit its bare numbers and its reports are in. Geometry is always mm. */
  readonly unit: LengthUnit;
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly fabrics: readonly Fabric[];
}

/** One piece of a pattern, on its stitching line. */
export interface Piece {
  readonly name: string;
  readonly title: string;
  readonly outline: Outline;
  readonly notches: readonly Notch[];
  readonly lines: readonly PieceLine[];
  readonly marks: readonly Mark[];
  readonly cutting: Cutting;
  /** The edges this piece was drafted for (a band, facing, stay), so that it can be said when they change. */
  readonly madeFor?: readonly EdgeRef[];
}

/**
 * The closed stitching line: edges and the darts that open into it, clockwise; each part starts where the last
 * ended. An edge that a dart interrupts stands here as two parts of one name on either side of the dart.
 */
export interface Outline {
  readonly parts: readonly OutlinePart[];
}
/** One part of an outline: a stretch of an edge, or a dart. */
export type OutlinePart = Edge | Dart;

/** What becomes of an edge: sewn, turned up, laid on a fold, or left raw. */
export type EdgeKind = 'seam' | 'hem' | 'fold' | 'raw';
/** How the allowances of two edges meet: run on to their crossing, or shaped to lie under a seam pressed open or a hem turned up. */
export type CornerRule = 'mitre' | 'pressed-open' | 'turned-up';

/** A named stretch of the stitching line between two corners. */
export interface Edge {
  readonly type: 'edge';
  readonly name: string;
  readonly path: Path;
  readonly kind: EdgeKind;
  /** mm, zero or more; always 0 on fold and raw edges. */
  readonly allowance: number;
  /** Asked-for corner rules; absent = the default rule. `start` and `end` in clockwise order. */
  readonly corners: { readonly start?: CornerRule; readonly end?: CornerRule };
  /** mm of placket, zip or slit that lets this edge open. */
  readonly opening?: number;
}

/** An open wedge in the outline: legs A to apex, apex to B, A met first clockwise. */
export interface Dart {
  readonly type: 'dart';
  readonly name: string;
  /** In outline order and direction: the first runs from mouth end A to the apex, the second from the apex to B. */
  readonly legs: readonly [Path, Path];
  readonly apex: Point;
  /** Towards the leg met first (`start`) or last (`end`) clockwise, or pressed open; absent = the default rule. */
  readonly pressed?: 'start' | 'end' | 'open';
}

/** A mark at the edge that is matched with one of the partner edge. */
export interface Notch {
  readonly edge: string;
  /** mm of arc length from the start of the edge (clockwise), darts' mouths not counted. */
  readonly at: number;
  readonly style: NotchStyle;
  readonly name?: string;
}
/** One, two or three snips; two stand for the back by custom. */
export type NotchStyle = 'single' | 'double' | 'triple';

/** What a line drawn within a piece means. */
export type LineKind = 'grain' | 'level' | 'lengthen-shorten' | 'fold' | 'placement' | 'style' | 'dart';

/** A line drawn within a piece. `dart` holds the closed stitching lines of a double-pointed dart. */
export interface PieceLine {
  readonly kind: LineKind;
  readonly name: string;
  readonly path: Path;
}

/** A spot marked on a piece: `kind` is `point`, `drill`, `button` or the maker's own word. */
export interface Mark {
  readonly kind: string;
  readonly name: string;
  readonly at: Point;
}

/** How a piece is cut: how many, as mirrored pairs or all alike, and of which cloth. */
export interface Cutting {
  readonly count: number;
  readonly mirrored: boolean;
  readonly fabric: string;
  readonly note?: string;
}

/** An edge by the names of its piece and itself. */
export interface EdgeRef {
  readonly piece: string;
  readonly edge: string;
}

/** One edge of one side of a seam; `reversed`: travelled against the outline's clockwise order. */
export interface EdgeRun extends EdgeRef {
  readonly reversed: boolean;
}

/** Ease wanted between the sides, a − b: in mm, or as a percentage of b. */
export type SeamEase = { readonly mm: number } | { readonly percent: number };

/** Which runs of edges are sewn to which, in the direction of the sewing, with the ease wanted, a − b. */
export interface Seam {
  readonly name: string;
  readonly a: readonly EdgeRun[];
  readonly b: readonly EdgeRun[];
  readonly ease: SeamEase;
}

/** A cloth: usable width in mm, stretch and recovery in per cent, repeat in mm. */
export interface Fabric {
  readonly name: string;
  /** mm. */
  readonly width?: number;
  /** Per cent, across (round the body) and, where it is known, along. */
  readonly stretch?: { readonly across: number; readonly along?: number };
  readonly recovery?: number;
  readonly nap?: boolean;
  readonly repeat?: number;
  readonly role: FabricRole;
}
/** What a cloth is for. */
export type FabricRole = 'main' | 'contrast' | 'lining' | 'interfacing' | 'stabiliser';
