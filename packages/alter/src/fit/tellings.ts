import type { Thing } from '@paperhinge/geometry';
import { anyFinding, anyRefusal, type FindingOf, type RefusalOf } from '@paperhinge/geometry/sayings';

/** Of the body's parts that pass through an opening of the garment. */
export type Passing = 'head' | 'hips' | 'hand' | 'heel';

interface Girths {
  readonly level: string;
  readonly bodyMm: number;
  readonly garmentMm: number;
  readonly easeMm: number;
  readonly stretchPercent: number;
}
interface Bands {
  readonly band: Thing;
  readonly neededPercent: number;
  readonly clothPercent: number;
  readonly edgeMm: number;
  readonly sewnMm: number;
  /** The least cut length that is soft enough to wear. */
  readonly leastMm: number;
}
interface Passages {
  /** What opens least: a band, or an edge of the ring. */
  readonly tightest: Thing;
  /** What it opens to, with its slits. */
  readonly openingMm: number;
  readonly slitMm?: number;
}
interface Heads extends Passages {
  readonly headGirthMm: number;
  readonly neckMm: number;
  /** No head girth was given: an adult's serves. */
  readonly assumed: boolean;
}
interface Parts extends Passages {
  readonly part: Passing;
  readonly bodyMm: number;
}

/** What is told of the garment beside the wearer. */
export interface FitTellings {
  'band-beyond-stretch': Bands;
  'band-near-stretch': Bands & { readonly usablePercent: number };
  /** In per cent of the stretch. */
  'band-recovers-little': {
    readonly band: Thing;
    readonly recoveryPercent: number;
    readonly wantedPercent: number;
  };
  'level-not-all-round': {
    readonly level: string;
    readonly having: readonly Thing[];
    readonly lacking: readonly Thing[];
  };
  /** A front without its centre line, that opens at this edge. */
  'lap-not-known': { readonly level: string; readonly edge: Thing };
  /** Measures of the wearer for which the pattern has no level line to compare. */
  'measures-without-level': { readonly measures: readonly string[]; readonly levels: readonly string[] };
  'girth-too-small': Girths & { readonly missingMm: number; readonly woven: boolean };
  'ease-below-usual': Girths & { readonly usualMm: number };
  'head-passes': Heads & { readonly spareMm: number };
  'head-does-not-pass': Heads & { readonly missingMm: number };
  /** It is sewn on by one end alone. */
  'neck-opens-at-strap': { readonly strap: Thing };
  'neck-not-found': { readonly pieces: readonly Thing[] };
  'part-passes': Parts & { readonly spareMm: number };
  'part-does-not-pass': Parts & { readonly missingMm: number };
  /** Of the wearer: no number, or none that a body has. */
  'measurement-not-usable': { readonly measurement: string };
  /** `measures`: what to give of the wearer for it to be checked. */
  'passage-not-checked': { readonly parts: readonly Passing[]; readonly measures: readonly string[] };
}

export const refusal: RefusalOf<FitTellings> = anyRefusal;
export const finding: FindingOf<FitTellings> = anyFinding;
