import { boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { isLine, type Segment } from '../curve/segment.js';
import { selfCrossing } from '../curve/self-crossing.js';
import { lengthTo, startLengths } from '../path/intersect.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
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
 * gives none. Each place once, with alongA < alongB. Boxes sorted from left to right keep the work near the number
 * of segments.
 */
export function selfCrossings(path: Path): readonly PathSelfCrossing[] {
  const starts = startLengths(path);
  const whole = starts.at(-1)!;
  const found: PathSelfCrossing[] = [];
  const add = (one: number, other: number, point: Point, overlap: boolean): void => {
    const alongA = Math.min(one, other),
      alongB = Math.max(one, other);
    const apart = Math.min(alongB - alongA, whole - (alongB - alongA));
    // A joint is where the path meets itself by nature; so is a place that several short segments share.
    if (apart <= joint) return;
    const known = found.some(
      f => Math.abs(f.alongA - alongA) <= joint && Math.abs(f.alongB - alongB) <= joint,
    );
    if (!known) found.push({ alongA, alongB, point, ...(overlap ? { overlap: true as const } : {}) });
  };
  const boxed = path.segments
    .map((segment, index) => ({ segment, index, box: boundsOf(segment) }))
    .filter(({ segment }) => !isPoint(segment))
    .sort((p, q) => p.box.min.x - q.box.min.x);
  let open: typeof boxed = [];
  for (const current of boxed) {
    const { segment, index, box } = current;
    const own = isLine(segment) ? undefined : selfCrossing(segment);
    if (own)
      add(lengthTo(path, starts, index, own.t0), lengthTo(path, starts, index, own.t1), own.point, false);
    open = open.filter(o => o.box.max.x + coincidenceTolerance >= box.min.x);
    for (const other of open) {
      if (!boxesMeet(box, other.box, coincidenceTolerance)) continue;
      for (const { ta, tb, point, overlap } of intersectSegments(segment, other.segment))
        add(
          lengthTo(path, starts, index, ta),
          lengthTo(path, starts, other.index, tb),
          point,
          overlap === true,
        );
    }
    open.push(current);
  }
  return found.sort((p, q) => p.alongA - q.alongA);
}

const isPoint = (segment: Segment): boolean => segment.every(p => distance(p, segment[0]) === 0);

/** mm. */
const joint = 4 * coincidenceTolerance;
