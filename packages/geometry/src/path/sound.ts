import { requireSegment } from '../curve/sound.js';
import { refusal } from '../curve/tellings.js';
import type { Point } from '../vector.js';

/** A chain before it is known to be one: any lists of points. */
interface Chain {
  readonly segments: readonly (readonly Point[])[];
}

/** @throws PatternError `path-empty`, and what `requireSegment` throws of any of its segments */
export function requirePath(path: Chain): void {
  requireSegments(path);
  for (const segment of path.segments) requireSegment(segment);
}

/** @throws PatternError `path-empty` */
export function requireSegments({ segments }: Chain): void {
  if (segments.length === 0) throw refusal('path-empty', {});
}
