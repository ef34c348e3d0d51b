// One segment of a line: straight or a cubic curve.

export { arcBetween } from '../curve/arc.js';
export { lengthBetween, parameterAtLength, segmentLength } from '../curve/arc-length.js';
export type { Box } from '../curve/bounds.js';
export { boundsOf } from '../curve/bounds.js';
export { curvatureAt } from '../curve/curvature.js';
export type { SegmentMeeting } from '../curve/intersect.js';
export { intersectSegments } from '../curve/intersect.js';
export type { NearestOnSegment } from '../curve/nearest.js';
export { nearestOnSegment } from '../curve/nearest.js';
export { offsetSegment } from '../curve/offset.js';
export type { Cubic, Line } from '../curve/segment.js';
export {
  asCubic,
  between,
  derivativeAt,
  endOf,
  isLine,
  pointAt,
  quadratic,
  reversed,
  secondDerivativeAt,
  splitAt,
  startOf,
  tangentAt,
  transformed,
} from '../curve/segment.js';
export type { SelfCrossing } from '../curve/self-crossing.js';
export { selfCrossing } from '../curve/self-crossing.js';
