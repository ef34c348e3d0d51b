import type { Wearer } from '@paperhinge/alter';
import type { EdgeRef, Fabric, LengthUnit, SheetPieces } from '@paperhinge/geometry';
import type { Place } from './document.js';
import type { PrintWishes } from './print-wishes.js';
import type { ParametersOf, Verb } from './verbs.js';

/** An alteration sheet as read: lengths in mm, shares from 0 to 1, angles in rad, every step with its place. */
export interface Sheet {
  /** The file's name as it was given, for errors. */
  readonly file: string;
  readonly title?: string;
  /** Where the pattern lies, as written: relative to the sheet's own folder. */
  readonly pattern: string;
  readonly unit: LengthUnit;
  /** mm. */
  readonly wearer: Wearer;
  readonly fabrics: readonly SheetFabric[];
  /** How to read a pattern that names its pieces and edges otherwise. */
  readonly pieces: SheetPieces;
  readonly openings: readonly SheetOpening[];
  readonly steps: readonly SheetStep[];
  readonly print: PrintWishes;
  /** Where each value stands, by its dotted path: `pattern`, `opening.back.centre-back`. */
  readonly places: Readonly<Record<string, Place>>;
}

/** What the sheet says of a cloth; it is laid over what the pattern says of it. */
export type SheetFabric = Pick<Fabric, 'name'> & Partial<Fabric>;

/** mm of placket, zip or slit in an edge. */
export interface SheetOpening extends EdgeRef {
  readonly length: number;
  readonly place: Place;
}

/** One step: a verb and its parameters. Nothing in it depends on the pattern, so it is replayed on other sizes. */
export type SheetStep = { readonly [V in Verb]: StepOf<V> }[Verb];
interface StepOf<V extends Verb> {
  readonly verb: V;
  readonly parameters: ParametersOf<V>;
  /** Where the verb stands. */
  readonly place: Place;
  /** Where each field's value stands, by its dotted path: `dart`, `pieces.0`, `to.edge`. */
  readonly places: Readonly<Record<string, Place>>;
}
