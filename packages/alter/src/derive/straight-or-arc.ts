import { at, line, type Path, type Point, pathOf } from '@paperhinge/geometry';
import { arcBetween } from '@paperhinge/geometry/curves';
import { subtract } from '@paperhinge/geometry/plane';

/** A band laid out flat: from a first to a last end along its sewn edge, and across it. */
export interface Laying {
  /** The place `along` mm from the first end, measured on the sewn edge, and `across` mm below it. */
  readonly spot: (along: number, across: number) => Point;
  /** The line between two places that lie equally far across. */
  readonly line: (from: number, to: number, across: number) => Path;
}

/**
 * A band of parallel edges: straight, or a part of a ring whose far edge is `ratio` times as long as its sewn one (an
 * arc of the radius width / (1 − ratio)), as a band that follows the narrowing of a body is.
 *
 * @param length mm of sewn edge
 * @param width mm between both edges
 */
export function laidOut(place: Point, length: number, width: number, ratio = 1): Laying {
  // Farther off than this its arc cannot be told from a straight line.
  if (Math.abs(1 - ratio) * length < leastRise) {
    const spot = (along: number, across: number) => at(place.x + along, place.y + across);
    return { spot, line: (from, to, across) => pathOf(line(spot(from, across), spot(to, across))) };
  }
  const radius = width / (1 - ratio);
  const centre = at(place.x + length / 2, place.y + radius);
  const spot = (along: number, across: number): Point => {
    const turn = (along - length / 2) / radius;
    return at(centre.x + (radius - across) * Math.sin(turn), centre.y - (radius - across) * Math.cos(turn));
  };
  return {
    spot,
    line: (from, to, across) => {
      const [a, b] = [spot(from, across), spot(to, across)];
      const clockwise = radius > 0 === to > from;
      return { segments: arcBetween(centre, subtract(a, centre), subtract(b, centre), clockwise) };
    },
  };
}

/** mm by which both edges of a shaped band must differ at least. */
const leastRise = 0.1;
