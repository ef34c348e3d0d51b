import { curvatureAt } from '../curve/curvature.js';
import { endOf, startOf, tangentAt } from '../curve/segment.js';
import { coincidenceTolerance, joinedCorner, joiningGap, visibleLength } from '../tolerance.js';
import { add, angleBetween, distance, lerp, type Point, scale, subtract } from '../vector.js';
import { type Flank, flankEnd, flankStart } from './flank.js';
import { meetingsOf } from './meetings.js';
import { type Position, type Strand, straight } from './strand.js';

/** Where two neighbouring flanks, run on straight, meet: places on both as they are run on. */
export interface Crossing {
  readonly before: Position;
  readonly after: Position;
  readonly point: Point;
}

/** A flank run on straight at both ends by `reach` mm; its own strands start at 1. */
export function runOn({ strands, of }: Flank, reach: number): readonly Strand[] {
  const first = strands[0]!.segment,
    last = strands.at(-1)!.segment;
  const start = startOf(first),
    end = endOf(last);
  return [
    ...straight(subtract(start, scale(tangentAt(first, 0), reach)), start, of),
    ...strands,
    ...straight(end, add(end, scale(tangentAt(last, 1), reach)), of),
  ];
}

/** Turn from the end of one flank into the start of the next, in rad. */
export const turnInto = (first: Flank, second: Flank): number =>
  angleBetween(tangentAt(first.strands.at(-1)!.segment, 1), tangentAt(second.strands[0]!.segment, 0));

/** Where one flank, run on, meets the next: of several places the one nearest to the corner as it was drawn. */
export function crossingOf(first: Flank, second: Flank, reach: number): Crossing | undefined {
  const end = flankEnd(first),
    start = flankStart(second);
  // Ends all but together are one point, unless a real corner there says just where.
  const together = Math.abs(turnInto(first, second)) <= joinedCorner ? joiningGap : coincidenceTolerance;
  if (distance(end, start) <= together)
    return { before: first.strands.length + 1, after: 1, point: lerp(end, start, 1 / 2) };
  const corner = endOf(first.drawn.at(-1)!);
  const [nearest] = [...meetingsOf(runOn(first, reach), runOn(second, reach))].sort(
    (p, q) => distance(p.point, corner) - distance(q.point, corner),
  );
  return nearest && { before: nearest.a, after: nearest.b, point: nearest.point };
}

/**
 * mm of straight line that a corner is a guess by: a curve whose end its neighbour's allowance covers was cut off with
 * it and is run on straight, and it would have bent away from that by as much as can be seen. Undefined where it is no
 * guess.
 */
export function guessedBy(
  first: Flank,
  second: Flank,
  { before, after, point }: Crossing,
): number | undefined {
  const last = first.strands.at(-1)!.segment,
    next = second.strands[0]!.segment;
  const runOns = [
    { isRunOn: before > first.strands.length + 1, end: endOf(last), bend: curvatureAt(last, 1) },
    { isRunOn: after < 1, end: startOf(next), bend: curvatureAt(next, 0) },
  ];
  // A circle leaves its tangent by half the square of the way along it over its radius.
  const guessed = runOns.find(
    ({ isRunOn, end, bend }) => isRunOn && (Math.abs(bend) * distance(end, point) ** 2) / 2 >= visibleLength,
  );
  return guessed && distance(guessed.end, point);
}
