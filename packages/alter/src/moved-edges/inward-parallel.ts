import { line, type Path, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import { isLine } from '@paperhinge/geometry/curves';
import { withoutSpecks } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  endTangent,
  fitCurve,
  joined,
  offsetPath,
  pathEnd,
  pathStart,
  pointAlong,
  startTangent,
  subpath,
  tangentAlong,
} from '@paperhinge/geometry/paths';
import { add, cross, distance, rightOf, scale, subtract } from '@paperhinge/geometry/plane';
import { meet, reachOf, startingIn } from './meet.js';
import { breaksWithin, isEven, type Taper } from './taper.js';

/**
 * A chain moved to the right of its travel (into the cloth) by `depth` mm × the fullness at each place.
 * Straight lines stay exact; a curve is its parallel, or fitted within `fitTolerance` where the change tapers.
 *
 * @param full fullness at a share of the chain's own length
 * @param share the place on the seam of a share of the chain's own length
 */
export function movedInwards(
  path: Path,
  depth: number,
  full: (part: number) => number,
  taper: Taper,
  share: (part: number) => number,
): Path {
  const length = pathLength(path);
  const a = share(0),
    b = share(1);
  const breaks = breaksWithin(taper, Math.min(a, b), Math.max(a, b)).map(s => ((s - a) / (b - a)) * length);
  const stops = [0, ...breaks.sort((p, q) => p - q), length];
  const pieces = stops.slice(1).flatMap((to, i): readonly Path[] => {
    const from = stops[i]!;
    const stretch = stops.length === 2 ? path : subpath(path, from, to);
    const within = (part: number): number => full((from + (to - from) * part) / length);
    const ends = [within(0), within(0.5), within(1)] as const;
    // Rounded, since a place where the change begins is met within rounding only.
    const same = ends.every(e => Math.abs(e - ends[1]) <= tolerances.shareRounding);
    if (same && ends[1] <= tolerances.shareRounding) return [stretch];
    if (same) return parallelPieces(stretch, depth * ends[1]);
    return taperedPieces(stretch, part => depth * within(part), isEven(taper));
  });
  return joinedInOne(pieces, depth);
}

/** The parallels of a path's segments at `depth` mm to the right, in order; a point, or what rounding left, has none. */
export const parallelPieces = (path: Path, depth: number): readonly Path[] =>
  offsetPath({ segments: withoutSpecks(path.segments) }, -depth).flatMap(({ segments }) =>
    segments.length > 0 ? [{ segments }] : [],
  );

/** The parallel of each segment at a distance that changes along the path. */
function taperedPieces(path: Path, depthAt: (part: number) => number, even: boolean): readonly Path[] {
  const length = pathLength(path);
  let from = 0;
  return withoutSpecks(path.segments).map(segment => {
    const own = pathOf(segment);
    const size = pathLength(own);
    const start = from;
    from += size;
    const depth = (along: number): number => depthAt((start + along) / length);
    const beside = (along: number): Point =>
      add(pointAlong(own, along), scale(rightOf(tangentAlong(own, along)), depth(along)));
    if (isLine(segment) && even) return pathOf(line(beside(0), beside(size)));
    const points = Array.from({ length: samples + 1 }, (_, i) => beside((size * i) / samples));
    const near = size * nearEnd;
    return fitCurve(
      points,
      subtract(beside(near), points[0]!),
      subtract(points.at(-1)!, beside(size - near)),
      tolerances.fitTolerance,
    );
  });
}

/** Points laid on a tapered parallel before a curve is fitted through them: one each few millimetres of a long seam. */
const samples = 96;
/** Share of a segment over which the direction at its end is taken. */
const nearEnd = 1 / 100_000;

/**
 * Neighbouring stretches, moved by `depth` mm to the right of travel, in one chain: where a corner between them
 * opened or overlaps, they meet again. Corners that opened go first: what they add to a stretch may be where the
 * next corner cuts it.
 */
export function joinedInOne(pieces: readonly Path[], depth: number): Path {
  const opened = (before: Path, after: Path): boolean =>
    depth * cross(endTangent(before), startTangent(after)) < 0;
  const runs: Path[] = [];
  for (const next of pieces) {
    const last = runs.at(-1);
    if (last && opened(last, next)) runs[runs.length - 1] = joinedOn(last, next);
    else runs.push(next);
  }
  return runs.slice(1).reduce(joinedOn, runs[0]!);
}

function joinedOn(before: Path, after: Path): Path {
  const end = pathEnd(before);
  if (distance(end, pathStart(after)) <= tolerances.fitTolerance)
    return joined(before, startingIn(after, end));
  const meeting = meet(before, after, 'both', reachOf(joined(before, after)));
  if (meeting) return joined(meeting.arriving, meeting.leaving);
  return joined(before, pathOf(line(end, pathStart(after))), after);
}
