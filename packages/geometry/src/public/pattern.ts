// Within a pattern: parts of outlines, places on edges, roles, copies, sizes.

export { copiesInGarment, goRoundTogether, isLimb } from '../pattern/copies.js';
export {
  dartsOf,
  edgeParts,
  foldEdgeOf,
  neighboursOf,
  outlinePath,
  partsOfEdge,
  pathsOfPart,
  pleatsOf,
  runLabel,
  withPiece,
} from '../pattern/outline.js';
export type { EdgePosition } from '../pattern/position.js';
export { resolvePosition } from '../pattern/position.js';
export { parsePercent, parsePosition } from '../pattern/position-text.js';
export type { NewNames } from '../pattern/rename.js';
export { renamed } from '../pattern/rename.js';
export { pieceWithRoles, withRoles } from '../pattern/roles/guess-roles.js';
export { edgeRoles, lineRoles, markRoles, pieceRoles } from '../pattern/roles/role-names.js';
export {
  centreEdgeOf,
  edgesOfRole,
  guessFindings,
  isCentreEdge,
  isCentreLine,
  lineRoleOf,
  markRoleOf,
} from '../pattern/roles/roles.js';
export { sizeDifferences } from '../pattern/sizes/size-differences.js';
export type { PlaceOnEdge } from '../pattern/types.js';
export {
  edgeKinds,
  fabricRoles,
  fasteningKinds,
  finishes,
  notchStyles as notchWords,
  takenUpWays,
  units as lengthUnits,
} from '../pattern/words.js';
