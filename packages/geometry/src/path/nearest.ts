import { lengthBetween, segmentLength } from '../curve/arc-length.js';
import { boxOfPoints, distanceToBox } from '../curve/bounds.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { requirePoint } from '../curve/sound.js';
import type { Point } from '../vector.js';
import type { Path } from './path.js';
import { requirePath } from './sound.js';

/** The point of a path nearest to another: its segment, its place on it and its length from the path's start, in mm. */
export interface NearestOnPath {
  readonly along: number;
  readonly point: Point;
  readonly distance: number;
  readonly index: number;
  readonly t: number;
}

/** The nearest point of a path; of several equally near the first. Segments whose hull is farther are passed over. */
export function nearestOnPath(path: Path, p: Point): NearestOnPath {
  requirePath(path);
  requirePoint(p);
  const { segments } = path;
  const reach = segments.map(segment => distanceToBox(boxOfPoints(segment), p));
  let index = 0,
    found = nearestOnSegment(segments[0]!, p);
  for (let i = 1; i < segments.length; i++) {
    if (reach[i]! >= found.distance) continue;
    const candidate = nearestOnSegment(segments[i]!, p);
    if (candidate.distance < found.distance) {
      found = candidate;
      index = i;
    }
  }
  return { ...found, index, along: alongOf(path, index, found.t) };
}

/** Length in mm from the start of a path to parameter t of one of its segments. */
function alongOf(path: Path, index: number, t: number): number {
  let along = 0;
  for (let i = 0; i < index; i++) along += segmentLength(path.segments[i]!);
  const segment = path.segments[index]!;
  return t <= 0 ? along : along + lengthBetween(segment, 0, t);
}
