// Pieces divided and joined, seams moved, opened, matched and set. Every name is listed; nothing is exported by star.

export type { AddNotches } from '../operations/add-notches.js';
export { addNotches } from '../operations/add-notches.js';
export type { Divide, DivisionEnd } from '../operations/divide.js';
export { divide } from '../operations/divide.js';
export type { FoldToSeam, SeamToFold } from '../operations/fold-to-seam.js';
export { foldToSeam, seamToFold } from '../operations/fold-to-seam.js';
export type { JoinPieces } from '../operations/join-pieces.js';
export { joinPieces } from '../operations/join-pieces.js';
export type { MatchEdge } from '../operations/match-edge.js';
export { matchEdge } from '../operations/match-edge.js';
export { moveSeam } from '../operations/move-seam.js';
export type { MoveSeam } from '../operations/move-seam-wish.js';
export type { SeparatePair } from '../operations/separate-pair.js';
export { separatePair } from '../operations/separate-pair.js';
export type { SetSeam } from '../operations/set-seam.js';
export { setSeam } from '../operations/set-seam.js';
export type { Unfold } from '../operations/unfold.js';
export { unfold } from '../operations/unfold.js';
