import { type Path, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { curveOfLength, joined, pointAlong, subpath, tangentAlong } from '@paperhinge/geometry/paths';
import { angleBetween } from '@paperhinge/geometry/plane';

/** mm to either side of a corner over which a line is drawn fair. Common practice, no source. */
const blended = 25;

/**
 * A line drawn fair past the corners it has at these places, in mm from its start, as long as before: each corner gives
 * way to one curve between the places so far before and behind it, that leaves and arrives as the line does there.
 */
export const fairThrough = (path: Path, corners: readonly number[]): Path =>
  corners.reduce((line, at) => {
    const length = pathLength(line);
    const reach = Math.min(blended, at * 0.9, (length - at) * 0.9);
    const [from, to] = [at - reach, at + reach];
    const turn = angleBetween(tangentAlong(line, from), tangentAlong(line, to));
    if (Math.abs(turn) <= tolerances.angleTolerance) return line;
    const curve = curveOfLength(
      pointAlong(line, from),
      tangentAlong(line, from),
      pointAlong(line, to),
      tangentAlong(line, to),
      to - from,
    );
    return joined(subpath(line, 0, from), curve, subpath(line, to, Number.POSITIVE_INFINITY));
  }, path);
