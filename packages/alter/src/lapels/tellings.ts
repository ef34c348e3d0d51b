import type { Thing } from '@paperhinge/geometry';
import { anyRefusal, anySaying, type RefusalOf, type SayingOf } from '@paperhinge/geometry/sayings';

/** What is told of lapels and of the collars that roll with them. */
export interface LapelTellings {
  /** `beside`: the two edges that meet the neck. */
  'front-edge-not-at-neck': { readonly edge: Thing; readonly neck: Thing; readonly beside: readonly Thing[] };
  'lapel-on-fold': { readonly edge: Thing };
  'break-at-neck': { readonly edge: Thing };
  'break-at-hem': { readonly edge: Thing };
  'break-at-shoulder-level': { readonly edge: Thing };
  'neck-not-whole': { readonly neck: Thing; readonly along: readonly Thing[] };
  'notch-beyond-gorge': { readonly notchMm: number; readonly gorgeMm: number };
  'lapel-crosses': { readonly piece: Thing };
  'no-roll-line': { readonly piece: Thing; readonly line: string };
  'gorge-not-last': { readonly along: readonly Thing[] };
  'no-shoulder-beside': { readonly piece: Thing; readonly beside: readonly Thing[] };
  'rolling-not-along': { readonly edge: Thing };
}

/** What was drawn on to a front. */
export interface LapelSentences {
  'cut-lapel': {
    readonly piece: Thing;
    readonly widthMm: number;
    /** Along the front edge, from the hem's end up to the break point. */
    readonly frontMm: number;
    readonly gorgeMm: number;
    readonly notchMm: number;
  };
  'grown-shawl-collar': {
    readonly piece: Thing;
    /** The collar's neck edge: half the back neck, and how far it is laid back at its end. */
    readonly neckMm: number;
    readonly layMm: number;
    readonly widthMm: number;
    readonly outerMm: number;
  };
}

export const refusal: RefusalOf<LapelTellings> = anyRefusal;
export const saying: SayingOf<LapelSentences> = anySaying;
