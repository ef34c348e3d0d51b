import { type LengthUnit, PatternError } from '@paperhinge/geometry';
import { mostFaults } from './limits.js';
import { refusal } from './tellings.js';
import type { Language } from './words/languages.js';

/**
 * Everything that is wrong with a sheet, in the order it stands in the file. As an error it speaks for its first
 * fault; `faults` holds them all.
 */
export class SheetFaults extends PatternError {
  readonly faults: readonly PatternError[];
  /** How the sheet wishes to be answered, as far as it could be read. */
  readonly spoken: Spoken;

  constructor(faults: readonly [PatternError, ...PatternError[]], spoken: Spoken = {}) {
    const [{ code, where, facts }] = faults;
    super(code, { facts, where });
    this.name = 'SheetFaults';
    this.faults = faults;
    this.spoken = spoken;
  }
}

/** The language and unit that a sheet asks for. */
export interface Spoken {
  readonly language?: Language;
  readonly unit?: LengthUnit;
}

/** @throws SheetFaults if there are any faults: sorted by place, the same told once, the first fifty of many */
export function refuse(faults: readonly PatternError[], spoken: Spoken = {}): void {
  const byPlace = [...faults].sort(
    ({ where: a }, { where: b }) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0),
  );
  const told = new Map(byPlace.map(f => [`${f.where.line}:${f.where.column}:${f.code}:${f.message}`, f]));
  const [first, ...rest] = told.values();
  if (!first) return;
  const left = rest.length + 1 - mostFaults;
  if (left <= 0) throw new SheetFaults([first, ...rest], spoken);
  const shown = rest.slice(0, mostFaults - 1);
  const more = refusal('more-faults', { more: left }, shown.at(-1)?.where ?? {});
  throw new SheetFaults([first, ...shown, more], spoken);
}

/** The single errors in whatever was thrown: those of a sheet, or the one itself. */
export const faultsIn = (error: PatternError): readonly PatternError[] =>
  error instanceof SheetFaults ? error.faults : [error];
