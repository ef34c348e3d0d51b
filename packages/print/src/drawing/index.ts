// What a piece looks like, for any exporter.

export { layers } from '../layers.js';
export { drawingSvg } from './as-svg.js';
export type { PatternStyle } from './draw-pattern.js';
export { drawPattern } from './draw-pattern.js';
export type { DrawOptions, PieceDrawing, PiecePlace } from './draw-piece.js';
export { drawPiece } from './draw-piece.js';
export type { Drawing, Fill, Ink, Lettering, Role, Stroke, TypeMeasure, Weight } from './ink.js';
export { letteringBox, movedDrawing } from './ink.js';
export { namedEdgesSvg } from './named-edges.js';
export type { NotchDrawing } from './notches.js';
export { notchStyles } from './notches.js';
export type { Pen } from './pens.js';
export { penOf } from './pens.js';
export type { PieceStyle } from './piece-shape.js';
