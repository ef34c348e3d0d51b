import type { AnyVerb } from '@paperhinge/alter';
import type { ToldFinding, Where } from '@paperhinge/geometry';

/** What is declared of a verb, without its doing: its sentence, fields and handles are made from it. */
export type Declared = Pick<AnyVerb, 'verb' | 'does' | 'fields' | 'oneOf' | 'sentence' | 'startsAt'>;

/** A thing on the table that can be touched. */
export interface Touched {
  readonly kind: 'piece' | 'edge' | 'corner' | 'dart' | 'pleat' | 'line' | 'mark' | 'notch' | 'table';
  readonly piece?: string;
  readonly name?: string;
}

/** One drawn part of a piece, as SVG path data in the piece's own mm. */
export interface Part {
  readonly kind: 'edge' | 'corner' | 'dart' | 'pleat' | 'line' | 'notch' | 'mark';
  readonly name: string;
  readonly path: string;
  /** What the slip says of it, in the reader's words. */
  readonly told: string;
  /** The seams an edge is sewn in. */
  readonly seams?: readonly string[];
  /** The two edges that meet in a corner. */
  readonly edges?: readonly string[];
  /** Where a point lies, in the piece's own mm. */
  readonly at?: readonly [number, number];
  /** Kind of an edge or line: `fold`, `hem`, `grain`, `level` … */
  readonly sort: string;
}

export type Box = readonly [x: number, y: number, width: number, height: number];

export interface PieceView {
  readonly name: string;
  readonly title: string;
  /** "cut 1 on the fold". */
  readonly cut: string;
  /** Of what is cut. */
  readonly box: Box;
  /** Room on the table: what is cut, and what it was before. */
  readonly room: Box;
  readonly cutting: string;
  readonly stitching: string;
  readonly parts: readonly Part[];
  /** Where its title stands. */
  readonly middle: readonly [number, number];
  /** The stitching line as it was before the steps; empty where it is new or unchanged. */
  readonly before: string;
  /** "0.3 m²" and the like. */
  readonly told: string;
}

/** What came of one step. */
export interface StepView {
  readonly did: string;
  readonly findings: readonly ToldFinding[];
  readonly fault?: string;
}

/** What stands at the foot of the sheet. */
export interface Verdict {
  readonly text: string;
  readonly strong: string;
  readonly tone: 'sound' | 'care' | 'fault';
  readonly where?: Where;
}

/** One line of a list that is read: a seam, a job of the making. */
export interface Row {
  readonly text: string;
  readonly detail: string;
  readonly tone: 'sound' | 'care' | 'fault';
  readonly where?: Where;
  /** A seam that can be walked. */
  readonly seam?: string;
  /** The level that a girth is taken at, by the line's name, and the body's own measure there. */
  readonly level?: string;
  readonly body?: string;
  /** What it speaks of, as it lights up on the table. */
  readonly lights?: readonly string[];
}

/** What is wrong with the sheet's text, in words, and at which line. */
export interface Fault {
  readonly line?: number;
  readonly text: string;
}

/** Everything the page shows, worked out away from it. */
export interface View {
  readonly pattern: string;
  readonly pieces: readonly PieceView[];
  readonly steps: readonly StepView[];
  readonly verdict: readonly Verdict[];
  readonly seams: readonly Row[];
  /** The garment's girths beside the body's. */
  readonly girths: readonly Row[];
  readonly findings: readonly ToldFinding[];
  readonly making: readonly Row[];
  readonly cautions: readonly string[];
  /** Names to choose from, by kind: what the pattern has before each step, and after the last. */
  readonly names: readonly Names[];
  /** What keeps steps from being done, each at its line. */
  readonly errors: readonly Fault[];
  readonly milliseconds: number;
}

export interface Names {
  readonly pieces: readonly string[];
  readonly edges: Readonly<Record<string, readonly string[]>>;
  readonly darts: Readonly<Record<string, readonly string[]>>;
  readonly lines: Readonly<Record<string, readonly string[]>>;
  readonly marks: Readonly<Record<string, readonly string[]>>;
  readonly seams: readonly string[];
  readonly fabrics: readonly string[];
}

