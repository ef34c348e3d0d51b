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
  /** Absent = none. */
  readonly fastenings?: readonly Fastening[];
  /** mm by which the two sides of a seam may differ and still match; absent = `seamTolerance`. */
  readonly tolerance?: number;
  /** Sharp corners that alterations left: to be trued, never taken to be meant. Absent = none. */
  readonly leftToTrue?: readonly PlaceOnEdge[];
  /** Which of several sizes of one drawing this is; `12…14` where it lies between two. */
  readonly size?: string;
}

/** One piece of a pattern, on its stitching line. */
export interface Piece {
  readonly name: string;
  readonly title: string;
  /** What the piece is; absent = not known. */
  readonly role?: PieceRole;
  /** The role was guessed from names, seams and shape, on reading or building; a role without this was given. */
  readonly roleGuessed?: true;
  readonly outline: Outline;
  readonly notches: readonly Notch[];
  readonly lines: readonly PieceLine[];
  readonly marks: readonly Mark[];
  /** How the piece is cut for the garment itself; this is what counts in girths, seams and bands. */
  readonly cutting: Cutting;
  /** What it is cut from besides (lining, interfacing): it does not count in the garment's own measures. */
  readonly alsoCut?: readonly Cutting[];
  /** Which way of the cloth must stretch most round the body, from the grain; absent = across the grain. */
  readonly greatestStretch?: 'across' | 'along';
  /** The edges this piece was drafted for (a band, facing, stay), so that it can be said when they change. */
  readonly madeFor?: readonly EdgeRef[];
  /** The draft it came of, in the words of the library, so that it can be drafted again; no drawing keeps it. */
  readonly recipe?: { readonly verb: string; readonly parameters: Readonly<Record<string, unknown>> };
}

/**
 * The closed stitching line: edges and the darts that open into it, clockwise; each part starts where the last
 * ended. An edge that a dart interrupts stands here as two parts of one name on either side of the dart.
 */
export interface Outline {
  readonly parts: readonly OutlinePart[];
}
/** One part of an outline: a stretch of an edge, a dart, or the mouth of a pleat. */
export type OutlinePart = Edge | Dart | Pleat;

/** What a piece is in a garment. */
export type PieceRole =
  | 'bodice'
  | 'yoke'
  | 'sleeve'
  | 'trouser'
  | 'skirt'
  | 'collar'
  | 'cuff'
  | 'band'
  | 'strip'
  | 'facing'
  | 'stay'
  | 'binding'
  | 'lining'
  | 'interfacing'
  | 'pocket'
  | 'placket'
  | 'hood'
  | 'gusset';

/** What an edge is on the body or in the making. */
export type EdgeRole =
  | 'neck'
  | 'shoulder'
  | 'armhole'
  | 'cap'
  | 'side'
  | 'underarm'
  | 'inseam'
  | 'outseam'
  | 'crotch'
  | 'waist'
  | 'hem'
  | 'wrist'
  | 'centre'
  | 'panel'
  | 'yoke'
  | 'inset'
  | 'opening';

/** What becomes of an edge: sewn, turned up, laid on a fold, or left raw. */
export type EdgeKind = 'seam' | 'hem' | 'fold' | 'raw';
/** How the allowances of two edges meet: run on to their crossing, or shaped to lie under a seam pressed open or a hem turned up. */
export type CornerRule = 'mitre' | 'pressed-open' | 'turned-up';

/** A named stretch of the stitching line between two corners. */
export interface Edge {
  readonly type: 'edge';
  readonly name: string;
  /** What the edge is; absent = not known. */
  readonly role?: EdgeRole;
  /** The role was guessed from names, seams and shape, on reading or building; a role without this was given. */
  readonly roleGuessed?: true;
  readonly path: Path;
  readonly kind: EdgeKind;
  /** mm, zero or more; always 0 on fold and raw edges. */
  readonly allowance: number;
  /** Asked-for corner rules; absent = the default rule. `start` and `end` in clockwise order. */
  readonly corners: { readonly start?: CornerRule; readonly end?: CornerRule };
  /** mm of placket, zip or slit that lets this edge open. */
  readonly opening?: number;
  readonly finish?: Finish;
  /** mm from the edge at which it is topstitched. */
  readonly topstitch?: number;
  /** mm of interfacing along the edge. */
  readonly interfacing?: number;
}

/** How an edge is finished. */
export type Finish = 'turned once' | 'turned twice' | 'rolled' | 'faced' | 'bound' | 'banded';

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

