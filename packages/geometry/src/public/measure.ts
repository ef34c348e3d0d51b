// Lengths, girths, seams walked, lines held against one another where they are sewn.

export { centreOf } from '../joining/centre.js';
export type { PlacedEnd } from '../joining/meetings.js';
export { neighboursAtEnds } from '../joining/meetings.js';
export type { LooseEnd } from '../joining/ties.js';
export { isTie, looseEnds } from '../joining/ties.js';
export { bodyPieces } from '../measure/body-pieces.js';
export type { EdgeTruing, Kink } from '../measure/edge-truing.js';
export { edgeTruing } from '../measure/edge-truing.js';
export type { FacingEdges } from '../measure/facing-edges.js';
export { facingEdges } from '../measure/facing-edges.js';
export type { HemSweep } from '../measure/hem-sweep.js';
export { hemSweep, lengthInGarment } from '../measure/hem-sweep.js';
export { hipPieces } from '../measure/hip-pieces.js';
export type { JoinedLine } from '../measure/joined-lines.js';
export { joinedLinesAcrossFolds, joinedLinesOf, weldedLines } from '../measure/joined-lines.js';
export { levelAcross, levelNames } from '../measure/level-across.js';
export type { LevelGirth } from '../measure/level-girth.js';
export { girthsAtLevels } from '../measure/level-girth.js';
export type { FasteningMeasures, PleatMeasures } from '../measure/measures.js';
export type { SeamStretch } from '../measure/notch-check.js';
export type { LaidNotch, LaidRun, SeamSide } from '../measure/side.js';
export { sidesOfSeam } from '../measure/walk-seam.js';
