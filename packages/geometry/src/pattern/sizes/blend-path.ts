import { isLine } from '../../curve/segment.js';
import { fitCurve } from '../../path/fit.js';
import { pathLength, pointAlong, startLengths, subpath } from '../../path/length.js';
import {
  endTangent,
  joined,
  type Path,
  pathEnd,
  pathOf,
  pathStart,
  polyline,
  startTangent,
} from '../../path/path.js';
import { besideCorner, coincidenceTolerance, kinkTurn } from '../../tolerance.js';
import { angleBetween, distance, lerp, type Point, subtract } from '../../vector.js';

/** The place between two corresponding places of two sizes. */
export type Between = (a: Point, b: Point) => Point;

/** Places along a smooth stretch that a blended curve is laid through: enough that it keeps within the fit tolerance. */
const stations = 32;

/**
 * The line between two lines of two sizes: what lies at one share of the length of both is one place. Straight where
 * both are straight and the blend keeps them so; a corner of either stays one.
 */
export function blendedPath(a: Path, b: Path, between: Between): Path {
  const cuts = [...new Set([0, ...cornersOf(a), ...cornersOf(b), 1])].sort((x, y) => x - y);
  const kept = cuts.filter((cut, i) => i === 0 || cut - cuts[i - 1]! > besideCorner || cut === 1);
  return joined(
    ...kept
      .slice(1)
      .map((to, i) => blendedStretch(stretch(a, kept[i]!, to), stretch(b, kept[i]!, to), between)),
  );
}

/** Shares of its length at which a path turns a corner. */
function cornersOf(path: Path): readonly number[] {
  const starts = startLengths(path);
  const whole = starts.at(-1)!;
  return path.segments.slice(1).flatMap((segment, i) => {
    const turn = angleBetween(endTangent(pathOf(path.segments[i]!)), startTangent(pathOf(segment)));
    return Math.abs(turn) > kinkTurn ? [starts[i + 1]! / whole] : [];
  });
}

function stretch(path: Path, from: number, to: number): Path {
  if (from === 0 && to === 1) return path;
  const whole = pathLength(path);
  return subpath(path, from * whole, to === 1 ? Number.POSITIVE_INFINITY : to * whole);
}

function blendedStretch(a: Path, b: Path, between: Between): Path {
  const lengths = [pathLength(a), pathLength(b)] as const;
  const place = (share: number): Point =>
    share === 0
      ? between(pathStart(a), pathStart(b))
      : share === 1
        ? between(pathEnd(a), pathEnd(b))
        : between(pointAlong(a, share * lengths[0]), pointAlong(b, share * lengths[1]));
  const points = Array.from({ length: stations + 1 }, (_, i) => place(i / stations));
  const areLines = [a, b].every(path => path.segments.every(isLine));
  if (areLines && isStraight(points)) return polyline(points[0]!, points.at(-1)!);
  const direction = (at: number, to: number): Point => subtract(place(to), place(at));
  return fitCurve(points, direction(0, besideCorner), direction(1 - besideCorner, 1));
}

function isStraight(points: readonly Point[]): boolean {
  const first = points[0]!,
    last = points.at(-1)!;
  return points.every(
    (p, i) => distance(p, lerp(first, last, i / (points.length - 1))) <= coincidenceTolerance,
  );
}
