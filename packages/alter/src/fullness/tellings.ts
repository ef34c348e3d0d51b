import type { Saying, Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of circles, flounces, godets, slits and vents. */
export interface FullnessTellings {
  'circle-too-wide-for-cloth': { readonly piece: Thing; readonly widthMm: number; readonly clothMm: number };
  'bias-hem-hangs': { readonly piece: Thing };
  'godet-seam-short': { readonly seam: Thing; readonly depthMm: number; readonly seamMm: number };
  'slit-beyond-edge': { readonly edge: Thing; readonly lengthMm: number; readonly edgeMm: number };
  'slash-pivot-and-end': { readonly mark: Thing };
  'vent-not-at-hem': { readonly edge: Thing };
  'vent-too-wide': { readonly lengthMm: number; readonly widthMm: number };
  'vent-too-long': { readonly edge: Thing; readonly lengthMm: number; readonly edgeMm: number };
}

/** What was made fuller, or opened. */
export interface FullnessSentences {
  'drafted-circle-skirt': {
    readonly piece: Thing;
    readonly part: string;
    readonly panels: number;
    readonly waistMm: number;
    readonly radiusMm: number;
    readonly lengthMm: number;
    readonly sweepMm: number;
  };
  'drafted-flounce': {
    readonly piece: Thing;
    readonly along: readonly Thing[];
    readonly edgeMm: number;
    readonly radiusMm: number;
    readonly widthMm: number;
    readonly rings: number;
    readonly sweepMm: number;
  };
  'drafted-godet': {
    readonly piece: Thing;
    readonly seam: Thing;
    readonly depthMm: number;
    readonly sweepMm: number;
    readonly count: number;
  };
  /** Each is a `slashed-at`. */
  slashed: { readonly piece: Thing; readonly slashes: readonly Saying[] };
  /** What its two ends came to: over 0 opened, under 0 overlapped. */
  'slashed-at': {
    readonly from: Thing;
    readonly fromMm: number;
    readonly to: Thing;
    readonly toMm: number;
    readonly openedMm: number;
    readonly otherMm: number;
    readonly turnDeg: number;
    /** The mark that it hinges at. */
    readonly about?: Thing;
    /** What takes up what opened at its beginning. */
    readonly into?: string;
  };
  'set-slit': { readonly edge: Thing; readonly lengthMm: number };
  'added-vent': { readonly edge: Thing; readonly lengthMm: number; readonly widthMm: number };
}

export const refusal: RefusalOf<FullnessTellings> = anyRefusal;
export const finding: FindingOf<FullnessTellings> = anyFinding;
export const saying: SayingOf<FullnessSentences> = anySaying;
