import type { NoFacts } from '@paperhinge/geometry/sayings';
import type { FrontSign } from '@paperhinge/geometry/trace';

/** What a sheet of proposed names says beside each proposal. */
export interface NamingSentences {
  'names-proposed': NoFacts;
  'piece-seems': {
    readonly role: string;
    readonly front?: boolean;
    readonly sign?: FrontSign;
    readonly surePercent: number;
  };
  'piece-not-known': NoFacts;
  'seam-seems': { readonly surePercent: number; readonly aMm: number; readonly bMm: number };
  'seam-perhaps': { readonly surePercent: number; readonly aMm: number; readonly bMm: number };
  'centre-on-fold': NoFacts;
  'names-written': { readonly pieces: number; readonly named: number; readonly seams: number };
}
