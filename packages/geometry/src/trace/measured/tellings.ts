import { anyFinding, anyRefusal, type FindingOf, type RefusalOf } from '../../sayings.js';
import type { Thing } from '../../telling.js';
import type { Towards } from './types.js';

/** What is told of pieces given by measured points. Points are called by their names. */
export interface MeasuredTellings {
  'point-not-named': { readonly name: string; readonly names: readonly string[] };
  'points-in-a-round': { readonly names: readonly string[] };
  'distances-too-few': { readonly name: string };
  'distances-do-not-meet': {
    readonly name: string;
    readonly from: readonly string[];
    readonly gapMm: number;
  };
  'point-in-two-places': { readonly name: string; readonly ways: readonly Towards[] };
  'point-measured-over': { readonly name: string; readonly from: string; readonly worstMm: number };
  'mirror-line-missing': { readonly name: string };
  'too-few-measured-edges': { readonly edges: number };
  'edge-of-one-point': { readonly edge: Thing };
  'edges-do-not-meet': { readonly edges: readonly Thing[]; readonly points: readonly string[] };
  'dart-off-its-edge': { readonly dart: Thing; readonly points: readonly string[] };
  'dart-of-wrong-points': { readonly dart: Thing; readonly points: number };
  'edges-wait-for-one-another': { readonly edges: readonly Thing[] };
  'nothing-to-meet': { readonly edge: Thing };
  'edge-measured-otherwise': {
    readonly edge: Thing;
    readonly drawnMm: number;
    readonly givenMm: number;
  };
  'notch-point-off-edge': { readonly name: string; readonly awayMm: number };
}

export const refusal: RefusalOf<MeasuredTellings> = anyRefusal;
export const finding: FindingOf<MeasuredTellings> = anyFinding;
