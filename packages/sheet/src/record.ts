import type { Derived, Girth } from '@paperhinge/alter';
import type { PatternMeasures, ToldFinding } from '@paperhinge/geometry';
import type { WrittenValue } from './replay/written-fields.js';

/** What a run of a sheet did, in numbers: `record.json` but for the pages, which printing adds. Lengths in mm. */
export interface RecordJson {
  /** The sheet's file, without its folder. */
  readonly sheet: string;
  readonly title?: string;
  readonly pattern: string;
  /** All that the sheet says beside its steps, as it is written there. */
  readonly given: Readonly<Record<string, WrittenValue>>;
  readonly steps: readonly StepRecord[];
  readonly before: PatternMeasures;
  readonly after: PatternMeasures;
  readonly derived: Readonly<Record<string, DerivedJson>>;
  /** All that was found, first on reading, then by the steps, then of the pattern as it is now. */
  readonly findings: readonly ToldFinding[];
  readonly girths: Readonly<Record<string, Girth>>;
  readonly orderOfWork: readonly JobRecord[];
}

/** One line of the order of work, in words. */
export interface JobRecord {
  readonly job: string;
  readonly text: string;
  readonly because: readonly string[];
}

/** One step of a sheet: what it did, and what was found after it. */
export interface StepRecord {
  /** From 1. */
  readonly step: number;
  readonly verb: string;
  /** As a sheet writes them, figures worked out: read again, the step is the same. */
  readonly fields: Readonly<Record<string, WrittenValue>>;
  /** Switched off: it was not done. */
  readonly off?: true;
  readonly did: string;
  /** What the operation found, and what walking the seams found that it had not found before this step. */
  readonly findings: readonly ToldFinding[];
}

/** Figures of a piece made from an edge; further ones by name, as the operation gives them. */
export type DerivedJson = Readonly<Record<string, number | string | readonly string[]>> & {
  readonly lengthMm: number;
  readonly widthMm: number;
};

export const derivedJson = (derived: readonly Derived[]): Readonly<Record<string, DerivedJson>> =>
  Object.fromEntries(
    derived.map(({ name, kind, lengthMm, widthMm, fabric, along, edgeMm, figures }) => [
      name,
      { kind, lengthMm, widthMm, fabric, along: along.map(r => `${r.piece}.${r.edge}`), edgeMm, ...figures },
    ]),
  );

/** The name of a file without its folder. */
export const fileName = (path: string): string => path.split(/[/\\]/).at(-1) ?? path;
