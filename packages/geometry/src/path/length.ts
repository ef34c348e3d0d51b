import { infinite, max } from '../arithmetic.js';
import { lengthBetween, parameterAtLength, segmentLength } from '../curve/arc-length.js';
import { between, pointAt, tangentAt } from '../curve/segment.js';
import { requireNumber } from '../curve/sound.js';
import { oncePer } from '../once-per.js';
import { lengthTolerance } from '../tolerance.js';
import type { Point } from '../vector.js';
import type { Path } from './path.js';
import { requireSegments } from './sound.js';

/** The lengths in mm of a chain's segments. */
const segmentLengths = /* @__PURE__ */ oncePer((path: Path): readonly number[] =>
  path.segments.map(segmentLength),
);

/** Length along the chain, in mm; leaps over darts' mouths are not counted. */
export function pathLength(path: Path): number {
  requireSegments(path);
  return path.segments.length === 1
    ? segmentLength(path.segments[0]!)
    : segmentLengths(path).reduce((sum, length) => sum + length, 0);
}

/** Lengths in mm from the start of a path to the start of each segment, and last its whole length. */
export function startLengths(path: Path): readonly number[] {
  const lengths = [0];
  for (const length of segmentLengths(path)) lengths.push(lengths.at(-1)! + length);
  return lengths;
}

/** Length in mm to parameter t of segment `index`, given {@link startLengths}. */
export function lengthTo(path: Path, starts: readonly number[], index: number, t: number): number {
  return t >= 1 ? starts[index + 1]! : starts[index]! + lengthBetween(path.segments[index]!, 0, t);
}

/**
 * Where a length falls: the segment and its parameter. At a joint, within `lengthTolerance` of it, the segment that starts
 * there, so that no part cut there begins with a segment of no length; clamped to the ends.
 */
export const locate = (path: Path, along: number): Place => placeAlong(path, along, false);

interface Place {
  readonly index: number;
  readonly t: number;
}

/** @param ending at a joint, the segment that ends there */
function placeAlong(path: Path, along: number, ending: boolean): Place {
  requireNumber(along, 'length');
  requireSegments(path);
  let rest = max(along, 0),
    index = 0;
  const { segments } = path;
  const lengths = segments.length > 1 ? segmentLengths(path) : [];
  for (; index < segments.length - 1; index++) {
    const beyond = rest - lengths[index]!;
    if (beyond <= (ending ? lengthTolerance : -lengthTolerance)) break;
    rest = max(0, beyond);
  }
  return { index, t: parameterAtLength(segments[index]!, rest) };
}

/** The point `along` mm from the start of the chain. */
export function pointAlong(path: Path, along: number): Point {
  const { index, t } = locate(path, along);
  return pointAt(path.segments[index]!, t);
}

/** The unit direction of travel `along` mm from the start; at a corner, that of the segment which leaves it. */
export function tangentAlong(path: Path, along: number): Point {
  const { index, t } = locate(path, along);
  return tangentAt(path.segments[index]!, t);
}

/** The part of a chain between two lengths from its start, in mm, `from` < `to`. */
export function subpath(path: Path, from: number, to: number): Path {
  const a = locate(path, from),
    b = placeAlong(path, to, true);
  if (a.index > b.index) return { segments: [between(path.segments[a.index]!, a.t, a.t)] };
  if (a.index === b.index) return { segments: [between(path.segments[a.index]!, a.t, max(a.t, b.t))] };
  const first = between(path.segments[a.index]!, a.t, 1),
    last = between(path.segments[b.index]!, 0, b.t);
  return { segments: [first, ...path.segments.slice(a.index + 1, b.index), last] };
}

/** The chain cut in two `along` mm from its start, 0 < along < its length. */
export const splitPath = (path: Path, along: number): readonly [Path, Path] => [
  subpath(path, 0, along),
  subpath(path, along, infinite),
];
