// The public surface, by folder. Every name is listed; nothing is exported by star.
export { PatternError, locating } from './errors.js';
export type { Fault, Finding, Severity, Where } from './errors.js';
export * as tolerances from './tolerance.js';
export { millimetresPer } from './units.js';
export type { LengthUnit } from './units.js';
export { add, angleBetween, at, cross, distance, dot, leftOf, lerp, norm, rightOf, scale, subtract, unit } from './vector.js';
export type { Point } from './vector.js';
export { apply, applyToVector, carrying, compose, determinant, identity, mirror, rotation, translation } from './affine.js';
export type { Affine } from './affine.js';

// curve: one segment
export { asCubic, between, derivativeAt, endOf, isLine, line, pointAt, quadratic, reversed, secondDerivativeAt, splitAt, startOf, tangentAt, transformed } from './curve/segment.js';
export type { Cubic, Line, Segment } from './curve/segment.js';
export { parameterAtLength, segmentLength } from './curve/arc-length.js';

// path: an open chain of segments
export { endTangent, joined, pathEnd, pathOf, pathStart, polyline, reversedPath, startTangent, transformedPath } from './path/path.js';
export type { Path } from './path/path.js';
export { locate, pathLength, pointAlong, splitPath, subpath, tangentAlong } from './path/length.js';

// pattern: what a pattern is
export { dartsOf, edgeNamed, edgeNames, edgeParts, edgePath, foldEdgeOf, neighboursOf, outlinePath, partsOfEdge, pieceNamed, runLabel, timesInGarment, withPiece } from './pattern/outline.js';
export { resolvePosition } from './pattern/position.js';
export type { EdgePosition } from './pattern/position.js';
export type { CornerRule, Cutting, Dart, Edge, EdgeKind, EdgeRef, EdgeRun, Fabric, FabricRole, LineKind, Mark, Notch, NotchStyle, Outline, OutlinePart, Pattern, Piece, PieceLine, Seam, SeamEase } from './pattern/types.js';
