import { hobbyCubic } from '../curve/hobby.js';
import { asCubic, endOf, line, type Segment, startOf } from '../curve/segment.js';
import { selfCrossing } from '../curve/self-crossing.js';
import { requireDistance, requireSegment } from '../curve/sound.js';
import { refusal } from '../curve/tellings.js';
import { lengthTolerance } from '../tolerance.js';
import { lerp, type Point } from '../vector.js';
import { pathLength } from './length.js';
import { type Path, pathOf } from './path.js';

/**
 * A cubic of a wanted length in mm between two points, leaving and arriving in the given directions: the fair curve
 * between them with both handles drawn out or in by one factor until the length is met, to `lengthTolerance`.
 * @throws PatternError `length-too-short`: less than the straight distance; `length-too-long`: the curve would have
 *   to cross itself
 */
export function curveOfLength(
  from: Point,
  fromDirection: Point,
  to: Point,
  toDirection: Point,
  length: number,
): Path {
  requireSegment([from, fromDirection, to, toDirection]);
  return lineDrawnTo(pathOf(hobbyCubic(from, fromDirection, to, toDirection)), length);
}

/**
 * A chain of cubics with all its handles drawn out or in by one factor until it has a wanted length in mm, to
 * `lengthTolerance`: its points and its directions at them stay.
 * @throws PatternError `length-too-short`: less than the straight lines between the points; `length-too-long`: a curve
 *   would have to cross itself
 */
export function lineDrawnTo(fair: Path, length: number): Path {
  requireDistance(length, 'length');
  const straight: Path = { segments: fair.segments.map(s => line(startOf(s), endOf(s))) };
  const straightMm = pathLength(straight);
  if (!(length >= straightMm - lengthTolerance))
    throw refusal('length-too-short', { lengthMm: length, straightMm });
  if (length - straightMm <= lengthTolerance) return straight;
  const drawn = (k: number): Path => fuller(fair, k);
  let low = 0,
    high = 1;
  while (pathLength(drawn(high)) < length && high < longestHandles) {
    low = high;
    high *= 2;
  }
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2,
      excess = pathLength(drawn(middle)) - length;
    if (Math.abs(excess) <= lengthTolerance / 4 || middle <= low || middle >= high) {
      low = high = middle;
      break;
    }
    if (excess > 0) high = middle;
    else low = middle;
  }
  const curve = drawn(low);
  if (
    Math.abs(pathLength(curve) - length) > lengthTolerance ||
    curve.segments.some(s => selfCrossing(asCubic(s)))
  )
    throw refusal('length-too-long', { lengthMm: length, straightMm });
  return curve;
}

/** A chain of cubics with all its handles `k` times as long. */
export const fuller = ({ segments }: Path, k: number): Path => ({
  segments: segments.map((segment): Segment => {
    const [from, a, b, to] = asCubic(segment);
    return [from, lerp(from, a, k), lerp(to, b, k), to];
  }),
});

/** Times the fair handles: beyond this the curve crosses itself. */
const longestHandles = 64;
