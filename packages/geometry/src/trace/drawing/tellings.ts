import { anyFinding, anyRefusal, type FindingOf, type RefusalOf } from '../../sayings.js';
import type { Thing } from '../../telling.js';

/** What is told of drawings of other origins. */
export interface DrawingTellings {
  'no-outline-in-drawing': { readonly lines: number };
  'line-not-shut': { readonly lengthMm: number; readonly gapMm: number };
  'lines-told-apart': { readonly pieces: number; readonly leastMm: number; readonly mostMm: number };
  'one-line-drawn': { readonly pieces: number };
  'outlines-nested': { readonly layers: readonly string[] };
  'layer-not-there': { readonly name: string; readonly names: readonly string[] };
  'signs-taken': {
    readonly darts: number;
    readonly notches: number;
    readonly grains: number;
    readonly folds: number;
  };
  'grain-guessed': { readonly piece: Thing };
  'lines-left-out': { readonly count: number };
  'not-dxf': { readonly binary: boolean };
  'unit-not-told': { readonly longestMm: number };
}

export const refusal: RefusalOf<DrawingTellings> = anyRefusal;
export const finding: FindingOf<DrawingTellings> = anyFinding;
