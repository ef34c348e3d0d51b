import {
  anyFinding,
  anyRefusal,
  type FindingOf,
  type NoFacts,
  type RefusalOf,
} from '@paperhinge/geometry/sayings';

/** What is told of pages and what stands on them. */
export interface PrintTellings {
  readonly 'nothing-to-print': NoFacts;
  readonly 'too-many-pages': { readonly pages: number; readonly most: number };
  readonly 'unknown-paper': { readonly paper: string; readonly papers: readonly string[] };
  readonly 'paper-size': {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly leastMm: number;
    readonly mostMm: number;
  };
  readonly 'margins-too-wide': {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly leastMm: number;
    readonly usualMm: number;
  };
  readonly 'overlap-out-of-range': { readonly overlapMm: number; readonly usualMm: number };
  readonly 'correction-out-of-range': {
    readonly acrossMm: number;
    readonly downMm: number;
    readonly mostPercent: number;
  };
  readonly 'photo-frame-paper': NoFacts;
  readonly 'photo-frame-sheets': { readonly fewest: number; readonly most: number };
  /** `broken`: it has the outlines, but a table ends too soon. */
  readonly 'font-not-usable': { readonly broken: boolean };
  readonly 'no-grain-printed': NoFacts;
  readonly 'wider-than-cloth': { readonly cloth: string; readonly acrossMm: number; readonly mostMm: number };
  readonly 'sliver-on-page': { readonly paper: string; readonly pages: number; readonly narrowestMm: number };
}

export const refusal: RefusalOf<PrintTellings> = anyRefusal;
export const finding: FindingOf<PrintTellings> = anyFinding;
