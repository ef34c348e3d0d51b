import { line, type OutlinePart, type Point, pathOf } from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { add, distance, dot, lerp, scale, subtract, unit } from '@paperhinge/geometry/plane';
import type { Chain } from './chains.js';

/**
 * The ring of chains with the legs of some darts drawn anew, straight from where the ends of their mouths now lie to
 * where their points do. A point that has left the middle of a slanted dart, so that its legs could no longer be sewn
 * to one another, is put back on the middle, as deep as it lies.
 *
 * @param chains the ring as it was, but for the edges
 * @param moved where a point lies now that begins chain `i` of the ring
 */
export function withDartsRedrawn(
  chains: readonly Chain[],
  darts: ReadonlySet<OutlinePart>,
  moved: (point: Point, i: number) => Point,
): readonly Chain[] {
  return chains.map((chain, i): Chain => {
    const { part, leg } = chain;
    if (part.type !== 'dart' || leg === undefined || !darts.has(part)) return chain;
    const first = leg === 0 ? i : i - 1;
    const a = moved(pathStart(part.legs[0]), first),
      b = moved(pathEnd(part.legs[1]), (first + 2) % chains.length);
    const apex = onMiddle(a, b, moved(part.apex, first + 1));
    // Whatever lay on the legs (nothing is notched there) has no place on the new ones.
    return { ...chain, path: pathOf(leg === 0 ? line(a, apex) : line(apex, b)) };
  });
}

/** A point put back on the middle between a mouth’s ends, where legs to it could not be sewn to one another. */
export function onMiddle(a: Point, b: Point, apex: Point): Point {
  if (abs(distance(a, apex) - distance(b, apex)) <= tolerances.dartLegTolerance) return apex;
  const along = unit(subtract(b, a));
  return add(apex, scale(along, dot(subtract(lerp(a, b, 0.5), apex), along)));
}
