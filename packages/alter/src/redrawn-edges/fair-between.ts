import { type EdgeRef, type Path, type Point, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  endTangent,
  fairCurve,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  startTangent,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { add, distance, dot, lerp, mirror, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { findAmount } from '../goal/find-amount.js';
import { laidBetween } from '../moved-edges/end-moved.js';
import { refusal } from './tellings.js';

/** A fair line between the ends of a path, in the directions it has there, through points in whatever order. */
export function fairThrough(path: Path, points: readonly Point[]): Path {
  const along = (point: Point) => nearestOnPath(path, point).along;
  return fairCurve(
    { point: pathStart(path), direction: startTangent(path) },
    { point: pathEnd(path), direction: endTangent(path) },
    tolerances.fitTolerance,
    [...points].sort((a, b) => along(a) - along(b)),
  );
}

/**
 * A fair line of some length between the ends of a path, in the directions it has there: the middle of the path moved
 * square to the straight line between its ends, as little as does it.
 * @throws PatternError `edge-length-unreached`
 */
export function fairOfLength(path: Path, length: number, edge: EdgeRef): Path {
  const [from, to] = [pathStart(path), pathEnd(path)];
  const chord = distance(from, to);
  const across = rightOf(unit(subtract(to, from)));
  const middle = pointAlong(path, pathLength(path) / 2);
  const foot = lerp(from, to, 0.5);
  const bulge = dot(subtract(middle, foot), across);
  const drawn = (by: number) => fairThrough(path, [add(foot, scale(across, bulge + by))]);
  const found = findAmount(by => pathLength(drawn(by)), {
    least: -chord,
    most: chord,
    stride: 1,
    from: length,
    to: length,
    within: tolerances.goalTolerance,
  });
  if (found?.reached) return drawn(found.amount);
  const nearestMm = found?.is ?? pathLength(path);
  throw refusal('edge-length-unreached', { edge: { ...edge }, lengthMm: length, nearestMm }, edge);
}

/**
 * The line of another edge between the ends of a path: turned, and larger or smaller where its own ends lie further
 * apart or nearer; turned over, as the two edges of a seam are, where it lies nearer to the path so.
 */
export function tracedBetween(path: Path, other: Path): Path {
  const [from, to] = [pathStart(path), pathEnd(path)];
  // Reversed and mirrored the cloth lies on the same side of it as before.
  const turnedOver = transformedPath(reversedPath(other), mirror(pathStart(other), { x: 1, y: 0 }));
  const laid = [other, turnedOver].map(line => laidBetween(line, from, to));
  const [as, over] = laid as [Path, Path];
  return awayFrom(path, over) < awayFrom(path, as) ? over : as;
}

/** Places at which two lines are held against one another. */
const places = 32;

/** mm, of the farthest of some places along a line from another. */
function awayFrom(path: Path, line: Path): number {
  const length = pathLength(line);
  const at = (i: number) => nearestOnPath(path, pointAlong(line, (length * i) / places)).distance;
  return Math.max(...Array.from({ length: places + 1 }, (_, i) => at(i)));
}
