import { lengthBetween, segmentLength } from '../curve/arc-length.js';
import { boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import { type Path, pathEnd, pathStart } from './path.js';

/** A place where two paths meet, with its length in mm along each; `overlap` marks an end of a stretch they share. */
export interface PathMeeting {
  readonly alongA: number;
  readonly alongB: number;
  readonly point: Point;
  readonly overlap?: true;
}

/**
 * Every place where two paths meet, ascending along `a`, as {@link intersectSegments} finds them; a place at a joint
 * is given once, and one at the closing joint of a closed path at length 0. Boxes sorted from left to right keep
 * the work near the number of segments.
 */
export function intersectPaths(a: Path, b: Path): readonly PathMeeting[] {
  const startsA = startLengths(a),
    startsB = startLengths(b);
  const found: PathMeeting[] = [];
  for (const [i, k] of nearPairs(a, b)) {
    const sa = a.segments[i]!,
      sb = b.segments[k]!;
    for (const { ta, tb, ...rest } of intersectSegments(sa, sb)) {
      const alongA = lengthTo(a, startsA, i, ta),
        alongB = lengthTo(b, startsB, k, tb);
      found.push({ ...rest, alongA, alongB });
    }
  }
  return once(found, a, b, startsA.at(-1)!, startsB.at(-1)!);
}

/** Lengths in mm from the start of a path to the start of each segment, and last its whole length. */
export function startLengths(path: Path): readonly number[] {
  const lengths = [0];
  for (const segment of path.segments) lengths.push(lengths.at(-1)! + segmentLength(segment));
  return lengths;
}

/** Length in mm to parameter t of segment `index`, given {@link startLengths}. */
export function lengthTo(path: Path, starts: readonly number[], index: number, t: number): number {
  if (t <= 0) return starts[index]!;
  if (t >= 1) return starts[index + 1]!;
  return starts[index]! + lengthBetween(path.segments[index]!, 0, t);
}

/** Pairs of segments whose boxes come within a coincidence of each other. */
function nearPairs(a: Path, b: Path): readonly (readonly [number, number])[] {
  const boxed = (path: Path) =>
    path.segments
      .map((segment, index) => ({ index, box: boundsOf(segment) }))
      .sort((p, q) => p.box.min.x - q.box.min.x);
  const left = boxed(a),
    right = boxed(b);
  const pairs: (readonly [number, number])[] = [];
  const margin = coincidenceTolerance;
  let open: typeof right = [];
  let next = 0;
  for (const { index, box } of left) {
    while (next < right.length && right[next]!.box.min.x <= box.max.x + margin) open.push(right[next++]!);
    open = open.filter(o => o.box.max.x + margin >= box.min.x);
    for (const o of open) if (boxesMeet(box, o.box, margin)) pairs.push([index, o.index]);
  }
  return pairs;
}

function once(found: readonly PathMeeting[], a: Path, b: Path, lengthA: number, lengthB: number) {
  const wrapA = isClosed(a) ? lengthA : Number.POSITIVE_INFINITY;
  const wrapB = isClosed(b) ? lengthB : Number.POSITIVE_INFINITY;
  const wrapped = found.map(m => ({
    ...m,
    alongA: wrapA - m.alongA <= coincidenceTolerance ? 0 : m.alongA,
    alongB: wrapB - m.alongB <= coincidenceTolerance ? 0 : m.alongB,
  }));
  const sorted = wrapped.sort((p, q) => p.alongA - q.alongA);
  const kept: PathMeeting[] = [];
  for (const m of sorted) {
    let i = kept.length - 1;
    while (i >= 0 && m.alongA - kept[i]!.alongA <= joint && Math.abs(m.alongB - kept[i]!.alongB) > joint) i--;
    if (i < 0 || m.alongA - kept[i]!.alongA > joint) kept.push(m);
  }
  return kept;
}

/** mm. Found on both sides of a joint, a place may come out a little apart; several joints' worth of rounding. */
const joint = 4 * coincidenceTolerance;

const isClosed = (path: Path): boolean => distance(pathStart(path), pathEnd(path)) <= coincidenceTolerance;
