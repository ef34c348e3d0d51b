import type { Wearer } from '@paperhinge/alter';
import type { LengthUnit, PatternError, Where } from '@paperhinge/geometry';
import type { Place, Tree } from '../document.js';
import type { Included } from '../replay/included.js';

import { type OfField, refusal, type SheetTellings } from '../tellings.js';
import type { Values } from '../values/value.js';

/** What an editor is told of a field: JSON Schema, draft 2020-12. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** A kind of value that a field of a sheet takes. */
export interface Kind<T> {
  /** The value in mm, rad, shares, places and names; undefined once it has told what is wrong. */
  readonly read: (tree: Tree, at: At) => T | undefined;
  readonly schema: JsonSchema;
  /** A field left empty is a value, too. */
  readonly mayBeEmpty?: true;
}

/** One reading of a sheet or a step: its unit, and the faults it gathers. */
export interface Reading {
  /** What bare numbers are counted in. */
  readonly unit: LengthUnit;
  /** The file, and the step if there is one. */
  readonly where: Where;
  readonly faults: PatternError[];
  /** Figures kept under names. */
  readonly values?: Values;
  /** How another sheet is come by, and the files that this one is included by. */
  readonly included?: Included;
  readonly includedBy?: readonly string[];
  /** Who it is for, once that is read. */
  readonly wearer?: Wearer;
}

/** Where a value is read: what faults call it, and where they are told. */
export interface At {
  readonly reading: Reading;
  readonly of: OfField;
  readonly place: Place;
  /** The verb that does the contrary of the one being read. */
  readonly opposite?: string;
}

type OwnFacts<C extends keyof SheetTellings> = Omit<SheetTellings[C], keyof OfField>;

/** Tells a fault of the value that is read. */
export function tell<C extends keyof SheetTellings & string>(
  at: At,
  code: C,
  facts: OwnFacts<C>,
  place: Place = at.place,
): undefined {
  const all = { ...at.of, ...facts } as object as SheetTellings[C];
  at.reading.faults.push(refusal(code, all, { ...at.reading.where, ...place }));
  return undefined;
}
