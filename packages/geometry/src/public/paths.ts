// Open chains of segments.

export type { Station } from '../curve/hermite-fit.js';
export { boundsOfPath } from '../path/bounds.js';
export { curveOfLength } from '../path/curve-of-length.js';
export { fairCurve, fitCurve } from '../path/fit.js';
export type { PathMeeting } from '../path/intersect.js';
export { intersectPaths } from '../path/intersect.js';
export { locate, pointAlong, splitPath, subpath, tangentAlong } from '../path/length.js';
export type { NearestOnPath } from '../path/nearest.js';
export { nearestOnPath } from '../path/nearest.js';
export type { SegmentOffset } from '../path/offset.js';
export { offsetPath } from '../path/offset.js';
export {
  endTangent,
  joined,
  pathEnd,
  pathStart,
  reversedPath,
  startTangent,
  transformedPath,
} from '../path/path.js';
export { simplifyPath } from '../path/simplify.js';
export { smoothJoin } from '../path/smooth-join.js';
