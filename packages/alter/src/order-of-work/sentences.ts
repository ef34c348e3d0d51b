import type { Saying, Thing } from '@paperhinge/geometry';
import { anySaying, type NoFacts, type SayingOf } from '@paperhinge/geometry/sayings';

interface OnEdges {
  readonly piece: Thing;
  readonly edges: readonly Thing[];
}

/** An edge that a seam sews in part: between two places in mm from its end at `beside`, or on to its other end. */
export interface SewnInPart {
  readonly edge: Thing;
  readonly beside: Thing;
  readonly fromMm: number;
  readonly toMm: number;
  readonly toEnd: boolean;
}

interface InPart {
  readonly parts?: readonly SewnInPart[];
  /** mm left open for a zip, a placket or for turning. */
  readonly openMm?: number;
}

interface Turned {
  readonly depthMm?: number;
  readonly topstitchMm?: number;
}

/** The jobs of the sewing, what each is called when another speaks of it, and why one waits for another. */
export interface OrderSentences {
  'job-stay': OnEdges;
  'job-fuse': { readonly piece: Thing };
  'job-fuse-piece': { readonly piece: Thing; readonly on: Thing };
  'job-fuse-strip': { readonly edge: Thing; readonly widthMm: number };
  'job-dart': { readonly dart: Thing };
  'job-pleat': {
    readonly pleat: Thing;
    readonly kind: string;
    readonly takenMm: number;
    readonly stitchedMm: number;
  };
  'job-inset': { readonly edge: Thing };
  'job-opening': { readonly edge: Thing; readonly lengthMm: number };
  /** `sort`: a word of the maker's own, such as `invisible`. */
  'job-zip': {
    readonly fastening: Thing;
    readonly edge: Thing;
    readonly lengthMm: number;
    readonly sort?: string;
  };
  /** `on`: where its place is marked. */
  'job-pocket': { readonly piece: Thing; readonly on?: readonly Thing[] };
  /** `between`: what is caught in the seam. */
  'job-tie': { readonly piece: Thing; readonly hasEnd: boolean };
  'job-layers': { readonly piece: Thing; readonly between?: readonly Thing[] };
  /** Lengths of each, where it is done several `times`. */
  'job-gather': {
    readonly edges: readonly Thing[];
    readonly fromMm: number;
    readonly toMm: number;
    readonly times?: number;
  };
  'job-seam': InPart & {
    readonly a: readonly Thing[];
    readonly b: readonly Thing[];
    /** mm by which the longer side is worked in. */
    readonly easeMm?: number;
    readonly takenUp?: string;
    /** How many seams there are of which each takes up that much. */
    readonly times?: number;
    readonly onePassWith?: readonly Saying[];
    /** Pressed and topstitched afterwards, so far from the seam. */
    readonly topstitched?: readonly { readonly edge: Thing; readonly topstitchMm: number }[];
    /** A facing is sewn on. */
    readonly facing?: boolean;
  };
  /** Edges of one piece, sewn to the same of another that is cut of it. */
  'job-seam-of-copies': InPart & {
    readonly piece: Thing;
    readonly edges: readonly Thing[];
    readonly onePassWith?: readonly Saying[];
  };
  /** An edge sewn to its own mirror image. */
  'job-seam-of-pair': InPart & { readonly edge: Thing; readonly onePassWith?: readonly Saying[] };
  'job-band': OnEdges;
  'job-facing': OnEdges;
  'job-understitch': { readonly pieces: readonly Thing[] };
  'job-ring': { readonly piece: Thing };
  'job-turn': { readonly piece: Thing; readonly gapMm: number };
  'job-turn-out': { readonly through: Thing };
  'job-turn-through-gap': { readonly edge: Thing; readonly gapMm: number };
  'job-close-gap': { readonly edge: Thing; readonly gapMm: number };
  'job-hang': { readonly edges: readonly Thing[] };
  'job-hem': Turned & { readonly edges: readonly Thing[]; readonly finish?: string };
  /** An edge that nothing is sewn to. */
  'job-finish': Turned & { readonly edges: readonly Thing[]; readonly finish: string };
  /** The raw edges of a seam; `lengthMm` of all of them in the garment. */
  'job-raw-edge': {
    readonly edges: readonly Thing[];
    readonly finish: string;
    readonly lengthMm: number;
  };
  'job-topstitch': { readonly edges: readonly Thing[]; readonly topstitchMm: number };
  /** `endsFast`: it goes along a part of the round only. */
  'job-elastic': {
    readonly fastening: Thing;
    readonly edge: Thing;
    readonly relaxedMm?: number;
    readonly endsFast?: boolean;
  };
  'job-cord': { readonly fastening: Thing; readonly edge: Thing };
  'job-buttonholes': { readonly pieces: readonly Thing[]; readonly count: number };
  'job-closures': { readonly kind: 'hooks' | 'snaps'; readonly edge: Thing; readonly count: number };
  'job-buttons': { readonly pieces: readonly Thing[]; readonly count: number };

  'called-seam': { readonly seam: Thing };
  'called-dart': { readonly dart: Thing };
  'called-pleat': { readonly pleat: Thing };
  'called-fastening': { readonly fastening: Thing };
  /** `what`: stay, interfacing, pocket, collar, gathers, inset, opening, band, facing, ring, hem … */
  'called-of-piece': { readonly what: string; readonly piece: Thing };
  'called-of-edges': { readonly what: string; readonly edges: readonly Thing[] };
  'called-plainly': { readonly what: string };

  'after-job': { readonly jobs: readonly Saying[]; readonly because: Saying };
  'because-stayed': { readonly edge: Thing };
  'because-fused': { readonly piece: Thing };
  'because-dart-crosses': { readonly edge: Thing };
  'because-folded': { readonly edge: Thing };
  'because-raw-edge-flat': NoFacts;
  'because-raw-edge-whole': NoFacts;
  'because-gathered': NoFacts;
  'because-flat': NoFacts;
  'because-edge-round': { readonly edges: readonly Thing[] };
  'because-crosses': { readonly edges: readonly Thing[] };
  'because-neck-is-round': NoFacts;
  'because-knit-flat': NoFacts;
  'because-shirt-flat': NoFacts;
  'because-raglan-flat': NoFacts;
  'because-set-in-round': NoFacts;
  'because-sewn-as-ring': NoFacts;
  'because-turned-first': NoFacts;
  'because-hems-drop': NoFacts;
  'because-through-buttonhole': NoFacts;
  'because-pocket-flat': NoFacts;
  'because-mouth-first': NoFacts;
  'because-laid-on': NoFacts;
  'because-pocket-mouth': NoFacts;
  'because-topstitched': NoFacts;
  'because-zip-on-facing': NoFacts;
  'because-behind-zip': NoFacts;
  'because-run-on': NoFacts;
  'because-gap-last': NoFacts;
  'because-layers-first': NoFacts;
  'because-between': NoFacts;
  'because-between-layers': NoFacts;
  'because-caught-in': { readonly piece: Thing };
  'because-collar-whole': NoFacts;
  'because-facings-joined': NoFacts;
  'because-faced-first': NoFacts;
  'because-facing-turned': NoFacts;
  'because-covers-collar': NoFacts;
  'because-sewn-before-turned': NoFacts;
  'because-lining-turns-through': NoFacts;
  'because-casing-first': NoFacts;
  /** Why a job that waits for nothing stands so early, by its kind. */
  'because-free': { readonly kind: string };
}

export const saying: SayingOf<OrderSentences> = anySaying;
