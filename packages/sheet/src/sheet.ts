import type { Wearer } from '@paperhinge/alter';
import type { DrawingScale, EdgeRef, Fabric, LengthUnit } from '@paperhinge/geometry';
import type { NewNames } from '@paperhinge/geometry/pattern';
import type { SheetPieces } from '@paperhinge/geometry/svg';
import type { MeasuredPiece } from '@paperhinge/geometry/trace';
import type { Place } from './document.js';
import type { Parameters } from './fields/of-verb.js';
import type { PieceFacts } from './piece-fields.js';
import type { PrintWishes } from './print-wishes.js';
import type { WrittenValue } from './replay/written-fields.js';
import type { SheetFastening, SheetSeam } from './seam-fields.js';
import type { SheetSize } from './size-fields.js';
import type { Language } from './words/languages.js';

/** An alteration sheet as read: lengths in mm, shares from 0 to 1, angles in rad. */
export interface Sheet {
  /** The file's name as it was given, for errors. */
  readonly file: string;
  readonly title?: string;
  /** Where the pattern lies, as written: relative to the sheet's own folder. Absent: all pieces are measured ones. */
  readonly pattern?: string;
  readonly unit: LengthUnit;
  /** What the report, the pages and the command answer in. */
  readonly language: Language;
  /** mm. */
  readonly wearer: Wearer;
  /** What bare figures of the wearer were counted in. */
  readonly wearerUnit: LengthUnit;
  readonly fabrics: readonly SheetFabric[];
  /** How to read a pattern that names its pieces and edges otherwise. */
  readonly pieces: SheetPieces;
  /** What pieces of the drawing and their edges are called otherwise, by the names that they have there. */
  readonly names: Readonly<Record<string, NewNames>>;
  /** Pieces that were measured on paper. */
  readonly measured: readonly MeasuredPiece[];
  /** What is said of pieces beside what the drawing says, by their names. */
  readonly facts: Readonly<Record<string, PieceFacts>>;
  /** Seams that add to the drawing's, or are told instead of those of the same names. */
  readonly seams: readonly SheetSeam[];
  readonly fastenings: readonly SheetFastening[];
  readonly openings: readonly SheetOpening[];
  /** mm by which the sides of a seam may differ and still match. */
  readonly tolerance?: number;
  /** How large the drawing is meant. */
  readonly scale?: DrawingScale;
  /** Which of the drawing's sizes, or what lies between two of them. */
  readonly size?: SheetSize;
  readonly steps: readonly Step[];
  /** Every field beside the steps, as it is written. */
  readonly given: Readonly<Record<string, WrittenValue>>;
  readonly print: PrintWishes;
  /** Where each value stands, by its dotted path: `pattern`, `opening.back.centre-back`. */
  readonly places: Readonly<Record<string, Place>>;
  /** Where each step stands, in their order. */
  readonly stepPlaces: readonly StepPlaces[];
}

/** What the sheet says of a cloth; it is laid over what the pattern says of it. */
export type SheetFabric = Pick<Fabric, 'name'> & Partial<Fabric>;

/** mm of placket, zip or slit in an edge. */
export interface SheetOpening extends EdgeRef {
  readonly length: number;
  readonly place: Place;
}

/** One step: a trade verb and its parameters. Nothing in it depends on the pattern, so it is replayed on other sizes. */
export interface Step {
  readonly verb: string;
  readonly parameters: Parameters;
  /** Switched off: it stands in the sheet and is not done. */
  readonly off?: true;
}

/** Where a step stands in its file. */
export interface StepPlaces {
  /** Of the verb. */
  readonly verb: Place;
  /** The sheet that the step stands in, where another includes it. */
  readonly file?: string;
  /** Of each field's value, by its dotted path: `dart`, `pieces.0`, `to.edge`. */
  readonly fields: Readonly<Record<string, Place>>;
}