/** Where a figure of a step is taken hold of on the drawing. Places in the piece's own mm. */
export interface Handle {
  readonly step: number;
  /** The field's name as the sheet writes it, and those of the groups it stands in. */
  readonly way: readonly string[];
  readonly kind: 'length' | 'share' | 'angle';
  readonly piece: string;
  readonly at: readonly [number, number];
  /** mm that the handle goes for one unit of the figure. */
  readonly along: readonly [number, number];
  /** The figure that this is true of: mm, share or rad. */
  readonly value: number;
  /** Of a place on an edge: what it is counted from, and whether in mm. */
  readonly from?: string;
  readonly inMm?: boolean;
  readonly least: number;
  readonly most: number;
  /** It says where something lies, not how much of it there is. */
  readonly isPlace: boolean;
}
/** A corner, end or mark that a handle can be brought to, in its piece's own mm. */
export interface NamedPoint {
  readonly piece: string;
  readonly at: readonly [number, number];
}
export interface Held {
  readonly handles: readonly Handle[];
  readonly points: readonly NamedPoint[];
}

/** What the page has before its engine has started. */
export interface FirstView {
  readonly verbs: readonly Declared[];
  readonly view: View;
}

/** What the page asks for: the sheet as it stands, done up to a step. */
export interface Ask {
  readonly id: number;
  readonly sheet: string;
  /** The drawing; empty where the sheet gives all pieces by measured points. */
  readonly pattern: string;
  readonly patternName: string;
  /** How many steps are done; the others are told as they stand. */
  readonly needle: number;
  /** The step whose handles are wanted. */
  readonly open: number | undefined;
  readonly unit: 'mm' | 'cm' | 'in';
  readonly language: 'en' | 'de';
}
export interface File {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}
/** Which pages a paper makes, and where the pieces lie on them; mm of the large sheet. */
export interface PagesPicture {
  readonly paper: string;
  readonly pages: readonly {
    readonly kind: 'cover' | 'tile';
    readonly label: string;
    readonly window: Box;
  }[];
  readonly pieces: readonly {
    readonly piece: string;
    readonly matrix: readonly [number, number, number, number, number, number];
  }[];
  readonly findings: readonly ToldFinding[];
}
export interface AskPages {
  readonly id: number;
  readonly pagesOn: string;
}
/** What is made for the maker to take away. */
export interface TakeAway {
  readonly id: number;
  readonly take: 'svg' | 'dxf' | 'report' | 'record' | 'pdf';
  readonly paper?: string;
}
/** One stitch of a seam that is walked: which pieces meet, and what lays b beside a there. */
export interface Station {
  readonly a: string;
  readonly b: string;
  /** SVG order: carries b's own mm into a's. */
  readonly matrix: readonly [number, number, number, number, number, number];
  /** In a's own mm. */
  readonly at: readonly [number, number];
  /** mm walked on either side. */
  readonly alongA: number;
  readonly alongB: number;
}
export interface Walk {
  readonly seam: string;
  readonly title: string;
  readonly aMm: number;
  readonly bMm: number;
  /** a with the gaps that b bridges. */
  readonly reachMm: number;
  /** a − b beyond the ease wanted, in mm, and in words. */
  readonly offMm: number;
  readonly off: string;
  readonly ease: string;
  readonly matches: boolean;
  readonly stations: readonly Station[];
  /** Where notches are passed, as a share of the way; of a pair, how far apart they are. */
  readonly notches: readonly {
    readonly share: number;
    readonly side: 'a' | 'b' | 'both';
    readonly apart: string;
  }[];
  /** The lines that run on across the seam's ends, and the corner each makes. */
  readonly ends: readonly { readonly text: string; readonly deg: number }[];
}
export interface AskWalk {
  readonly id: number;
  readonly walk: string;
}

