import { lowerBodyShapes } from './lower-body-shapes.js';
import type { PieceLike } from './piece-like.js';
import { smallPieceShapes } from './small-piece-shapes.js';
import { upperBodyShapes } from './upper-body-shapes.js';

/** All kinds of pieces that are known by their outlines. */
export const pieceShapes: readonly PieceLike[] = [
  ...upperBodyShapes,
  ...lowerBodyShapes,
  ...smallPieceShapes,
];
