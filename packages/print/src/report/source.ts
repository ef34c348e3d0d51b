import type { LengthUnit, Pattern, ToldFinding } from '@paperhinge/geometry';
import type { ClothNeeded } from '../cloth/lay-cloths.js';
import type { PageLanguage } from '../words/reader.js';

/** What is written up: a pattern alone, or what became of it with the record of the alteration. */
export interface ReportSource {
  /** The pattern to be cut. */
  readonly pattern: Pattern;
  readonly before?: Pattern;
  /** What there is to buy of each cloth; absent = it is not said. */
  readonly cloth?: readonly ClothNeeded[];
  readonly record?: RecordFigures;
  /** What a maker should beware of, in sentences. */
  readonly cautions?: readonly string[];
  /** Whom it is for, as the maker calls them; printed as given. */
  readonly wearer?: string;
  /** Printed as given: nothing here reads a clock. */
  readonly date?: string;
  /** Of all words but the record's own. Default English. */
  readonly language?: PageLanguage;
  /** Of all figures. Default the pattern's. */
  readonly unit?: LengthUnit;
}

/** The figures of a record that are written up; `record.json` has this shape. Lengths in mm. */
export interface RecordFigures {
  readonly sheet?: string;
  readonly title?: string;
  readonly steps: readonly {
    readonly step: number;
    readonly did: string;
    readonly findings: readonly ToldFinding[];
  }[];
  readonly before: MeasuredPattern;
  readonly after: MeasuredPattern;
  readonly derived: Readonly<Record<string, DerivedFigures>>;
  readonly findings: readonly ToldFinding[];
  readonly girths?: Readonly<Record<string, GirthFigures>>;
  readonly orderOfWork: readonly OrderedJob[];
}
export interface MeasuredPattern {
  readonly pieces: Readonly<
    Record<
      string,
      {
        readonly edges: Readonly<Record<string, { readonly lengthMm: number; readonly allowanceMm: number }>>;
      }
    >
  >;
  readonly seams: Readonly<
    Record<
      string,
      {
        readonly aMm: number;
        readonly bMm: number;
        readonly differenceMm: number;
        readonly easeWantedMm: number;
        readonly matches: boolean;
      }
    >
  >;
}
export interface DerivedFigures {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly quarterMm?: unknown;
}
export interface GirthFigures {
  readonly bodyMm?: number;
  readonly beforeMm?: number;
  readonly afterMm?: number;
  readonly easeMm?: number;
}
export interface OrderedJob {
  readonly job?: string;
  readonly text: string;
  readonly because: readonly string[];
}
