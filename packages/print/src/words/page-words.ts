import type {
  Cutting,
  EdgeKind,
  FasteningKind,
  Finish,
  LineKind,
  PleatKind,
  TakenUp,
} from '@paperhinge/geometry';
import type { DecimalSign } from '@paperhinge/geometry/internal';
import type { Layer } from '../layers.js';

/** All that stands on pages, projector sheets and the report, in one language. Lengths come in words already. */
export interface PageWords {
  /** Its tag, such as `en`. */
  readonly language: string;
  readonly decimalSign: DecimalSign;
  readonly layers: Readonly<Record<Layer, string>>;
  readonly paper: PaperWords;
  readonly piece: PieceWords;
  readonly page: JoiningWords;
  readonly cover: CoverWords;
  readonly report: ReportWords;
  readonly projector: ProjectorWords;
  readonly photoFrame: PhotoFrameWords;
}

export interface PaperWords {
  readonly us: (name: string) => string;
  readonly roll: (inches: string) => string;
}

/** What a cloth is like, and so must be cut. */
export interface ClothWords {
  readonly nap: (cloth: string) => string;
  readonly repeat: (cloth: string, repeat: string, pieces: number, more: string) => string;
  /** How cloth is laid to be cut; `either` where both ways take the same. */
  readonly laid: Readonly<Record<'folded' | 'open' | 'either', string>>;
  /** What the amounts to buy have in them. */
  readonly reckoned: (selvedge: string, spare: string, step: string) => string;
}

/** Words on pieces. */
export interface PieceWords {
  /** "cut 2, 1 mirrored"; `fold` if a fold edge is laid on the fold. */
  readonly cut: (cutting: Cutting, fold: boolean) => string;
  /** The same in a list of pieces to cut: "2, 1 mirrored". */
  readonly count: (cutting: Cutting, fold: boolean) => string;
  /** The same with its cloth, where a piece is cut of several: "cut 2 of lining". */
  readonly cutOf: (cutting: Cutting, fold: boolean) => string;
  /** A cloth named shortly, such as `main`: "main fabric". */
  readonly cloth: (name: string) => string;
  readonly rightSideUp: string;
  readonly size: (name: string) => string;
  readonly placeOnFold: string;
  readonly hem: (width: string) => string;
  readonly finish: Readonly<Record<Finish, string>>;
  readonly topstitched: (distance: string) => string;
  readonly interfaced: (width: string) => string;
  readonly takenUp: Readonly<Record<TakenUp, (to: string) => string>>;
  readonly pleat: Readonly<Record<PleatKind, string>>;
  readonly stitchedDown: (length: string) => string;
  readonly greatestStretch: string;
  /** The same with its way on the cloth, as a cutting list says it. */
  readonly stretchesMost: Readonly<Record<'across' | 'along', string>>;
  readonly fastening: Readonly<Record<FasteningKind, (sort: string) => string>>;
  readonly opening: (length: string) => string;
  readonly line: Readonly<Record<LineKind, string>>;
  readonly lengthenHere: string;
  readonly lengthenShort: string;
  readonly lengthenTo: (distance: string, to: EdgeKind | undefined) => string;
  readonly lengthenBy: (distance: string) => string;
}

/** Words by which pages are put together. */
export interface JoiningWords {
  readonly numbered: (page: number, of: number) => string;
  readonly atFullSize: string;
  readonly corrected: (across: string, down: string) => string;
  readonly printOn: (paper: string, scale: string) => string;
  readonly subject: (pieces: string) => string;
  /** From the fullest to the shortest. */
  readonly glueHere: (page: string) => readonly string[];
  readonly layOver: (page: string) => string;
  readonly blank: string;
  readonly blankOnMap: string;
  readonly sheet: (number: number, cloth: string) => string;
}

export interface CoverWords {
  readonly map: string;
  readonly checkScale: string;
  readonly thisSquare: (size: string) => string;
  readonly twoInches: string;
  readonly oneSheet: string;
  readonly pages: (all: number, tiles: number, least: number, blank: number) => string;
  readonly printFirst: (several: boolean) => string;
  readonly measureSquare: (several: boolean) => string;
  readonly corrected: (across: string, down: string) => string;
  readonly notQuite: string;
  readonly joinOverlapping: string;
  readonly joinEdgeToEdge: string;
  readonly blanks: string;
  readonly onePiece: string;
}

/** Headings and columns of the report and the cover's lists. */
export interface ReportWords {
  readonly pattern: string;
  readonly alteredFrom: (name: string) => string;
  readonly sheetName: (name: string) => string;
  readonly wearer: (name: string) => string;
  readonly sections: Readonly<Record<SectionName, string>>;
  readonly columns: Readonly<Record<ColumnName, string>>;
  readonly bandFigures: { readonly length: string; readonly width: string; readonly quarterMark: string };
  readonly allSound: string;
  readonly cloth: ClothWords;
  readonly severity: { readonly fault: string; readonly warning: string; readonly note: string };
  readonly step: (number: number) => string;
  readonly gone: string;
  readonly made: string;
  readonly sews: string;
  readonly doesNotMatch: string;
  readonly faults: (count: number) => string;
  readonly seamsMatch: (matching: number, all: number) => string;
  readonly warnings: (count: number) => string;
  readonly before: string;
  readonly after: string;
  readonly beforeAndAfter: string;
  readonly key: string;
  /** What the picture of named edges shows. */
  readonly namesKey: string;
  readonly contents: string;
  readonly foot: string;
}

export type SectionName =
  | 'pieces'
  | 'cutting'
  | 'cloth'
  | 'bands'
  | 'order'
  | 'findings'
  | 'cautions'
  | 'steps'
  | 'girths'
  | 'edges'
  | 'names'
  | 'seams';
export type ColumnName =
  | 'piece'
  | 'cut'
  | 'cloth'
  | 'pages'
  | 'allowances'
  | 'figure'
  | 'measure'
  | 'level'
  | 'body'
  | 'before'
  | 'after'
  | 'ease'
  | 'edge'
  | 'change'
  | 'allowance'
  | 'seam'
  | 'oneSide'
  | 'otherSide'
  | 'difference'
  | 'easeWanted'
  | 'result'
  | 'width'
  | 'laid'
  | 'takes'
  | 'buy';

export interface ProjectorWords {
  readonly title: (name: string) => string;
  readonly subject: string;
  readonly setUp: (square: string, diagonal: string, step: string) => string;
  readonly thisSheet: (size: string) => string;
}

/** Words on the sheets that are laid round pieces to be photographed. */
export interface PhotoFrameWords {
  readonly title: (sheets: number, paper: string) => string;
  readonly subject: string;
  readonly sheet: (number: number, of: number) => string;
  /** What stands beside the square of 50 mm. */
  readonly lines: (most: number) => readonly string[];
}
