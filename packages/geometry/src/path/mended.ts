import type { Cubic, Segment } from '../curve/segment.js';
import { endOf, isLine, startOf } from '../curve/segment.js';
import { coincidenceTolerance } from '../tolerance.js';
import { add, distance, type Point, subtract } from '../vector.js';
import type { Path } from './path.js';

/**
 * A chain without segments that are a single point (within `coincidenceTolerance`), which have no direction and
 * would make corners of smooth joints. `undefined` where nothing is left.
 */
export function withoutPoints(path: Path): Path | undefined {
  const kept = path.segments.filter(s => s.some(p => distance(p, startOf(s)) > coincidenceTolerance));
  if (kept.length === path.segments.length) return path;
  if (kept.length === 0) return undefined;
  const from = startOf(path.segments[0]!);
  const segments = kept.map((s, i) => startingAt(s, i === 0 ? from : endOf(kept[i - 1]!)));
  return { segments };
}

/** The same chain with its ends moved; a curve's handle goes with its end, so that the direction there is kept. */
export function withEnds(path: Path, start: Point, end: Point): Path {
  const segments = [...path.segments];
  segments[0] = startingAt(segments[0]!, start);
  const last = segments.length - 1;
  segments[last] = endingAt(segments[last]!, end);
  return { segments };
}

/** The same segment from another start; a curve's handle goes with it. */
export function startingAt(segment: Segment, p: Point): Segment {
  if (isLine(segment)) return [p, segment[1]];
  return [p, add(segment[1], subtract(p, segment[0])), segment[2], segment[3]] satisfies Cubic;
}

/** The same segment to another end; a curve's handle goes with it. */
export function endingAt(segment: Segment, p: Point): Segment {
  if (isLine(segment)) return [segment[0], p];
  return [segment[0], segment[1], add(segment[2], subtract(p, segment[3])), p] satisfies Cubic;
}
