import { type Path, type Point, pathLength } from '@paperhinge/geometry';
import {
  endTangent,
  fairCurve,
  pathEnd,
  pathStart,
  pointAlong,
  startTangent,
} from '@paperhinge/geometry/paths';
import { angleBetween } from '@paperhinge/geometry/plane';
import { apartBetween, areaBetween, roughlyApart } from './apart.js';
import { turningOf } from './turning.js';

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
): Path | undefined {
  const fair = (balanced: boolean): Path | undefined => {
    for (const [start, end] of directions) {
      const found = fairBetween(path, start, end, within, balanced);
      if (found) return found;
    }
    return undefined;
  };
  // What the cloth gains on one side it should lose on the other, if it can.
  return fair(true) ?? fair(false);
}

function fairBetween(
  path: Path,
  start: Point,
  end: Point,
  within: number,
  balanced: boolean,
): Path | undefined {
  const length = pathLength(path);
  const most = turningOf(path) + swing * turnedEnds(path, start, end) + wave;
  for (let points = 0; points <= mostPoints; points++) {
    const through = Array.from({ length: points }, (_, i) =>
      pointAlong(path, (length * (i + 1)) / (points + 1)),
    );
    const fair = fairCurve(
      { point: pathStart(path), direction: start },
      { point: pathEnd(path), direction: end },
      within / 100,
      through,
    );
    if (turningOf(fair) > most) continue;
    if (balanced && areaBetween(path, fair) > mostMeanOff * within * length) continue;
    // A first look with few points: the figure that is told is taken from many.
    if (roughlyApart(path, fair, within) <= within && apartBetween(path, fair) <= within) return fair;
  }
  return undefined;
}

/** Of the limit: how far a new line may lie to one side of the old on average, so that the piece keeps its area. */
export const mostMeanOff = 0.05;
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
