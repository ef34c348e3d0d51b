import { segmentLength } from '../curve/arc-length.js';
import { hobbyCubic } from '../curve/hobby.js';
import { type Cubic, line } from '../curve/segment.js';
import { selfCrossing } from '../curve/self-crossing.js';
import { requireDistance, requireSegment } from '../curve/sound.js';
import { refusal } from '../curve/tellings.js';
import { lengthTolerance } from '../tolerance.js';
import { distance, lerp, type Point } from '../vector.js';
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
  requireDistance(length, 'length');
  const chord = distance(from, to);
  if (!(length >= chord - lengthTolerance))
    throw refusal('length-too-short', { lengthMm: length, straightMm: chord });
  if (length - chord <= lengthTolerance) return pathOf(line(from, to));
  const fair = hobbyCubic(from, fromDirection, to, toDirection);
  const drawn = (k: number): Cubic => [from, lerp(from, fair[1], k), lerp(to, fair[2], k), to];
  let low = 0,
    high = 1;
  while (segmentLength(drawn(high)) < length && high < longestHandles) {
    low = high;
    high *= 2;
  }
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2,
      excess = segmentLength(drawn(middle)) - length;
    if (Math.abs(excess) <= lengthTolerance / 4 || middle <= low || middle >= high) {
      low = high = middle;
      break;
    }
    if (excess > 0) high = middle;
    else low = middle;
  }
  const curve = drawn(low);
  if (Math.abs(segmentLength(curve) - length) > lengthTolerance || selfCrossing(curve))
    throw refusal('length-too-long', { lengthMm: length, straightMm: chord });
  return pathOf(curve);
}

/** Times the fair handles: beyond this the curve crosses itself. */
const longestHandles = 64;
