import type { Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of darts that are opened, resized, split, joined and changed. */
export interface DartTellings {
  'unknown-mark': { readonly piece: string; readonly name: string; readonly names: readonly string[] };
  'dart-name-taken': { readonly piece: Thing; readonly name: string };
  'dart-points-meet': { readonly dart: Thing };
  'dart-off-edge': {
    readonly edge: Thing;
    readonly intakeMm: number;
    readonly leftMm: number;
    readonly rightMm: number;
  };
  /** `alongMm`: where on the edge its legs would be equal; absent: nowhere. */
  'dart-uneven-there': {
    readonly edge: Thing;
    readonly firstMm: number;
    readonly secondMm: number;
    readonly alongMm?: number;
  };
  'dart-leaves-piece': { readonly dart: Thing };
  'dart-too-deep': { readonly dart: Thing; readonly deepMm: number; readonly byMm: number };
  'dart-beside-nothing': { readonly dart: Thing; readonly toMm: number; readonly roomMm: number };
  'dart-into-itself': { readonly dart: Thing };
  'dart-end-redrawn': { readonly edge: Thing; readonly movedMm: number };
  'contour-dart-leaves-piece': { readonly piece: Thing; readonly name: string };
  'dart-is-true': { readonly dart: Thing };
  'dart-edges-unsewn': { readonly dart: Thing; readonly edge: Thing };
}

/** What was done to darts. */
export interface DartSentences {
  'split-dart': {
    readonly dart: Thing;
    readonly fresh: Thing;
    readonly to: Thing;
    readonly sharePercent: number;
    readonly angleDeg: number;
    readonly keptDeg: number;
    readonly alongMm: number;
    readonly openedMm: number;
  };
  'joined-darts': {
    readonly dart: Thing;
    readonly into: Thing;
    readonly angleDeg: number;
    readonly formerMm: number;
    readonly intakeMm: number;
  };
  'opened-dart': {
    readonly dart: Thing;
    readonly edge: Thing;
    readonly alongMm: number;
    readonly intakeMm: number;
    readonly deepMm: number;
  };
  'added-contour-dart': {
    readonly piece: Thing;
    readonly name: string;
    readonly line: Thing;
    readonly intakeMm: number;
    readonly aboveMm: number;
    readonly belowMm: number;
  };
  'trued-dart': {
    readonly dart: Thing;
    readonly firstMm: number;
    readonly secondMm: number;
    readonly lengthMm: number;
  };
  'resized-dart': { readonly dart: Thing; readonly formerMm: number; readonly toMm: number };
  'moved-dart-point': {
    readonly dart: Thing;
    readonly movedMm: number;
    readonly formerMm: number;
    readonly deepMm: number;
  };
  'changed-dart': {
    readonly dart: Thing;
    readonly into: string;
    readonly edge: Thing;
    readonly intakeMm: number;
    readonly seams: readonly Thing[];
  };
}

export const refusal: RefusalOf<DartTellings> = anyRefusal;
export const finding: FindingOf<DartTellings> = anyFinding;
export const saying: SayingOf<DartSentences> = anySaying;