/** A piece of the garment laid out whole: its stitching line where it lies then. */
export interface Joined {
  readonly piece: string;
  readonly path: string;
  readonly box: Box;
  /** SVG order: carries the piece's own mm to where it lies. */
  readonly matrix: readonly [number, number, number, number, number, number];
}
/** The garment laid out whole, after and before. */
export interface Whole {
  readonly after: readonly Joined[];
  readonly before: readonly Joined[];
}
export interface AskWhole {
  readonly id: number;
  readonly whole: true;
}
/** A piece of cloth as it lies under what is cut of it, x across it and y along it. */
export interface LaidCloth {
  /** "Buy 1.25 m of main 150 cm wide, opened out.", or which piece no cloth of that width holds. */
  readonly told: string;
  readonly isTooNarrow: boolean;
  readonly name: string;
  /** mm; none where it is too narrow. */
  readonly acrossMm: number;
  readonly lengthMm: number;
  readonly cut: readonly {
    readonly title: string;
    readonly path: string;
    readonly middle: readonly [number, number];
    /** mm across. */
    readonly width: number;
  }[];
}
export interface AskCloths {
  readonly id: number;
  readonly cloths: true;
}
/** What is joined once a job of the making is done, as it lies flat then. */
export interface Sewn {
  readonly pieces: readonly Joined[];
  /** The edges and darts that the job is done to. */
  readonly lit: readonly string[];
}
export interface AskSewn {
  readonly id: number;
  /** The job's place in the order of work. */
  readonly sewn: number;
}
/** mm from one point of a piece to another. */
export interface Measured {
  readonly straightMm: number;
  readonly along: readonly { readonly edge: string; readonly mm: number }[];
}
export interface AskMeasured {
  readonly id: number;
  readonly measure: {
    readonly piece: string;
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
  };
}

/** A pattern and sheet that are not on the table yet: can they be read? */
export interface TryOut {
  readonly id: number;
  readonly tried: { readonly pattern: string; readonly patternName: string; readonly sheet: string };
  readonly unit: 'mm' | 'cm' | 'in';
  readonly language: 'en' | 'de';
}
/** In words why not; closed shapes that may be its pieces, where it is a drawing without any of ours. */
export interface Tried {
  readonly refused?: string;
  readonly shapes?: readonly string[];
}
/** Photographs or a drawing of another program to be traced, or a record to be turned back into its sheet. */
export interface AskMade {
  readonly id: number;
  readonly make:
    | { readonly pictures: readonly Blob[]; readonly name: string }
    | DrawingGiven
    | { readonly record: string };
  readonly unit: 'mm' | 'cm' | 'in';
  readonly language: 'en' | 'de';
}

/** A drawing of another program, to be traced: its text, or the bytes of a PDF. */
export interface DrawingGiven {
  readonly drawing: string | Uint8Array;
  readonly kind: DrawingKind;
  readonly name: string;
  readonly taken?: Taken;
}
/** Drawings of other programs that are traced. */
export type DrawingKind = 'svg' | 'dxf' | 'pdf';
/** How a drawing is taken where it is taken otherwise than usual; lengths in mm. */
export interface Taken {
  /** Ends of strokes that lie no farther apart are one. */
  readonly gap?: number;
  readonly layer?: string;
  /** Of a DXF drawing that does not say. */
  readonly unit?: 'mm' | 'cm' | 'in';
  /** Of pages: how many stand in a row, and by how much each lies over the next. */
  readonly columns?: number;
  readonly overlap?: number;
}

/** What was made: a pattern, or a sheet; beside a pattern, the sheet that proposes names for it. */
export interface Made {
  readonly made: string;
  readonly sheet?: string;
  /** Of a drawing: the layers or colours that it was drawn in. */
  readonly layers?: readonly string[];
}

/** All that the engine is asked. */
export type Question =
  | AskMade
  | Ask
  | TakeAway
  | TryOut
  | AskWalk
  | AskPages
  | AskWhole
  | AskCloths
  | AskSewn
  | AskMeasured;
export type Answer =
  | { readonly id: number; readonly tried: Tried }
  | ({ readonly id: number } & Made)
  | { readonly id: number; readonly walk: Walk | undefined }
  | { readonly id: number; readonly whole: Whole }
  | { readonly id: number; readonly cloths: readonly LaidCloth[] }
  | { readonly id: number; readonly sewn: Sewn | undefined }
  | { readonly id: number; readonly measured: Measured }
  | { readonly id: number; readonly view: View }
  | { readonly id: number; readonly held: Held }
  | { readonly id: number; readonly file: File }
  | { readonly id: number; readonly pages: PagesPicture }
  | { readonly id: number; readonly refused: string; readonly faults?: readonly Fault[] };
