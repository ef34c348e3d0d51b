// The public surface. Every name is listed; nothing is exported by star.

export { drawingSvg } from './drawing/as-svg.js';
export { drawPattern } from './drawing/draw-pattern.js';
// drawing: what a piece looks like, for any exporter
export type { DrawOptions, PieceDrawing, PiecePlace } from './drawing/draw-piece.js';
export { drawPiece } from './drawing/draw-piece.js';
export type { Drawing, Fill, Ink, Lettering, Role, Stroke, TypeMeasure, Weight } from './drawing/ink.js';
export { letteringBox, movedDrawing } from './drawing/ink.js';
export type { NotchDrawing } from './drawing/notches.js';
export { notchStyles } from './drawing/notches.js';
export type { Layer, Pen } from './drawing/pens.js';
export { layers, penOf } from './drawing/pens.js';
export type { PieceStyle } from './drawing/piece-shape.js';
// dxf: the trade's interchange file
export { layerOf as dxfLayers } from './dxf/layers.js';
export { dxfBlocks, dxfFindings, patternDxf } from './dxf/pattern-dxf.js';
// pages: papers and what is printed where
export type { FormatOptions, Margins, Orientation, PrintedSquare } from './pages/format.js';
export { defaultMargin, defaultOverlap } from './pages/format.js';
export type { ArrangementKind } from './pages/layout.js';
export { arrangementKinds } from './pages/layout.js';
export type { PageJson, PagesJson, PlacedPieceJson } from './pages/pages-json.js';
export type { Paper } from './pages/papers.js';
export { paperOf, papers } from './pages/papers.js';
// fonts
export type { FontFiles, FontSource, Typefaces } from './pdf/typefaces.js';
export { loadTypefaces } from './pdf/typefaces.js';
// photo frame: sheets of targets that a photograph is measured by
export type { PhotoFrameOptions } from './photo-frame/photo-frame.js';
export { photoFrame } from './photo-frame/photo-frame.js';
// place: shapes on paper, or on cloth
export type { ArrangeOptions } from './place/arrange.js';
export { arrange } from './place/arrange.js';
export type { Arrangement, Placing, Shape } from './place/arrangement.js';
export type { Cell, PageField } from './place/field.js';
export type { Turning } from './place/turning.js';
export { turnings } from './place/turning.js';
export type { Printed, PrintOptions } from './print-pattern.js';
export { printPattern } from './print-pattern.js';
export type { ProjectorOptions, ProjectorSheet } from './projector/projector-sheet.js';
export { projectorSheet } from './projector/projector-sheet.js';
// projector: one sheet of thick lines
export type { Ground } from './projector/thick-pens.js';
export { reportHtml } from './report/html.js';
// report: the record in writing
export type { RecordFigures, ReportSource } from './report/source.js';
export type { PrintTellings } from './tellings.js';
