import { anyFinding, anyRefusal, type FindingOf, type NoFacts, type RefusalOf } from '../../sayings.js';

/** What is told of pictures and what is traced from them. Pictures and sheets are counted from 1. */
export interface PhotoTellings {
  'no-target-found': { readonly picture: number };
  'too-few-targets': { readonly picture: number; readonly sheets: number };
  'picture-blurred': { readonly picture: number };
  'picture-too-small': { readonly picture: number; readonly width: number; readonly height: number };
  'pictures-share-no-sheets': { readonly picture: number };
  'ground-not-seen': NoFacts;
  'scan-ground-not-seen': NoFacts;
  'no-piece-found': NothingTraced;
  'no-piece-on-scan': NothingTraced;
  'too-few-clicks': { readonly clicks: number };
  'click-outside': { readonly click: number };
  'no-line-between': { readonly from: number; readonly to: number };
  /** Near the corner that was clicked, counted from 1, there is no line of this size; or none leads on from it. */
  'size-not-drawn-there': { readonly size: string; readonly corner: number };
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
  /** Pieces found, of which their maker alone knows how many there were. */
  'pieces-counted': { readonly pieces: number };
  'piece-faint': { readonly piece: string };
  /** Something hardly to be told from the ground, by where it lies in the first picture. */
  'edge-faint': PlaceInPicture;
  'floor-too-bright': { readonly sharePercent: number };
  'piece-touches-sheet': { readonly piece: string };
}

/** What was seen where no piece was traced. */
export interface NothingTraced {
  /** Places where an edge was seen that is hardly to be told from the ground. */
  readonly faint: number;
  /** Things that run out of the picture. */
  readonly cutOff: number;
}

/** Where something lies in a picture, in thirds of it. */
export interface PlaceInPicture {
  readonly down: 'top' | 'middle' | 'bottom';
  readonly across: 'left' | 'middle' | 'right';
}

export const refusal: RefusalOf<PhotoTellings> = anyRefusal;
export const finding: FindingOf<PhotoTellings> = anyFinding;
