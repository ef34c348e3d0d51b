import { anyFinding, anyRefusal, type FindingOf, type NoFacts, type RefusalOf } from '../../sayings.js';

/** What is told of drawings of other origins. */
export interface DrawingTellings {
  'no-outline-in-drawing': { readonly lines: number };
  /** Long bent lines outside all pieces that go round nothing. */
  'long-lines-left': { readonly lines: number; readonly lengthMm: number };
  'line-not-shut': { readonly lengthMm: number; readonly gapMm: number };
  'lines-told-apart': { readonly pieces: number; readonly leastMm: number; readonly mostMm: number };
  'one-line-drawn': { readonly pieces: number };
  'outlines-nested': { readonly layers: readonly string[] };
  'sizes-too-few': NoFacts;
  /** A size, or what it is drawn in, that is given twice. */
  'sizes-alike': { readonly name: string };
  'layer-not-there': { readonly name: string; readonly names: readonly string[] };
  'signs-taken': {
    readonly darts: number;
    readonly notches: number;
    readonly grains: number;
    readonly folds: number;
  };
  'grain-guessed': { readonly pieces: number };
  'lines-left-out': { readonly count: number };
  'pages-without-lines': { readonly pages: number };
  /** Lines run on from page to page in other columns, or with another overlap than was told. */
  'pages-lie-otherwise': {
    readonly columns: number;
    readonly overlapMm: number;
    readonly isOverlapAlone: boolean;
    readonly toldMm: number;
  };
  /** Where lines reach a page's edge, and how often one runs on in the next page. */
  'pages-do-not-run-on': { readonly joins: number; readonly ends: number };
  'pages-not-joined': { readonly pages: number };
  'pages-laid': {
    readonly pages: number;
    readonly others: number;
    readonly joins: number;
    readonly residualMm: number;
    readonly worstMm: number;
  };
  'pages-laid-by-themselves': {
    readonly pages: number;
    readonly others: number;
    readonly by: 'marks' | 'lines';
    readonly columns: number;
    readonly overlapMm: number;
    readonly joins: number;
    readonly residualMm: number;
    readonly worstMm: number;
  };
  'pages-of-one-sheet': { readonly pages: number; readonly others: number };
  'no-test-square': NoFacts;
  'test-square-true': { readonly saidMm: number };
  'test-square-off': { readonly acrossMm: number; readonly downMm: number; readonly saidMm: number };
  'not-dxf': { readonly binary: boolean };
  'work-stopped': NoFacts;
  'unit-not-told': { readonly longestMm: number };
}

export const refusal: RefusalOf<DrawingTellings> = anyRefusal;
export const finding: FindingOf<DrawingTellings> = anyFinding;
