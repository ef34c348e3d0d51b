import { anyFinding, anyRefusal, type FindingOf, type NoFacts, type RefusalOf } from '../../sayings.js';

/** What is told of pictures and what is traced from them. Pictures and sheets are counted from 1. */
export interface PhotoTellings {
  'no-target-found': { readonly picture: number };
  'too-few-targets': { readonly picture: number; readonly sheets: number };
  'picture-blurred': { readonly picture: number };
  'picture-too-small': { readonly picture: number; readonly width: number; readonly height: number };
  'pictures-share-no-sheets': { readonly picture: number };
  'ground-not-seen': NoFacts;
  'no-piece-found': NoFacts;
  'no-piece-on-scan': NoFacts;
  'too-few-clicks': { readonly clicks: number };
  'click-outside': { readonly click: number };
  'no-line-between': { readonly from: number; readonly to: number };
  'scan-scale-out-of-range': { readonly dotsToMm: number };
  'scan-cuts-off': { readonly pieces: number };
  'scan-scale': { readonly dotsToMm: number };
  'trace-truth': { readonly residualMm: number; readonly worstMm: number; readonly sheet: number };
  'few-sheets': { readonly sheets: number };
  'sheet-not-flat': { readonly sheet: number; readonly offMm: number };
  'sheet-laid-twice': { readonly sheet: number };
  'picture-aslant': { readonly picture: number; readonly tiltDeg: number };
  'picture-coarse': { readonly picture: number; readonly dotMm: number };
  'piece-cut-off': { readonly at: 'top' | 'right' | 'bottom' | 'left' };
  'piece-beyond-sheets': { readonly piece: string; readonly beyondMm: number };
  'piece-touches-sheet': { readonly piece: string };
}

export const refusal: RefusalOf<PhotoTellings> = anyRefusal;
export const finding: FindingOf<PhotoTellings> = anyFinding;