/** How the cloth of a pleat is folded. */
export type PleatKind = 'knife' | 'box' | 'inverted' | 'tuck';

/** A fold that takes up length at an edge as a dart's mouth does: closed, the mouth's two ends lie on one another. */
export interface Pleat {
  readonly type: 'pleat';
  readonly name: string;
  readonly kind: PleatKind;
  /** Along the stitching line, clockwise; its length is what the fold takes up. */
  readonly mouth: Path;
  /** Which way a knife pleat or tuck is laid: towards the mouth's end met first or last clockwise. */
  readonly towards: 'start' | 'end';
  /** mm down from the edge that the fold is stitched; 0: laid only. */
  readonly stitched: number;
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

/** Where on the body a line lies: the garment's centre, or a level whose girth is measured. */
export type LineRole =
  | 'centre'
  | 'neck'
  | 'bust'
  | 'underbust'
  | 'waist'
  | 'abdomen'
  | 'hip'
  | 'thigh'
  | 'knee'
  | 'calf'
  | 'ankle'
  | 'upper arm'
  | 'elbow'
  | 'wrist';

/** A line drawn within a piece. `dart` holds the closed stitching lines of a double-pointed dart. */
export interface PieceLine {
  readonly kind: LineKind;
  readonly name: string;
  readonly path: Path;
  /** Absent = not known. */
  readonly role?: LineRole;
  readonly roleGuessed?: true;
}

/** What a mark is for. */
export type MarkRole = 'bust point' | 'button' | 'buttonhole' | 'pocket';

/** A spot marked on a piece: `kind` is `point`, `drill`, `button` or the maker's own word. */
export interface Mark {
  readonly kind: string;
  readonly name: string;
  readonly at: Point;
  /** Absent = a spot without further meaning. */
  readonly role?: MarkRole;
  readonly roleGuessed?: true;
}

/** How a piece is cut: how many, as mirrored pairs or all alike, and of which cloth. */
export interface Cutting {
  readonly count: number;
  readonly mirrored: boolean;
  /** How many of them lie on one another in the garment, as a collar cut four times in two layers; absent = 1. */
  readonly layers?: number;
  /** Cut singly, the pattern's right side up: never turned over on the cloth. */
  readonly rightSideUp?: boolean;
  readonly fabric: string;
  readonly note?: string;
}

/** An edge by the names of its piece and itself. */
export interface EdgeRef {
  readonly piece: string;
  readonly edge: string;
}

/** A place on an edge (a notch lies on one): mm of arc length from its start (clockwise), darts' mouths not counted. */
export interface PlaceOnEdge extends EdgeRef {
  readonly at: number;
}

/** One edge of one side of a seam, or a part of it; `reversed`: travelled against the outline's clockwise order. */
export interface EdgeRun extends EdgeRef {
  readonly reversed: boolean;
  /** mm of arc length from the edge's start (clockwise) between which it is sewn; absent = the whole edge. */
  readonly part?: { readonly from: number; readonly to: number };
}

/** Ease wanted between the sides, a − b: in mm, or as a percentage of b. */
export type SeamEase = { readonly mm: number } | { readonly percent: number };

/** Which runs of edges are sewn to which, in the direction of the sewing, with the ease wanted, a − b. */
export interface Seam {
  readonly name: string;
  readonly a: readonly EdgeRun[];
  readonly b: readonly EdgeRun[];
  readonly ease: SeamEase;
  /** How the longer side is made to fit; absent = eased in. */
  readonly takenUp?: TakenUp;
  /** mm; absent = the pattern's. */
  readonly tolerance?: number;
}

/** How a difference between the sides of a seam is taken up. */
export type TakenUp = 'eased' | 'gathered' | 'stretched' | 'pleated';

/** What closes an opening, or draws an edge in. Lengths in mm. */
export interface Fastening {
  readonly name: string;
  readonly kind: FasteningKind;
  readonly along: EdgeRun;
  /** Of the opening it closes, from where `along` begins; absent = the whole edge. */
  readonly length?: number;
  /** How many buttons, hooks or snaps, or from one to the next. */
  readonly count?: number;
  readonly spacing?: number;
  /** Width of a button, elastic or cord. */
  readonly size?: number;
  /** Relaxed length of an elastic or cord. */
  readonly relaxed?: number;
  /** The maker's word for its sort, such as `invisible`. */
  readonly sort?: string;
  readonly overlap?: number;
  readonly underlap?: number;
}
/** What a fastening is. */
export type FasteningKind = 'zip' | 'buttons' | 'hooks' | 'snaps' | 'elastic' | 'drawcord';

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
