// The public surface, by folder. Every name is listed; nothing is exported by star.

export type { Affine } from './affine.js';
export {
  apply,
  applyToVector,
  carrying,
  compose,
  determinant,
  identity,
  mirror,
  rotation,
  translation,
} from './affine.js';
export { arcBetween } from './curve/arc.js';
export { lengthBetween, parameterAtLength, segmentLength } from './curve/arc-length.js';
export type { Box } from './curve/bounds.js';
export { boundsOf } from './curve/bounds.js';
export { curvatureAt } from './curve/curvature.js';
export type { SegmentMeeting } from './curve/intersect.js';
export { intersectSegments } from './curve/intersect.js';
export type { NearestOnSegment } from './curve/nearest.js';
export { nearestOnSegment } from './curve/nearest.js';
export { offsetSegment } from './curve/offset.js';
export type { Cubic, Line, Segment } from './curve/segment.js';
// curve: one segment
export {
  asCubic,
  between,
  derivativeAt,
  endOf,
  isLine,
  line,
  pointAt,
  quadratic,
  reversed,
  secondDerivativeAt,
  splitAt,
  startOf,
  tangentAt,
  transformed,
} from './curve/segment.js';
export type { SelfCrossing } from './curve/self-crossing.js';
export { selfCrossing } from './curve/self-crossing.js';
export type { CurveTellings } from './curve/tellings.js';
// cutting-line: from the stitching line to where the cloth is cut
export type { CuttingLine } from './cutting-line/cutting-line.js';
export { cuttingLine } from './cutting-line/cutting-line.js';
export type { NamedPath, OffsetLoop, OutlineOffset } from './cutting-line/offset-outline.js';
export { offsetOutline } from './cutting-line/offset-outline.js';
export type { StitchingLine } from './cutting-line/stitching-line.js';
export { stitchingLine } from './cutting-line/stitching-line.js';
export type { Stretch, StretchShape } from './cutting-line/strand.js';
export type { CuttingLineTellings } from './cutting-line/tellings.js';
export { pathWithoutLoops } from './cutting-line/without-loops.js';
export type { Fault, Where } from './errors.js';
export { locating, PatternError } from './errors.js';
export { centreOf, isCentreName } from './joining/centre.js';
export type { PlacedEnd } from './joining/meetings.js';
export { neighboursAtEnds } from './joining/meetings.js';
export { bodyPieces } from './measure/body-pieces.js';
export { checkPattern } from './measure/check-pattern.js';
export type { EdgeTruing, Kink } from './measure/edge-truing.js';
export { edgeTruing } from './measure/edge-truing.js';
export type { HemSweep } from './measure/hem-sweep.js';
// measure: lengths, girths at a level, walking seams, truing checks
export { hemSweep, lengthInGarment } from './measure/hem-sweep.js';
export type { JoinedLine } from './measure/joined-lines.js';
export { joinedLinesAcrossFolds, joinedLinesOf, weldedLines } from './measure/joined-lines.js';
export { levelAcross, levelNames } from './measure/level-across.js';
export type { LevelGirth } from './measure/level-girth.js';
export { girthsAtLevels, levelGirths } from './measure/level-girth.js';
export type {
  DartMeasures,
  FasteningMeasures,
  PatternMeasures,
  PieceMeasures,
  PleatMeasures,
  SeamMeasures,
} from './measure/measures.js';
export { measurePattern } from './measure/measures.js';
export type { SeamStretch } from './measure/notch-check.js';
export type { MeasureTellings } from './measure/tellings.js';
export type { SeamWalk } from './measure/walk-seam.js';
export { walkSeam, walkSeams } from './measure/walk-seam.js';
// names in messages: quoted short, with the one that was meant
export { listed, nearestName, quoted, suggestion } from './naming.js';
export { oncePer, oncePerAll } from './once-per.js';
export { boundsOfPath } from './path/bounds.js';
export { curveOfLength } from './path/curve-of-length.js';
export { fairCurve, fitCurve } from './path/fit.js';
export type { PathMeeting } from './path/intersect.js';
export { intersectPaths } from './path/intersect.js';
export { locate, pathLength, pointAlong, splitPath, subpath, tangentAlong } from './path/length.js';
export type { NearestOnPath } from './path/nearest.js';
export { nearestOnPath } from './path/nearest.js';
export type { SegmentOffset } from './path/offset.js';
export { offsetPath } from './path/offset.js';
export type { Path } from './path/path.js';
// path: an open chain of segments
export {
  endTangent,
  joined,
  pathEnd,
  pathOf,
  pathStart,
  polyline,
  reversedPath,
  startTangent,
  transformedPath,
} from './path/path.js';
export { simplifyPath } from './path/simplify.js';
export { smoothJoin } from './path/smooth-join.js';
export type { EdgeSpec, PatternSpec, PieceSpec } from './pattern/build.js';
export { definePattern, definePiece } from './pattern/build.js';
// pattern: what a pattern is
export { copiesInGarment, goRoundTogether } from './pattern/copies.js';
export {
  dartsOf,
  edgeNamed,
  edgeNames,
  edgeParts,
  edgePath,
  foldEdgeOf,
  neighboursOf,
  outlinePath,
  partsOfEdge,
  pathsOfPart,
  pieceNamed,
  pleatsOf,
  runLabel,
  withPiece,
} from './pattern/outline.js';
export type { EdgePosition } from './pattern/position.js';
export { resolvePosition } from './pattern/position.js';
export { parsePercent, parsePosition } from './pattern/position-text.js';
// roles: what edges, pieces, lines and marks are, whatever they are called
export { pieceWithRoles, withRoles } from './pattern/roles/guess-roles.js';
export { edgeRoles, lineRoles, markRoles, pieceRoles } from './pattern/roles/role-names.js';
export {
  centreEdgeOf,
  edgesOfRole,
  guessFindings,
  isCentreEdge,
  isCentreLine,
  lineRoleOf,
  markRoleOf,
  pieceRoleOf,
  roleOf,
} from './pattern/roles/roles.js';
// sizes: whether two sizes are one pattern, and what lies between them
export type { LevelShare } from './pattern/sizes/blend-sizes.js';
export { blendSizes } from './pattern/sizes/blend-sizes.js';
export { sizeDifferences } from './pattern/sizes/size-differences.js';
export type { PatternTellings } from './pattern/tellings.js';
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
// region: what a closed path surrounds
export { centroid, signedArea } from './region/area.js';
export { difference, intersection, union } from './region/boolean.js';
export { clearance } from './region/clearance.js';
export { containsPoint } from './region/contains.js';
export type { PathSelfCrossing } from './region/self-crossings.js';
export { selfCrossings } from './region/self-crossings.js';
// sayings: codes, figures and references that are put into words at the outer edge
export type {
  Fact,
  Facts,
  Finding,
  NoFacts,
  Saying,
  SayingTable,
  Severity,
  Tellable,
  Thing,
  ToldFinding,
} from './sayings.js';
export { factsOf, sayingsOf } from './sayings.js';
// svg: drawings in and out
export type { PathData, PathDataFault } from './svg/path-data.js';
export { drawPathData, parsePathData } from './svg/path-data.js';
export { toPathData } from './svg/path-text.js';
export type { PathPen, Subpath } from './svg/pen.js';
export type { PatternReading, PatternReadOptions } from './svg/read-pattern.js';
export { isPatternDrawing, readPattern, sizesOf } from './svg/read-pattern.js';
export type { ForeignShape, ReadOptions } from './svg/read-shapes.js';
export { readShapes } from './svg/read-shapes.js';
export type { DrawingScale } from './svg/root.js';
export type { SheetPiece, SheetPieces } from './svg/sheet-pieces.js';
export type { SvgTellings } from './svg/tellings.js';
export type { SeamSides, ToldRun, ToldSides } from './svg/told-runs.js';
export { toldRun, toldSeams } from './svg/told-runs.js';
export type { TransformedPathData } from './svg/transform-path-data.js';
export { transformPathData } from './svg/transform-path-data.js';
export { writePattern } from './svg/write-pattern.js';
export type { GeometryTellings } from './tellings.js';
export * as tolerances from './tolerance.js';
// trace: paper into pieces; the photo frame's own targets
export type { FloorMap } from './trace/photo/floor-map.js';
export type { PlacedSheet } from './trace/photo/floor-of-sheets.js';
export type { Picture } from './trace/photo/picture.js';
export type { PrintedStretch } from './trace/photo/seen-sheets.js';
export { codeCells, codeSide } from './trace/photo/target-code.js';
export type { FramePaper, FrameSheet } from './trace/photo/target-sheet.js';
export {
  checkedSquare,
  framePapers,
  sheetsInFrame,
  targetCell,
  targetCorners,
  targetIndex,
  targetPlaces,
} from './trace/photo/target-sheet.js';
export type { PhotoTellings } from './trace/photo/tellings.js';
export type { PhotoOptions, PhotoTrace, TraceStage } from './trace/photo/trace-photo.js';
export { tracePhotos } from './trace/photo/trace-photo.js';
export type { TracedPiece } from './trace/photo/traced-piece.js';
export { patternOfTrace } from './trace/photo/traced-piece.js';
export type { LengthUnit } from './units.js';
export { formatLength, millimetresPer, nearestEighth, parseLength } from './units.js';
export type { Point } from './vector.js';
export {
  add,
  angleBetween,
  at,
  cross,
  distance,
  dot,
  leftOf,
  lerp,
  norm,
  rightOf,
  scale,
  subtract,
  unit,
} from './vector.js';
