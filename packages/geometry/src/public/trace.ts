// Pieces from paper: measured by hand, or photographed and traced; and what they and their edges seem to be.

export type { SvgDrawing } from '../svg/drawing-of-svg.js';
export { drawingOfSvg } from '../svg/drawing-of-svg.js';
export type { LineDrawn } from '../svg/write-trace.js';
export { writeTrace } from '../svg/write-trace.js';
export type { DrawnLine, DrawnWord, ForeignDrawing, LineMeaning } from '../trace/drawing/drawing.js';
export type { DxfReading } from '../trace/drawing/dxf/read-dxf.js';
export { readDxf } from '../trace/drawing/dxf/read-dxf.js';
export type { DrawingTrace, DrawingWishes } from '../trace/drawing/pieces-of-drawing.js';
export { piecesOfDrawing } from '../trace/drawing/pieces-of-drawing.js';
export type { SizeLayer, SizesTrace } from '../trace/drawing/sizes-of-drawing.js';
export { sizesOfDrawing } from '../trace/drawing/sizes-of-drawing.js';
export type { MeasuredReading } from '../trace/measured/measured-piece.js';
export { measuredPiece } from '../trace/measured/measured-piece.js';
export type {
  EdgeEnd,
  MeasuredDart,
  MeasuredEdge,
  MeasuredLine,
  MeasuredMark,
  MeasuredNotch,
  MeasuredPiece,
  MeasuredPoint,
  MirroredPoint,
  PointByDistances,
  Towards,
} from '../trace/measured/types.js';
export type { FrontSign } from '../trace/naming/front-and-back.js';
export type { EdgeProposal, NameProposal, NamingProposal } from '../trace/naming/propose-names.js';
export { proposeNames } from '../trace/naming/propose-names.js';
export type { SeamProposal } from '../trace/naming/propose-seams.js';
export type { JoinedPages } from '../trace/pages/joined-pages.js';
export { joinedPages } from '../trace/pages/joined-pages.js';
export type { DrawnPage, GridWishes } from '../trace/pages/page.js';
export type { FloorMap } from '../trace/photo/floor-map.js';
export type { PlacedSheet } from '../trace/photo/floor-of-sheets.js';
export type { PenColour, PenSeen, SizeDrawn } from '../trace/photo/pen.js';
export { penColours } from '../trace/photo/pen.js';
export type { PhotoTrace, SizeTraced, TracedPiece } from '../trace/photo/photo-trace.js';
export type { Picture } from '../trace/photo/picture.js';
export type { PrintedStretch } from '../trace/photo/seen-sheets.js';
export { codeCells, codeSide } from '../trace/photo/target-code.js';
export type { FramePaper, FrameSheet } from '../trace/photo/target-sheet.js';
export {
  checkedSquare,
  framePapers,
  sheetsInFrame,
  targetCell,
  targetCorners,
  targetIndex,
  targetPlaces,
} from '../trace/photo/target-sheet.js';
export type { PhotoOptions, TraceStage } from '../trace/photo/trace-photo.js';
export { tracePhotos } from '../trace/photo/trace-photo.js';
export type { ScanOptions } from '../trace/photo/trace-scan.js';
export { traceScan } from '../trace/photo/trace-scan.js';
export { patternOfTrace, patternsOfTrace } from '../trace/photo/traced-piece.js';
export type { StopSignal, Watch } from '../trace/watch.js';
