import type { Saying, Thing } from '@paperhinge/geometry';
import { anyRefusal, anySaying, type RefusalOf, type SayingOf } from '@paperhinge/geometry/sayings';

/** What is told of adjustments to a figure. */
export interface AdjustTellings {
  'adjust-needs-piece': { readonly what: string };
  'adjust-needs-edge': { readonly piece: Thing; readonly role: string };
  'adjust-needs-level': { readonly piece: Thing; readonly levels: readonly string[] };
  'adjust-needs-seam': { readonly role: string };
  'adjust-needs-dart': { readonly piece: Thing };
  'bust-point-unknown': { readonly piece: Thing };
  'adjust-too-much': { readonly what: string; readonly byMm: number; readonly mostMm: number };
}

/** What an adjustment did: each of its steps in order. */
export interface AdjustSentences {
  adjusted: { readonly what: string; readonly byMm: number; readonly steps: readonly Saying[] };
  'swung-bust': {
    readonly piece: Thing;
    readonly byMm: number;
    readonly dropMm: number;
    readonly turnDeg: number;
    readonly dart: Thing;
  };
  'swung-apart': {
    readonly piece: Thing;
    readonly byMm: number;
    readonly top: Thing;
    /** How much nearer top and bottom are. */
    readonly lowerMm: number;
  };
  'slid-shoulder': { readonly piece: Thing; readonly byMm: number };
}

export const refusal: RefusalOf<AdjustTellings> = anyRefusal;
export const saying: SayingOf<AdjustSentences> = anySaying;
