import { max, min } from '../arithmetic.js';
import { intersectSegments } from '../curve/intersect.js';
import { isLine, type Segment } from '../curve/segment.js';
import { selfCrossing } from '../curve/self-crossing.js';
import { eachOnce } from '../path/intersect.js';
import { lengthTo, pointAlong, startLengths } from '../path/length.js';
import { forEachNearPairWithin } from '../path/near-segments.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { coincidenceTolerance, fitTolerance, visibleLength } from '../tolerance.js';
import { distance, type Point } from '../vector.js';

/** A place where a closed path crosses, touches or runs along itself: its two lengths in mm along the path. */
export interface PathSelfCrossing {
  readonly alongA: number;
  readonly alongB: number;
  readonly point: Point;
  readonly overlap?: true;
}

/**
 * Where a closed path meets itself other than at the joints of neighbouring segments, ascending; a simple outline
 * gives none. A loop of 0.01 mm is none, nor is one under 0.2 mm that is thinner than `coincidenceTolerance`. Each place
 * once, with alongA < alongB; error as of {@link intersectSegments}. The work is near the number of segments and of
 * those whose boxes meet.
 */
export function selfCrossings(path: Path): readonly PathSelfCrossing[] {
  requirePath(path);
  const found: PathSelfCrossing[] = [];
  forEachSelfMeeting(path, meeting => {
    found.push(meeting);
    return false;
  });
  return eachOnce(found.sort((p, q) => p.alongA - q.alongA || p.alongB - q.alongB));
}

/** The meetings of {@link selfCrossings} as they are found, some of them twice, until `visit` answers true. */
export function forEachSelfMeeting(path: Path, visit: (meeting: PathSelfCrossing) => boolean): void {
  const { segments } = path;
  const starts = startLengths(path);
  const whole = starts.at(-1)!;
  const tell = (one: number, other: number, point: Point, overlap: boolean): boolean => {
    const alongA = min(one, other),
      alongB = max(one, other);
    const apart = min(alongB - alongA, whole - (alongB - alongA));
    // A joint is where the path meets itself by nature; so is a place that several short segments share, and a loop
    // that rounding left there, which strays by no more than a fitted line may.
    if (apart <= 2 * fitTolerance) return false;
    if (apart <= 2 * visibleLength && isThin(path, whole, apart === alongB - alongA ? alongA : alongB, apart))
      return false;
    return visit({ alongA, alongB, point, ...(overlap ? { overlap: true as const } : {}) });
  };
  for (const [index, segment] of segments.entries()) {
    const own = isLine(segment) ? undefined : selfCrossing(segment);
    if (
      own &&
      tell(lengthTo(path, starts, index, own.t0), lengthTo(path, starts, index, own.t1), own.point, false)
    )
      return;
  }
  const points = segments.map(isPoint);
  forEachNearPairWithin(path, (i, k) => {
    if (points[i] || points[k]) return false;
    return intersectSegments(segments[i]!, segments[k]!).some(({ ta, tb, point, overlap }) =>
      tell(lengthTo(path, starts, i, ta), lengthTo(path, starts, k, tb), point, overlap === true),
    );
  });
}

/**
 * Whether the loop of `apart` mm from a place on is nothing: two edges that leave one corner in one direction lie on
 * each other to rounding, and cross there as it will have it.
 */
const isThin = (path: Path, whole: number, from: number, apart: number): boolean => {
  const off = (share: number): Point => pointAlong(path, (from + share * apart) % whole);
  return [1 / 8, 1 / 4, 3 / 8].every(share => distance(off(share), off(1 - share)) <= coincidenceTolerance);
};

const isPoint = (segment: Segment): boolean => segment.every(p => distance(p, segment[0]) === 0);
