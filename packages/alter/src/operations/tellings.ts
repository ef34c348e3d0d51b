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

/** What is told of the alterations and what they draw anew. */
export interface OperationTellings {
  'dart-legs-unlike': { readonly dart: Thing; readonly firstMm: number; readonly secondMm: number };
  'point-back-too-long': { readonly dart: Thing; readonly deepMm: number; readonly backMm: number };
  'pressing-by-default': { readonly dart: Thing };
  'range-needed': { readonly edge: Thing; readonly slashes: number };
  'spread-too-wide': { readonly slashMm: number; readonly byMm: number };
  'spread-needs-length': NoFacts;
  'fold-needs-opening': NoFacts;
  'pleat-name-taken': { readonly piece: Thing; readonly name: string };
  'taper-with-between': { readonly seam: Thing };
  'taper-without-length': { readonly seam: Thing };
  'inset-without-depth': NoFacts;
  'half-width-or-shoulder': NoFacts;
  'shoulder-not-cut': { readonly shape: string };
  /** `shoulderMm`: how long what it is sewn to should be. */
  'shoulder-cut': {
    readonly edge: Thing;
    readonly changeMm: number;
    readonly shoulderMm: number;
    readonly sewnTo: readonly Thing[];
  };
  'no-allowance-there': { readonly edge: Thing; readonly kind: string };
  'not-drafted-here': { readonly piece: Thing };
  'nothing-to-refresh': Readonly<Record<string, never>>;
  'last-piece': { readonly piece: Thing };
  'made-for-removed-piece': { readonly piece: string; readonly removed: string };
  'notches-already-there': { readonly seam: Thing };
}

/** What each step did. */
export interface OperationSentences {
  'closed-dart': {
    readonly dart: Thing;
    readonly into: Thing;
    readonly wholeDeg: number;
    readonly closedDeg: number;
    readonly sharePercent: number;
    readonly alongMm: number;
    readonly openedMm: number;
  };
  'moved-dart': {
    readonly dart: Thing;
    /** The mark it turned about; absent: its own point. */
    readonly about?: Thing;
    readonly to: Thing;
    readonly angleDeg: number;
    readonly alongMm: number;
    readonly openedMm: number;
    readonly backMm: number;
  };
  shortened: { readonly pieces: readonly Thing[]; readonly at: string; readonly byMm: number };
  spread: {
    readonly piece: Thing;
    readonly from: Thing;
    readonly to: Thing;
    readonly hinge: 'from' | 'to' | 'none';
    readonly overlapped: boolean;
    readonly slashes: number;
    readonly byMm?: number;
    readonly angleDeg?: number;
    /** mm by which the end at the hinge opened, too. */
    readonly otherEndMm?: number;
    readonly into?: string;
    /** Where each slash begins and ends, from the start of its edge, and by how much it turned. */
    readonly fromMm: readonly number[];
    readonly toMm: readonly number[];
    readonly turnsDeg: readonly number[];
  };
  'took-in': MovedSeam;
  'let-out': MovedSeam;
  /** A place on a seam, as the maker gave it. */
  'share-of-seam': { readonly sharePercent: number; readonly from?: string };
  'distance-on-seam': { readonly alongMm: number; readonly from?: string };
  'recut-neckline': {
    readonly piece: Thing;
    readonly shape: 'inset V' | 'V' | 'round' | 'square' | 'boat' | 'scoop' | 'sweetheart' | 'drawn';
    readonly depthMm?: number;
    readonly halfWidthMm?: number;
    readonly shoulderMm?: number;
    readonly line?: Thing;
  };
  /** A job of the sewing. */
  'finish-inset': { readonly piece: Thing };
  trued: { readonly edges: readonly Saying[] };
  'trued-edge': { readonly edge: Thing; readonly movedMm: number };
  /** `left`: there was something to true that could not be done. */
  'trued-nothing': { readonly edge: Thing; readonly left: boolean };
  'set-allowance': {
    readonly edges: string | readonly Thing[];
    readonly count: number;
    readonly toMm: number;
    readonly formerMm: readonly number[];
  };
  'set-seam': {
    readonly seam: Thing;
    readonly easeMm?: number;
    readonly easePercent?: number;
    readonly takenUp?: 'eased' | 'gathered' | 'stretched' | 'pleated';
    readonly toleranceMm?: number;
  };
  'added-notches': {
    readonly seam: Thing;
    readonly alongMm: readonly number[];
    readonly style: 'single' | 'double' | 'triple';
  };
  unfolded: { readonly piece: Thing; readonly fold: Thing; readonly copies: number };
  refreshed: { readonly pieces: readonly Thing[] };
  'removed-piece': { readonly piece: Thing; readonly seams: number };
}

interface MovedSeam {
  readonly seam: Thing;
  /** In the whole garment, or in one limb: one amount, or one at either end. */
  readonly byMm: readonly number[];
  readonly eachMm: readonly number[];
  readonly edges: number;
  readonly inLimb: boolean;
  readonly from?: Saying;
  readonly to?: Saying;
  readonly between?: readonly Saying[];
}

export const refusal: RefusalOf<OperationTellings> = anyRefusal;
export const finding: FindingOf<OperationTellings> = anyFinding;
export const saying: SayingOf<OperationSentences> = anySaying;
