import { coincidenceTolerance } from './tolerance.js';
import { distance, type Point } from './vector.js';

/** Whether two places are one, but for rounding. */
export const isSamePoint = (p: Point, q: Point): boolean => distance(p, q) <= coincidenceTolerance;
