import type { Thing } from '@paperhinge/geometry';
import { anyFinding, anyRefusal, type FindingOf, type RefusalOf } from '@paperhinge/geometry/sayings';

/** What is told of truing. */
export interface TruingTellings {
  /** A place that was not trued; `needMm`: the limit that would let it be. */
  'truing-left': {
    readonly edge: Thing;
    readonly what: 'kink' | 'step' | 'corner' | 'fold' | 'across';
    readonly alongMm: number;
    readonly angleDeg: number;
    readonly withinMm: number;
    readonly needMm?: number;
  };
  'straight-left': { readonly edge: Thing; readonly awayMm: number; readonly withinMm: number };
  'straight-over-dart': { readonly edge: Thing };
  'straight-without-length': { readonly edge: Thing };
  'places-without-straight': { readonly edge: Thing };
  'truing-crosses': { readonly edge: Thing };
}

export const refusal: RefusalOf<TruingTellings> = anyRefusal;
export const finding: FindingOf<TruingTellings> = anyFinding;
