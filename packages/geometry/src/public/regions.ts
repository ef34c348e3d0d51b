// What a closed path surrounds.

export { centroid, signedArea } from '../region/area.js';
export { difference, intersection, union } from '../region/boolean.js';
export { clearance } from '../region/clearance.js';
export { containsPoint } from '../region/contains.js';
export type { PathSelfCrossing } from '../region/self-crossings.js';
export { selfCrossings } from '../region/self-crossings.js';
