// Drawings and path data, in and out.

export type { ArcTo } from '../svg/arc.js';
export type { PathData, PathDataFault } from '../svg/path-data.js';
export { drawPathData, parsePathData } from '../svg/path-data.js';
export { toPathData } from '../svg/path-text.js';
export type { PathPen, Subpath } from '../svg/pen.js';
export type { ReadOptions } from '../svg/read-shapes.js';
export type { SheetPiece, SheetPieces } from '../svg/sheet-pieces.js';
export type { SeamSides, ToldRun, ToldSides } from '../svg/told-runs.js';
export { toldRun, toldSeams } from '../svg/told-runs.js';
export type { TransformedPathData } from '../svg/transform-path-data.js';
export { transformPathData } from '../svg/transform-path-data.js';
export { writeSizes } from '../svg/write-pattern.js';
