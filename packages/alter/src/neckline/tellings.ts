import type { Thing } from '@paperhinge/geometry';
import { anyRefusal, type RefusalOf } from '@paperhinge/geometry/sayings';

interface OfPiece {
  readonly piece: Thing;
}

/** What is told of necklines. */
export interface NecklineTellings {
  /** `necks`: those it might be, where there are several. */
  'no-neck': OfPiece & { readonly necks: readonly Thing[] };
  'neck-interrupted': { readonly edge: Thing };
  'neck-not-at-centre': OfPiece;
  'no-shoulders': { readonly edge: Thing };
  'no-centre-line': OfPiece;
  /** A dart or pleat opens where the neck ends. */
  'dart-in-neck': { readonly dart: Thing };
  'neckline-too-deep': OfPiece & { readonly depthMm: number };
  'neckline-too-shallow': OfPiece;
  'half-width-off-neck': OfPiece & { readonly halfWidthMm: number; readonly reachesMm: number };
  'half-width-beyond-shoulder': {
    readonly edge: Thing;
    readonly halfWidthMm: number;
    readonly reachesMm: number;
  };
  'shoulder-out-of-reach': { readonly edge: Thing; readonly wantedMm: number };
  'name-taken': { readonly edge: Thing };
  'line-ends-off-outline': { readonly line: Thing; readonly awayMm: number };
  'line-crosses-dart': { readonly dart: Thing };
  'neckline-leaves-piece': OfPiece;
}

export const refusal: RefusalOf<NecklineTellings> = anyRefusal;
