import type { Thing } from '@paperhinge/geometry';
import {
  anyFinding,
  anyRefusal,
  anySaying,
  type FindingOf,
  type RefusalOf,
  type SayingOf,
} from '@paperhinge/geometry/sayings';

/** What is told of edges that are drawn anew. */
export interface RedrawnEdgeTellings {
  'corner-beside-dart': { readonly edge: Thing; readonly dart: Thing };
  'corner-beyond-edge': {
    readonly edge: Thing;
    readonly beside: Thing;
    readonly byMm: number;
    readonly roomMm: number;
  };
  'edge-in-two-parts': { readonly edge: Thing };
  'redrawn-crosses': { readonly edge: Thing };
  'no-armhole': { readonly piece: Thing };
  'hem-not-at-centre': { readonly edge: Thing };
  'edge-in-no-seam': { readonly edge: Thing };
  'edge-matches-already': { readonly edge: Thing; readonly seam: Thing };
  'stand-edge-bent': { readonly edge: Thing; readonly offMm: number };
  'grown-facing-too-wide': { readonly edge: Thing; readonly widthMm: number };
  /** `sideMm`: how far up the side (negative: down) its far end must go to be square to the fold. */
  'grown-on-edge-curved': { readonly edge: Thing; readonly offMm: number; readonly sideMm?: number };
  'grown-on-off-square': { readonly edge: Thing; readonly fold: Thing; readonly sideMm?: number };
  'grown-on-edge-sewn': { readonly edge: Thing; readonly seam: Thing };
  'grown-on-alone': { readonly edge: Thing; readonly beside: Thing };
  'wrap-not-at-neck': { readonly edge: Thing };
  'wrap-too-deep': { readonly edge: Thing; readonly depthMm: number; readonly centreMm: number };
  'neck-not-between': { readonly edge: Thing };
  'edge-length-unreached': { readonly edge: Thing; readonly lengthMm: number; readonly nearestMm: number };
  'cowl-on-bias': { readonly edge: Thing };
  'keyhole-off-fold': { readonly piece: Thing; readonly downMm: number; readonly roomMm: number };
  'keyhole-needs-fold': { readonly piece: Thing };
  'hem-curved-deep': { readonly edge: Thing; readonly allowanceMm: number };
}

/** What was drawn anew. */
export interface RedrawnEdgeSentences {
  'recut-edge': {
    readonly edge: Thing;
    readonly way: 'in' | 'out' | 'line' | 'through' | 'length' | 'like';
    readonly byMm?: readonly number[];
    /** The line, the marks or the edge that it was drawn by. */
    readonly by?: readonly Thing[];
    readonly formerMm: number;
    readonly lengthMm: number;
  };
  'recut-armhole': {
    readonly pieces: readonly Thing[];
    readonly lowerMm: number;
    readonly inMm: number;
    readonly changesMm: readonly number[];
  };
  'shaped-hem': {
    readonly edge: Thing;
    readonly sideMm: number;
    readonly centreMm: number;
    readonly curved: boolean;
    readonly lengthMm: number;
  };
  'levelled-hem': {
    readonly pieces: readonly Thing[];
    /** The level that the hem was measured down from. */
    readonly from: string;
    readonly heightMm: number;
    readonly lengthMm: number;
    /** Of each piece; under 0: shorter. */
    readonly longerMm: readonly number[];
  };
  'matched-edge': {
    readonly edge: Thing;
    /** Absent: to a length that was asked for. */
    readonly seam?: Thing;
    readonly byMm: number;
    readonly lengthMm: number;
    readonly beside: Thing;
  };
  'added-button-stand': {
    readonly edge: Thing;
    readonly widthMm: number;
    readonly facingMm?: number;
    readonly opened: boolean;
  };
  'grown-on': { readonly edges: readonly Thing[]; readonly widthMm: number };
  'wrapped-over': {
    readonly edge: Thing;
    readonly byMm: number;
    readonly depthMm: number;
    readonly neck: Thing;
    readonly neckMm: number;
    readonly opened: boolean;
  };
  'raised-neckline': {
    readonly pieces: readonly Thing[];
    readonly byMm: number;
    readonly necksMm: readonly number[];
  };
  'draped-neckline': {
    readonly piece: Thing;
    readonly byMm: number;
    readonly neckMm: number;
    /** mm that the centre runs on; under 0: it was cut. */
    readonly upMm: number;
  };
  'cut-keyhole': {
    readonly piece: Thing;
    readonly belowMm: number;
    readonly depthMm: number;
    readonly widthMm: number;
    readonly roundMm: number;
  };
}

export const refusal: RefusalOf<RedrawnEdgeTellings> = anyRefusal;
export const finding: FindingOf<RedrawnEdgeTellings> = anyFinding;
export const saying: SayingOf<RedrawnEdgeSentences> = anySaying;
