import type { Saying, Thing } from '@paperhinge/geometry';
import { anyFinding, anySaying, type FindingOf, type SayingOf } from '@paperhinge/geometry/sayings';

/** What is told of the other side of a seam. */
export interface MatchingTellings {
  /** `drafted`: the other side is a piece that was made for this one. */
  'sewn-edge-changed': {
    readonly seam: Thing;
    readonly edges: readonly Thing[];
    readonly partners: readonly Thing[];
    readonly changeMm: number;
    readonly verb: string;
    readonly canMatch: boolean;
    readonly drafted?: Thing;
    /** A step drafted it, so that `refresh` can do it again. */
    readonly refreshes?: boolean;
  };
  'nothing-to-match': { readonly piece: Thing };
  'seam-goes-on-nowhere': { readonly seam: Thing };
}

/** What a step did to several pieces or seams, each in its own sentence. */
export interface MatchingSentences {
  'did-each': { readonly steps: readonly Saying[] };
}

export const finding: FindingOf<MatchingTellings> = anyFinding;
export const saying: SayingOf<MatchingSentences> = anySaying;
