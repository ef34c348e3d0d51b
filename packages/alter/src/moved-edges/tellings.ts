import type { Thing } from '@paperhinge/geometry';
import { anyFinding, anyRefusal, type FindingOf, type RefusalOf } from '@paperhinge/geometry/sayings';

/** What is told of moving edges, and of the seams they are sewn in. */
export interface MovedEdgesTellings {
  /** `lines`: across it, at which it may be made longer or shorter instead. */
  'no-hem': { readonly piece: Thing; readonly lines: readonly string[] };
  'several-hems': { readonly piece: Thing; readonly hems: readonly Thing[] };
  'no-grain-line': { readonly piece: Thing };
  'no-level-there': { readonly piece: Thing; readonly from: string; readonly levels: readonly string[] };
  'hem-above-level': {
    readonly piece: Thing;
    readonly from: string;
    readonly standsMm: number;
    readonly heightMm: number;
  };
  'grain-across': { readonly piece: Thing };
  /** At the hem, or at a line; `meets`: what it no longer meets, or what is used up. */
  'shorten-beyond-piece': {
    readonly piece: Thing;
    readonly byMm: number;
    readonly line?: Thing;
    readonly meets?: Thing;
    readonly meetsMm?: number;
    readonly dart?: boolean;
  };
  'unknown-line': { readonly piece: string; readonly name: string; readonly names: readonly string[] };
  'line-through-corner': { readonly line: Thing; readonly edge: Thing };
  'line-off-piece': { readonly line: Thing };
  'line-crosses-edge-twice': { readonly line: Thing; readonly edge: Thing };
  'dart-redrawn': { readonly dart: Thing };
  'dart-mouth-parted': { readonly dart: Thing; readonly wasMm: number; readonly isMm: number };
  'dart-left-uneven': { readonly dart: Thing; readonly differenceMm: number };
  'take-in-too-much': {
    readonly piece: Thing;
    readonly byMm: number;
    readonly apart: readonly Thing[];
    /** The one of them that the moved one runs on into, and that does not move. */
    readonly stays?: Thing;
  };
  'unknown-seam': { readonly name: string; readonly names: readonly string[] };
  'position-off-seam': { readonly seam: Thing; readonly alongMm: number; readonly lengthMm: number };
  'seam-end-ambiguous': { readonly seam: Thing; readonly from: string };
  'seam-end-unknown': { readonly seam: Thing; readonly from: string; readonly neighbours: readonly string[] };
}

export const refusal: RefusalOf<MovedEdgesTellings> = anyRefusal;
export const finding: FindingOf<MovedEdgesTellings> = anyFinding;
