import { boxOfPoints, distanceToBox } from '../curve/bounds.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { requirePoint } from '../curve/sound.js';
import type { Point } from '../vector.js';
import { lengthTo, startLengths } from './length.js';
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
  return { ...found, index, along: lengthTo(path, startLengths(path), index, found.t) };
}
