import {
  angleBetween,
  endTangent,
  fairCurve,
  type Path,
  type Point,
  pathEnd,
  pathLength,
  pathStart,
  pointAlong,
  startTangent,
  tangentAt,
} from '@paperhinge/geometry';
import { apartBetween } from './apart.js';

/**
 * One fair curve in place of a whole line: through the fewest evenly spaced points of it (none at first) that keep
 * it within the limit, and only while it turns no more than the line it replaces, so that it does not wave.
 *
 * @param directions pairs of end directions to try, best first
 */
export function fairThroughout(
  path: Path,
  directions: readonly (readonly [Point, Point])[],
  within: number,
): { readonly path: Path; readonly movedMm: number } | undefined {
  const length = pathLength(path);
  for (const [start, end] of directions) {
    const most = turning(path) + swing * turnedEnds(path, start, end) + wave;
    for (let points = 0; points <= mostPoints; points++) {
      const through = Array.from({ length: points }, (_, i) =>
        pointAlong(path, (length * (i + 1)) / (points + 1)),
      );
      const fair = fairCurve(pathStart(path), start, pathEnd(path), end, within / 100, through);
      if (turning(fair) > most) continue;
      const movedMm = apartBetween(path, fair);
      if (movedMm <= within) return { path: fair, movedMm };
    }
  }
  return undefined;
}

/** More points than this no longer draw a fair curve but copy the broken line. */
const mostPoints = 6;
/** rad (2 degrees). A turn back and forth of this in all is not seen on cloth. */
const wave = Math.PI / 90;

/**
 * A straight line whose one end is turned by δ and whose ends stay put swings out by a third of δ and back: its cubic
 * y = δ x (x/L)(x/L − 1) turns by 5/3 δ in all.
 */
const swing = 5 / 3;

const turnedEnds = (path: Path, start: Point, end: Point): number =>
  Math.abs(angleBetween(startTangent(path), start)) + Math.abs(angleBetween(endTangent(path), end));

/** rad: how much a line turns in all, its corners included. */
function turning(path: Path): number {
  const directions = path.segments.flatMap(s => Array.from({ length: 17 }, (_, i) => tangentAt(s, i / 16)));
  return directions.slice(1).reduce((sum, d, i) => sum + Math.abs(angleBetween(directions[i]!, d)), 0);
}
