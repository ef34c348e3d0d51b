import type { Affine } from '../affine.js';
import { endOf, line, reversed, type Segment, startOf, tangentAt, transformed } from '../curve/segment.js';
import type { Point } from '../vector.js';
import { requireSegments } from './sound.js';

/**
 * A chain of segments, each starting where the last ended. At least one segment.
 * One exception: the path of an edge that a dart interrupts (see `edgePath`) leaps over the dart's mouth.
 */
export interface Path {
  readonly segments: readonly Segment[];
}

/** A chain of the segments given. */
export const pathOf = (...segments: readonly Segment[]): Path => ({ segments });
/** Straight lines through the points in order. */
export const polyline = (...points: readonly Point[]): Path => ({
  segments: points.slice(1).map((p, i) => line(points[i]!, p)),
});
/** Where a chain starts. */
export function pathStart(path: Path): Point {
  requireSegments(path);
  return startOf(path.segments[0]!);
}
/** Where a chain ends. */
export function pathEnd(path: Path): Point {
  requireSegments(path);
  return endOf(path.segments.at(-1)!);
}
/** The same chain travelled the other way. */
export const reversedPath = (path: Path): Path => ({ segments: path.segments.map(reversed).reverse() });
/** A chain carried by an affine map; exact. */
export const transformedPath = (path: Path, map: Affine): Path => ({
  segments: path.segments.map(s => transformed(s, map)),
});
/** Chains one after another as one; where they do not meet the chain leaps. */
export const joined = (...paths: readonly Path[]): Path => ({ segments: paths.flatMap(p => p.segments) });
/** Unit direction of travel where the path starts. */
export function startTangent(path: Path): Point {
  requireSegments(path);
  return tangentAt(path.segments[0]!, 0);
}
/** Unit direction of travel where the path ends. */
export function endTangent(path: Path): Point {
  requireSegments(path);
  return tangentAt(path.segments.at(-1)!, 1);
}
