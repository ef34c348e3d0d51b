import type { Saying, Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of pieces made from an edge. */
export interface DeriveTellings {
  /** Each group is an `edges-together`. */
  'edges-do-not-join': { readonly piece: string; readonly groups: readonly Saying[] };
  'edges-not-in-one-run': { readonly edges: readonly Thing[] };
  'gap-also-along': { readonly gap: Thing };
  'gap-not-beside': { readonly gap: Thing; readonly neighbours: readonly string[] };
  'band-too-short': { readonly piece: string; readonly betweenMm: number; readonly gapMm: number };
  /** By these measures its outline would cross itself, or an edge would have no length. */
  'drafted-misshapen': { readonly piece: string };
  'drafted-along-itself': { readonly piece: string };
  'dart-in-facing': { readonly dart: Thing };
  'facing-over-darts': { readonly piece: Thing; readonly darts: readonly Thing[] };
  'facing-end-too-wide': { readonly edge: Thing; readonly widthMm: number; readonly edgeMm: number };
  'no-shoulder-between': { readonly piece: Thing; readonly edges: readonly Thing[] };
  'facing-too-wide': { readonly piece: string; readonly widthMm: number };
  'facings-do-not-join': { readonly pieces: readonly Thing[] };
  'facings-overlap': { readonly pieces: readonly Thing[] };
  'allowances-differ': {
    readonly piece: string;
    readonly edge: Thing;
    readonly allowanceMm: number;
    readonly others: readonly Thing[];
  };
  'hem-becomes-seam': {
    readonly piece: string;
    readonly edges: readonly Thing[];
    readonly wasMm: number;
    readonly allowanceMm: number;
  };
  'one-for-each': { readonly piece: string; readonly count: number; readonly lengthMm: number };
  'several-stretches': {
    readonly piece: string;
    readonly stretches: number;
    readonly extraJoinsMm: number;
    readonly edgeMm: number;
  };
  'narrower-than-allowances': {
    readonly piece: string;
    readonly widthMm: number;
    readonly edgeAllowanceMm: number;
    readonly allowanceMm: number;
  };
  'inner-line-trimmed': { readonly piece: string; readonly trimmedMm: number; readonly widthMm: number };
  'shaped-band-folded': { readonly piece: string };
  'shaped-band-too-steep': {
    readonly piece: string;
    readonly sewnMm: number;
    readonly farMm: number;
    readonly widthMm: number;
  };
  'edges-not-halved': { readonly piece: string; readonly edges: readonly Thing[] };
  'elastic-too-long': { readonly piece: string; readonly elasticMm: number; readonly edgeMm: number };
  'slit-too-long': { readonly edge: Thing; readonly slitMm: number; readonly edgeMm: number };
  'loose-ends': { readonly piece: string };
  'pocket-corners-too-large': { readonly piece: string; readonly byMm: number; readonly mostMm: number };
  'pocket-mark-unknown': { readonly piece: string; readonly name: string; readonly names: readonly string[] };
  'pocket-off-piece': { readonly pocket: string; readonly piece: Thing };
  'mouth-beyond-seam': { readonly seam: Thing; readonly toMm: number; readonly lengthMm: number };
  'fly-not-at-waist': { readonly edge: Thing };
  'fly-on-fold': { readonly edge: Thing };
  'fly-beyond-edge': { readonly edge: Thing; readonly wantedMm: number; readonly lengthMm: number };
  'fly-edge-bent': { readonly edge: Thing; readonly offMm: number };
  'hood-too-small': {
    readonly piece: string;
    readonly heightMm: number;
    readonly depthMm: number;
    readonly neckMm: number;
  };
  'hood-without-cords': { readonly piece: string };
  'pocket-beyond-edge': { readonly edge: Thing; readonly wantedMm: number; readonly lengthMm: number };
  'corner-not-there': { readonly first: Thing; readonly second: Thing };
  'interfacing-too-far-inside': { readonly piece: Thing; readonly insideMm: number };
  'piece-replaced': { readonly piece: string; readonly seam?: Thing };
}

/** What drafting did, and how a band is sewn on. */
export interface DeriveSentences {
  'drafted-band': DraftedLong & {
    readonly gapMm: number;
    readonly ratioPercent: number;
    readonly stretchPercent: number;
  };
  'drafted-lapped': DraftedLong & {
    readonly sewnMm: number;
    readonly overlapMm: number;
    readonly underlapMm: number;
    readonly folded: boolean;
  };
  /** Each piece is a `drafted-piece`. */
  'drafted-pieces': { readonly pieces: readonly Saying[] };
  'drafted-piece': {
    readonly piece: string;
    readonly count: number;
    readonly lengthMm: number;
    readonly widthMm: number;
  };
  'drafted-casing': DraftedLong & { readonly elasticMm: number; readonly drawnPercent: number };
  'drafted-placket': {
    readonly piece: string;
    readonly edge: Thing;
    readonly slitMm: number;
    readonly lengthMm: number;
    readonly widthMm: number;
  };
  'drafted-seam-pocket': {
    readonly seam: Thing;
    readonly fromMm: number;
    readonly mouthMm: number;
    readonly pieces: readonly Thing[];
  };
  'drafted-slant-pocket': {
    readonly piece: Thing;
    readonly mouthMm: number;
    readonly pieces: readonly Thing[];
  };
  'drafted-fly': {
    readonly edge: Thing;
    readonly lengthMm: number;
    readonly over: 'right' | 'left';
    readonly pieces: readonly Thing[];
  };
  'added-fly-extension': {
    readonly edge: Thing;
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly over: 'right' | 'left';
  };
  'drafted-lining': {
    readonly pieces: readonly Thing[];
    readonly shorterMm: number;
    readonly pleatMm: number;
    readonly seams: number;
  };
  /** `instead`: of a fact of its piece, that it is cut of that cloth besides. */
  'drafted-interfacing': {
    readonly piece: Thing;
    readonly of: Thing;
    readonly count: number;
    readonly insideMm?: number;
    readonly instead: boolean;
  };
  /** `squareMm`: the side of the square of cloth that a binding can be cut from in one. */
  'drafted-strip': DraftedLong & { readonly kind: 'strip' | 'binding'; readonly squareMm?: number };
  /** Each piece is a `drafted-facing-piece`. */
  'drafted-facing': { readonly kind: 'facing' | 'stay'; readonly pieces: readonly Saying[] };
  'drafted-facing-piece': { readonly piece: string; readonly lengthMm: number; readonly widthMm: number };
  'edges-together': { readonly edges: readonly Thing[] };
  'sew-band-on': {
    readonly piece: string;
    readonly edges: readonly Thing[];
    readonly gap: boolean;
    readonly stretchPercent: number;
    /** Closed into a ring before; else its ends are left open. */
    readonly ring: boolean;
  };
}

interface DraftedLong {
  readonly piece: string;
  /** How many are cut. */
  readonly count: number;
  /** Of one: the edges it is sewn to, and what is cut. */
  readonly edgeMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly replaced: boolean;
}

export const refusal: RefusalOf<DeriveTellings> = anyRefusal;
export const finding: FindingOf<DeriveTellings> = anyFinding;
export const saying: SayingOf<DeriveSentences> = anySaying;
