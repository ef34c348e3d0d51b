import type { Saying, Thing } from '@paperhinge/geometry';
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
  /** Which of its parts says neither an edge nor a dart, or both; from 1. */
  'share-place-unclear': { readonly dart: Thing; readonly part: number };
  'shares-over-whole': { readonly dart: Thing; readonly sharePercent: number };
  'shares-leave-nothing': { readonly dart: Thing };
  'pinch-too-wide': { readonly edge: Thing; readonly byMm: number; readonly slashMm: number };
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
  /** Each part is a `shared-into-edge` or a `shared-into-dart`. */
  'shared-dart': {
    readonly dart: Thing;
    readonly wholeDeg: number;
    readonly restDeg: number;
    readonly parts: readonly Saying[];
  };
  'shared-into-edge': {
    readonly edge: Thing;
    readonly sharePercent: number;
    readonly alongMm: number;
    readonly openedMm: number;
  };
  'shared-into-dart': {
    readonly into: Thing;
    readonly sharePercent: number;
    readonly formerMm: number;
    readonly intakeMm: number;
  };
  'pinched-out': {
    readonly edge: Thing;
    readonly alongMm: number;
    readonly byMm: number;
    readonly angleDeg: number;
    readonly dart: Thing;
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
  'left-dart-unsewn': { readonly dart: Thing; readonly intakeMm: number };
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
