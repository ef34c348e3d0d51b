import type { Saying, Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type NoFacts,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of opening a piece out about its fold. */
export interface UnfoldTellings {
  'pair-needed': { readonly piece: Thing; readonly count: number };
  /** Its two halves would touch or lie on one another, as those of a whole circle do. */
  'unfolded-overlaps': { readonly piece: Thing };
  'no-fold': { readonly piece: Thing };
  'several-folds': { readonly piece: Thing; readonly folds: readonly Thing[] };
  'unfold-not-straight': { readonly edge: Thing; readonly offMm: number };
  'seam-followed': { readonly seam: Thing; readonly how: Saying };
  'seam-to-check': { readonly seam: Thing; readonly how: Saying };
}

/** How a seam goes on where its piece was opened out. */
export interface UnfoldSentences {
  'separated-pair': { readonly piece: Thing; readonly other: Thing; readonly count: number };
  'seam-sewn-twice': { readonly second: Thing };
  'seam-one-run-across-fold': NoFacts;
  'seam-both-halves': NoFacts;
  'seam-left-at-fold': NoFacts;
  'seam-begins-elsewhere': NoFacts;
}

export const refusal: RefusalOf<UnfoldTellings> = anyRefusal;
export const finding: FindingOf<UnfoldTellings> = anyFinding;
export const saying: SayingOf<UnfoldSentences> = anySaying;
