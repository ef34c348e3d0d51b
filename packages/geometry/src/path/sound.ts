import { requireSegment } from '../curve/sound.js';
import { refusal } from '../curve/tellings.js';
import type { Path } from './path.js';

/** @throws PatternError `path-empty`, and what `requireSegment` throws of any of its segments */
export function requirePath(path: Path): void {
  requireSegments(path);
  for (const segment of path.segments) requireSegment(segment);
}

/** @throws PatternError `path-empty` */
export function requireSegments({ segments }: Path): void {
  if (segments.length === 0) throw refusal('path-empty', {});
}
