import { line, type Path, type Point, pathLength, pathOf, type Segment } from '@paperhinge/geometry';
import { isLine } from '@paperhinge/geometry/curves';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  boundsOfPath,
  endTangent,
  intersectPaths,
  pathEnd,
  pathStart,
  reversedPath,
  startTangent,
  subpath,
} from '@paperhinge/geometry/paths';
import { add, distance, scale, subtract } from '@paperhinge/geometry/plane';

/** Two chains joined in a new corner, and how much each gained there (mm; negative: cut off). */
export interface Meeting {
  readonly arriving: Path;
  readonly leaving: Path;
  readonly arrivingBy: number;
  readonly leavingBy: number;
}

/**
 * Closes a corner that an edit has opened: both chains run on straight along their end tangents as far as needed
 * and are cut at their first crossing, counted outwards from the middle of the chain that `moved`, or where both
 * did, at the crossing nearest to the ends.
 *
 * @param reach mm that a chain may run on at most
 * @returns nothing where they do not cross
 */
export function meet(
  arriving: Path,
  leaving: Path,
  moved: 'arriving' | 'leaving' | 'both',
  reach: number,
): Meeting | undefined {
  if (distance(pathEnd(arriving), pathStart(leaving)) === 0)
    return { arriving, leaving, arrivingBy: 0, leavingBy: 0 };
  const a = pathLength(arriving),
    b = pathLength(leaving);
  const crossings = intersectPaths(runOn(arriving, reach), reversedPath(runOn(reversedPath(leaving), reach)))
    .map(c => ({ point: c.point, arrivingBy: c.alongA - a, leavingBy: reach - c.alongB }))
    .filter(c => moved === 'both' || (moved === 'arriving' ? c.arrivingBy > -a / 2 : c.leavingBy > -b / 2));
  const far = (c: (typeof crossings)[number]): number =>
    moved === 'both' ? abs(c.arrivingBy) + abs(c.leavingBy) : c[`${moved}By`];
  const first = crossings.reduce<(typeof crossings)[number] | undefined>(
    (best, c) => (best === undefined || far(c) < far(best) ? c : best),
    undefined,
  );
  if (first === undefined) return undefined;
  return {
    arriving: withEndAt(arriving, first.point, first.arrivingBy),
    leaving: reversedPath(withEndAt(reversedPath(leaving), first.point, first.leavingBy)),
    arrivingBy: first.arrivingBy,
    leavingBy: first.leavingBy,
  };
}

/** The chain with its end moved to a point that lies `by` mm further on its run (negative: back along it). */
export function withEndAt(path: Path, point: Point, by: number): Path {
  if (abs(by) <= tolerances.coincidenceTolerance) return endingIn(path, point);
  if (by < 0) return endingIn(subpath(path, 0, pathLength(path) + by), point);
  const last = path.segments.at(-1)!;
  // A straight end simply grows; a curve is followed by a straight piece along its tangent.
  if (isLine(last)) return { segments: [...path.segments.slice(0, -1), line(last[0], point)] };
  return { segments: [...path.segments, line(pathEnd(path), point)] };
}

/** The same chain with its last point put exactly on `point`, which it is within rounding of. */
export function endingIn(path: Path, point: Point): Path {
  const last = path.segments.at(-1)!;
  const moved: Segment = isLine(last) ? [last[0], point] : [last[0], last[1], last[2], point];
  return { segments: [...path.segments.slice(0, -1), moved] };
}

/** The same chain with its first point put exactly on `point`. */
export const startingIn = (path: Path, point: Point): Path =>
  reversedPath(endingIn(reversedPath(path), point));

/** The chain run on straight past its end by `by` mm. */
export function runOn(path: Path, by: number): Path {
  const end = pathEnd(path);
  return { segments: [...path.segments, line(end, add(end, scale(endTangent(path), by)))] };
}

/** The chain run on straight past both ends by `by` mm. */
export function runOnBothWays(path: Path, by: number): Path {
  const start = pathStart(path);
  return {
    segments: [line(subtract(start, scale(startTangent(path), by)), start), ...runOn(path, by).segments],
  };
}

/** mm. Longer than any straight line within a chain's box: how far a run-on may have to go. */
export function reachOf(path: Path): number {
  const { min, max } = boundsOfPath(path);
  return 2 * distance(min, max);
}

/** A straight line of length 2 × `reach` through a point. */
export const lineThrough = (point: Point, direction: Point, reach: number): Path =>
  pathOf(line(subtract(point, scale(direction, reach)), add(point, scale(direction, reach))));
