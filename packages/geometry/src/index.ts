// What one needs to write a pattern down, read it, measure and check it, cut it and write it out. The rest is found
// by its subject in `public/`: `@paperhinge/geometry/paths`, `/curves`, `/pattern` ... Every name stands in one place.

export type { Segment } from './curve/segment.js';
export { line } from './curve/segment.js';
export type { CuttingLine } from './cutting-line/cutting-line.js';
export { cuttingLine } from './cutting-line/cutting-line.js';
export { PatternError } from './errors.js';
export { checkPattern } from './measure/check-pattern.js';
export { levelGirths } from './measure/level-girth.js';
export type { DartMeasures, PatternMeasures, PieceMeasures, SeamMeasures } from './measure/measures.js';
export { measurePattern } from './measure/measures.js';
export type { SeamWalk } from './measure/walk-seam.js';
export { walkSeam, walkSeams } from './measure/walk-seam.js';
export { pathLength } from './path/length.js';
export type { Path } from './path/path.js';
export { pathOf, polyline } from './path/path.js';
export type { EdgeSpec, PatternSpec, PieceSpec } from './pattern/build.js';
export { definePattern, definePiece } from './pattern/build.js';
export { edgeNamed, edgeNames, edgePath, pieceNamed } from './pattern/outline.js';
export { pieceRoleOf, roleOf } from './pattern/roles/roles.js';
export type { LevelShare } from './pattern/sizes/blend-sizes.js';
export { blendSizes } from './pattern/sizes/blend-sizes.js';
export type {
  CornerRule,
  Cutting,
  Dart,
  Edge,
  EdgeKind,
  EdgeRef,
  EdgeRole,
  EdgeRun,
  Fabric,
  FabricRole,
  Fastening,
  FasteningKind,
  Finish,
  LineKind,
  LineRole,
  Mark,
  MarkRole,
  Notch,
  NotchStyle,
  Outline,
  OutlinePart,
  Pattern,
  Piece,
  PieceLine,
  PieceRole,
  Pleat,
  PleatKind,
  Seam,
  SeamEase,
  TakenUp,
} from './pattern/types.js';
export { validatePattern, validatePiece } from './pattern/validate.js';
export type { ToldFinding } from './sayings.js';
export type { PatternReading, PatternReadOptions } from './svg/read-pattern.js';
export { isPatternDrawing, readPattern, sizesOf } from './svg/read-pattern.js';
export type { ForeignShape } from './svg/read-shapes.js';
export { readShapes } from './svg/read-shapes.js';
export type { DrawingScale } from './svg/root.js';
export { writePattern } from './svg/write-pattern.js';
export type { Fact, Facts, Finding, Saying, Severity, Thing, Where } from './telling.js';
export type { LengthUnit } from './units.js';
export { formatLength, millimetresPer, nearestEighth, parseLength } from './units.js';
export type { Point } from './vector.js';
export { at } from './vector.js';
