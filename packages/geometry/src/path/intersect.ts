import { abs, infinite } from '../arithmetic.js';
import { intersectSegments } from '../curve/intersect.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import { lengthTo, startLengths } from './length.js';
import { forEachNearPair } from './near-segments.js';
import { type Path, pathEnd, pathStart } from './path.js';
import { requirePath } from './sound.js';

/** A place where two paths meet, with its length in mm along each; `overlap` marks an end of a stretch they share. */
export interface PathMeeting {
  readonly alongA: number;
  readonly alongB: number;
  readonly point: Point;
  readonly overlap?: true;
}

/**
 * Every place where two paths meet, ascending along `a`, as {@link intersectSegments} finds them; a place at a joint
 * is given once, and one at the closing joint of a closed path at length 0. The work is near the number of segments
 * and of those whose boxes meet.
 */
export function intersectPaths(a: Path, b: Path): readonly PathMeeting[] {
  requirePath(a);
  requirePath(b);
  const startsA = startLengths(a),
    startsB = startLengths(b);
  const found: PathMeeting[] = [];
  forEachNearPair(a, b, (i, k) => {
    for (const { ta, tb, ...rest } of intersectSegments(a.segments[i]!, b.segments[k]!)) {
      const alongA = lengthTo(a, startsA, i, ta),
        alongB = lengthTo(b, startsB, k, tb);
      found.push({ ...rest, alongA, alongB });
    }
    return false;
  });
  return once(found, a, b, startsA.at(-1)!, startsB.at(-1)!);
}

function once(found: readonly PathMeeting[], a: Path, b: Path, lengthA: number, lengthB: number) {
  const wrapA = isClosed(a) ? lengthA : infinite;
  const wrapB = isClosed(b) ? lengthB : infinite;
  const wrapped = found.map(m => ({
    ...m,
    alongA: wrapA - m.alongA <= coincidenceTolerance ? 0 : m.alongA,
    alongB: wrapB - m.alongB <= coincidenceTolerance ? 0 : m.alongB,
  }));
  return eachOnce(wrapped.sort((p, q) => p.alongA - q.alongA));
}

/** Of places in their order along A, those that were found more than once, as at a joint, once. */
export function eachOnce<Place extends { readonly alongA: number; readonly alongB: number }>(
  inOrder: readonly Place[],
): readonly Place[] {
  const kept: Place[] = [];
  for (const m of inOrder) {
    let i = kept.length - 1;
    while (i >= 0 && m.alongA - kept[i]!.alongA <= joint && abs(m.alongB - kept[i]!.alongB) > joint) i--;
    if (i < 0 || m.alongA - kept[i]!.alongA > joint) kept.push(m);
  }
  return kept;
}

/** mm. Found on both sides of a joint, a place may come out a little apart; several joints' worth of rounding. */
export const joint = 4 * coincidenceTolerance;

const isClosed = (path: Path): boolean => distance(pathStart(path), pathEnd(path)) <= coincidenceTolerance;
