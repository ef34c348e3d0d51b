import { type Path, type Point, pathLength, pathOf } from '@paperhinge/geometry';
import { hypot, max } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { intersectPaths, nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { add, distance, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { least } from './least.js';

/** How much to cut off where two sides of a slash overlap: mm off the end of the one before, the start of the one after. */
export interface Trim {
  readonly before: number;
  readonly after: number;
}

/**
 * Where two overlapping sides of an edge are cut: at their crossing, the one that costs least; where they lie on one
 * another, half way. Where they do not cross, each is cut on the middle line of the overlap, and a step stays to be
 * bridged. Undefined where even that line meets only one of them.
 *
 * @param inward the direction in which the slash leaves the edge, half way between its two moved sides
 */
export function overlapTrim(before: Path, after: Path, inward: Point): Trim | undefined {
  return alongOneAnother(before, after) ?? atCrossing(before, after) ?? onMiddleLine(before, after, inward);
}

function alongOneAnother(before: Path, after: Path): Trim | undefined {
  const onBefore = nearestOnPath(before, pathStart(after));
  const onAfter = nearestOnPath(after, pathEnd(before));
  const near = tolerances.coincidenceTolerance;
  if (max(onBefore.distance, onAfter.distance) > near) return undefined;
  const length = pathLength(before);
  const half = { before: (length - onBefore.along) / 2, after: onAfter.along / 2 };
  const apart = distance(pointAlong(before, length - half.before), pointAlong(after, half.after));
  return apart <= near ? half : undefined;
}

function atCrossing(before: Path, after: Path): Trim | undefined {
  const length = pathLength(before);
  return least(
    intersectPaths(before, after).map(m => ({ before: length - m.alongA, after: m.alongB })),
    trim => trim.before + trim.after,
  );
}

function onMiddleLine(before: Path, after: Path, inward: Point): Trim | undefined {
  const a = pathEnd(before),
    b = pathStart(after);
  const middle = scale(add(a, b), 0.5);
  // Long enough to meet whatever of the two edges lies across it.
  const reach = scale(unit(inward), pathLength(before) + pathLength(after) + hypot(b.x - a.x, b.y - a.y));
  const across = pathOf([subtract(middle, reach), add(middle, reach)]);
  const length = pathLength(before);
  const off = (path: Path) => intersectPaths(path, across).map(m => m.alongA);
  const offBefore = least(
    off(before).map(along => length - along),
    x => x,
  );
  const offAfter = least(off(after), x => x);
  return offBefore === undefined || offAfter === undefined
    ? undefined
    : { before: offBefore, after: offAfter };
}
