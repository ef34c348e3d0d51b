import type { Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of sleeves. */
export interface SleeveTellings {
  'no-cap': { readonly piece: Thing };
  'cap-too-low': { readonly piece: Thing; readonly heightMm: number; readonly byMm: number };
  'seam-without-cap': { readonly seam: Thing };
  'cap-shorter-than-armhole': { readonly seam: Thing; readonly capMm: number; readonly armholeMm: number };
}

/** What a step did to a sleeve. */
export interface SleeveSentences {
  'changed-cap': {
    readonly piece: Thing;
    readonly byMm: number;
    /** By how much the cap's seam and the sleeve's width changed. */
    readonly seamMm: number;
    readonly widthMm: number;
  };
  'walked-cap': {
    readonly seam: Thing;
    readonly easeMm: number;
    readonly frontMm: number;
    readonly backMm: number;
  };
}

export const refusal: RefusalOf<SleeveTellings> = anyRefusal;
export const finding: FindingOf<SleeveTellings> = anyFinding;
export const saying: SayingOf<SleeveSentences> = anySaying;
