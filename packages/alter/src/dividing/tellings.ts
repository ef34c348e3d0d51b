import type { Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of pieces that are divided, joined, or sewn elsewhere. */
export interface DividingTellings {
  'piece-name-taken': { readonly name: string };
  'seam-name-taken': { readonly name: string };
  'edge-name-taken': { readonly piece: Thing; readonly name: string };
  /** An end of the cut is on an edge or at a dart, one of the two. */
  'division-end-unclear': { readonly piece: Thing };

  'band-too-wide': { readonly edge: Thing; readonly widthMm: number };
  'cut-crosses-itself': { readonly piece: Thing };
  'cut-as-pair': { readonly piece: Thing; readonly count: number };
  'seam-not-of-two-edges': { readonly seam: Thing };
  'seam-of-one-piece': { readonly seam: Thing };
  'join-through-dart': { readonly seam: Thing; readonly edge: Thing };
  'join-not-flat': { readonly seam: Thing; readonly apartMm: number; readonly withinMm: number };
  'rest-legs-unlike': { readonly seam: Thing; readonly firstMm: number; readonly secondMm: number };
  'joined-apart': { readonly seam: Thing; readonly apartMm: number };
  'joined-overlapping': { readonly seam: Thing };
  'joined-cut-unlike': { readonly first: Thing; readonly second: Thing };
  'edge-renamed': { readonly edge: Thing; readonly now: Thing };
  'fold-there-already': { readonly piece: Thing; readonly fold: Thing };
  'edge-not-for-fold': { readonly edge: Thing; readonly offMm: number };
  'fold-needs-pair': { readonly piece: Thing; readonly count: number };
  'fold-sewn-elsewhere': { readonly edge: Thing; readonly seam: Thing };
  'no-fold-to-open': { readonly piece: Thing };
  'seam-not-of-piece': { readonly seam: Thing; readonly piece: Thing };
  'seam-strip-too-wide': { readonly seam: Thing; readonly byMm: number };
  'seam-sides-unlike': { readonly seam: Thing; readonly apartMm: number };
}

/** What was done to pieces and their seams. */
export interface DividingSentences {
  divided: { readonly piece: Thing; readonly fresh: Thing; readonly seam: Thing; readonly lengthMm: number };
  'cut-off-band': {
    readonly edge: Thing;
    readonly band: Thing;
    readonly seam: Thing;
    readonly widthMm: number;
    readonly lengthMm: number;
    readonly count: number;
  };
  'joined-pieces': {
    readonly piece: Thing;
    readonly other: Thing;
    readonly seam: Thing;
    readonly lengthMm: number;
  };
  'moved-seam': {
    readonly seam: Thing;
    readonly from: Thing;
    readonly to: Thing;
    readonly byMm: readonly number[];
  };
  'fold-became-seam': { readonly edge: Thing; readonly seam: Thing; readonly allowanceMm: number };
  'seam-became-fold': { readonly edge: Thing };
}

export const refusal: RefusalOf<DividingTellings> = anyRefusal;
export const finding: FindingOf<DividingTellings> = anyFinding;
export const saying: SayingOf<DividingSentences> = anySaying;
