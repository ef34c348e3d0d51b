// What each verb is given. Every name is listed; nothing is exported by star.

export type { DraftBand } from '../derive/draft-band.js';
export type { DraftFacing } from '../derive/draft-facing.js';
export type { DraftStay } from '../derive/draft-stay.js';
export type { DraftStrip } from '../derive/draft-strip.js';
export type { AddNotches } from './add-notches.js';
export type { ChangeDart } from './change-dart.js';
export type { CloseDart } from './close-dart.js';
export type { Divide, DivisionEnd } from './divide.js';
export type { FoldToSeam, SeamToFold } from './fold-to-seam.js';
export type { JoinDarts } from './join-darts.js';
export type { JoinPieces } from './join-pieces.js';
export type { MoveDart } from './move-dart.js';
export type { MoveDartPoint } from './move-dart-point.js';
export type { MoveSeam } from './move-seam.js';
export type { OpenDart } from './open-dart.js';
export type { RecutNeckline } from './recut-neckline.js';
export type { RemovePiece } from './remove-piece.js';
export type { ResizeDart } from './resize-dart.js';
export type { SetAllowance } from './set-allowance.js';
export type { SetSeam } from './set-seam.js';
export type { Shorten } from './shorten.js';
export type { Spread, SpreadEnd } from './spread.js';
export type { TakeIn } from './take-in.js';
export type { TrueEdges } from './true-edges.js';
export type { Unfold } from './unfold.js';
