// Sleeves: their caps, their shape, and bodices that take them in. Every name is listed; nothing is exported by star.

export type { BendSleeve } from '../operations/bend-sleeve.js';
export { bendSleeve } from '../operations/bend-sleeve.js';
export type { ChangeCap } from '../operations/change-cap.js';
export { changeCap } from '../operations/change-cap.js';
export type { CutKimono } from '../operations/cut-kimono.js';
export { cutKimono } from '../operations/cut-kimono.js';
export type { CutRaglan } from '../operations/cut-raglan.js';
export { cutRaglan } from '../operations/cut-raglan.js';
export type { DivideSleeve } from '../operations/divide-sleeve.js';
export { divideSleeve } from '../operations/divide-sleeve.js';
export type { ShapeSleeve } from '../operations/shape-sleeve.js';
export { shapeSleeve } from '../operations/shape-sleeve.js';
export type { WalkCap } from '../operations/walk-cap.js';
export { walkCap } from '../operations/walk-cap.js';
