import { line, type Path, type Point, pathLength, pathOf, type Segment } from '@paperhinge/geometry';
import { isLine, segmentLength } from '@paperhinge/geometry/curves';
import { abs, infinite, max, min } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  joined,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  subpath,
  tangentAlong,
  transformedPath,
} from '@paperhinge/geometry/paths';
import {
  type Affine,
  add,
  angleBetween,
  dot,
  rightOf,
  scale,
  subtract,
  translation,
} from '@paperhinge/geometry/plane';
import type { Chain } from './chains.js';
import { endingIn, lineThrough, reachOf, startingIn } from './meet.js';

/**
 * A chain that a shorten line crosses `along` mm from its start. The part beyond the line moves by `by` along `up`;
 * then both parts are sheared square to the grain, by amounts that grow linearly along the grain from 0 at the
 * chain's two corners at one rate, so that they meet and a straight chain stays straight. Shortening, the staying
 * part ends at the level the moved part begins at; lengthening, it first runs on straight along its tangent to there.
 *
 * @returns nothing where the staying part is used up before it reaches that level
 */
export function shearedTogether(
  chain: Chain,
  along: number,
  startStays: boolean,
  up: Point,
  by: number,
): Chain | undefined {
  const length = pathLength(chain.path);
  const path = startStays ? chain.path : reversedPath(chain.path);
  const c = startStays ? along : length - along;
  const here = pointAlong(path, c);
  const moved = transformedPath(subpath(path, c, infinite), translation(scale(up, by)));
  const staying = stayingPart(path, c, here, up, by);
  if (staying === undefined) return undefined;
  const level = (p: Point): number => -dot(p, up);
  const square = rightOf(up);
  const top = level(pathStart(path)),
    bottom = level(pathEnd(moved));
  const apart = dot(subtract(pathStart(moved), pathEnd(staying.path)), square);
  const rate = bottom === top ? 0 : apart / (bottom - top);
  const upper = transformedPath(staying.path, shear(square, up, rate, top));
  const lower = transformedPath(moved, shear(square, up, rate, bottom));
  const whole = straightened(joined(endingIn(upper, pathStart(lower)), lower));
  const kept = min(c, staying.kept),
    lost = length - pathLength(whole);
  // Places keep their distance from the corner of their own part; in a chain travelled from below the parts swap.
  const [first, last] = startStays ? [kept, c] : [length - c, length - kept];
  const keptOfIt = [
    { from: 0, to: first, by: 0 },
    { from: last, to: length, by: -lost },
  ];
  return { ...chain, path: startStays ? whole : reversedPath(whole), kept: keptOfIt };
}

/** The part before the line, brought to the level at which the moved part begins. */
function stayingPart(path: Path, c: number, here: Point, up: Point, by: number) {
  const before = subpath(path, 0, c);
  if (by > 0) {
    const level = lineThrough(add(here, scale(up, by)), rightOf(up), reachOf(path) + by);
    const cuts = intersectPaths(before, level).map(m => m.alongA);
    if (cuts.length === 0) return undefined;
    const kept = max(...cuts);
    return { path: subpath(before, 0, kept), kept };
  }
  const tangent = tangentAlong(path, c);
  const down = -dot(tangent, up);
  // A chain that crosses the line almost along it has no run to follow; it goes on towards its far end instead.
  const way = down > Math.sin(tolerances.joinedCorner) ? tangent : subtract(pathEnd(path), pathStart(path));
  const fall = -dot(way, up);
  const far = add(here, scale(way, fall > 0 ? -by / fall : 0));
  return { path: by === 0 ? before : joined(before, pathOf(line(here, far))), kept: c };
}

/** p + square × rate × (level of p − `from`), where the level of a point is its distance down the grain. */
function shear(square: Point, up: Point, rate: number, from: number): Affine {
  return {
    a: 1 - rate * square.x * up.x,
    b: -rate * square.y * up.x,
    c: -rate * square.x * up.y,
    d: 1 - rate * square.y * up.y,
    e: -rate * square.x * from,
    f: -rate * square.y * from,
  };
}

/** The same chain with neighbouring straight lines of one direction made one, and without segments of no length. */
function straightened(path: Path): Path {
  const segments: Segment[] = [];
  for (const next of path.segments) {
    const last = segments.at(-1);
    if (segmentLength(next) <= tolerances.coincidenceTolerance) continue;
    if (last && isLine(last) && isLine(next) && runsOn(last, next))
      segments[segments.length - 1] = line(last[0], next[1]);
    else segments.push(next);
  }
  const whole = segments.reduce<Path>(
    (path, segment) =>
      path.segments.length === 0 ? pathOf(segment) : joined(path, startingIn(pathOf(segment), pathEnd(path))),
    { segments: [] },
  );
  return endingIn(startingIn(whole, pathStart(path)), pathEnd(path));
}

const runsOn = (first: readonly [Point, Point], second: readonly [Point, Point]): boolean =>
  abs(angleBetween(subtract(first[1], first[0]), subtract(second[1], second[0]))) < tolerances.angleTolerance;
