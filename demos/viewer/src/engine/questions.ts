// All that the engine is asked, and what it answers.

import type { LaidCloth, Measured, PagesPicture, Sewn, Walk, Whole } from './pictures.js';
import type { Crossing } from './spared.js';
import type { Fault, Held, Proof, View } from './view.js';

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

/** What stands, for long work: that is done apart from the views, and goes by the garment it is given. */
export type Standing = Omit<Ask, 'id' | 'open'>;

/** How far long work has come, in words; the share of it that is done, where that is known. */
export interface Going {
  readonly text: string;
  readonly share?: number;
}

export interface File {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

export interface AskPages {
  readonly id: number;
  readonly of: Standing;
  readonly pagesOn: string;
}

/** What is made for the maker to take away. */
export interface TakeAway {
  readonly id: number;
  readonly of: Standing;
  readonly take: 'svg' | 'dxf' | 'report' | 'record' | 'pdf';
  readonly paper?: string;
}

export interface AskWalk {
  readonly id: number;
  readonly walk: string;
}

export interface AskWhole {
  readonly id: number;
  readonly whole: true;
}

export interface AskCloths {
  readonly id: number;
  readonly of: Standing;
  readonly cloths: true;
}

export interface AskSewn {
  readonly id: number;
  /** The job's place in the order of work. */
  readonly sewn: number;
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
  readonly make: PicturesGiven | DrawingGiven | { readonly record: string };
  readonly unit: 'mm' | 'cm' | 'in';
  readonly language: 'en' | 'de';
}

/** Photographs of pieces on a floor with the printed sheets among them, to be traced. */
export interface PicturesGiven {
  readonly pictures: readonly Blob[];
  readonly kind: 'photograph';
  readonly name: string;
  readonly taken?: Taken;
}

/** What is traced. */
export type Given = DrawingGiven | PicturesGiven;

/** A drawing of another program, to be traced: its text, or the bytes of a PDF. */
export interface DrawingGiven {
  readonly drawing: string | Uint8Array;
  readonly kind: DrawingKind;
  readonly name: string;
  readonly taken?: Taken;
}

/** Drawings of other programs that are traced. */
export type DrawingKind = 'svg' | 'dxf' | 'pdf';

/** How a drawing or photograph is taken where it is taken otherwise than usual; lengths in mm. */
export interface Taken {
  /** Ends of strokes that lie no farther apart are one. */
  readonly gap?: number;
  readonly layer?: string;
  /** Of a DXF drawing that does not say. */
  readonly unit?: 'mm' | 'cm' | 'in';
  /** Of pages: how many stand in a row, and by how much each lies over the next. */
  readonly columns?: number;
  readonly overlap?: number;
  /** Of photographs: what the printed sheets' checked squares measure, and which line of the pieces is seen. */
  readonly square?: number;
  readonly line?: 'stitching' | 'cutting';
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
  | { readonly id: number; readonly view: Crossing<View> }
  | { readonly id: number; readonly proof: Crossing<Proof> }
  | { readonly id: number; readonly held: Held }
  | { readonly id: number; readonly file: File }
  | { readonly id: number; readonly pages: PagesPicture }
  | { readonly id: number; readonly going: Going }
  | { readonly id: number; readonly refused: string; readonly faults?: readonly Fault[] };
