import { line, type Path, type Point, pathOf, polyline } from '@paperhinge/geometry';
import { add, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import type { Fill, Role, Stroke } from './ink.js';

export const stroke = (role: Role, path: Path): Stroke => ({ kind: 'stroke', role, path });
export const closedStroke = (role: Role, path: Path): Stroke => ({
  kind: 'stroke',
  role,
  path,
  closed: true,
});

/** A closed filled polygon. */
export const fill = (role: Role, ...corners: readonly Point[]): Fill => ({
  kind: 'fill',
  role,
  path: polyline(...corners, corners[0]!),
});

export const straight = (role: Role, from: Point, to: Point): Stroke => stroke(role, pathOf(line(from, to)));

/** A slender arrowhead with its point at `tip`, pointing along a unit direction. */
export function arrowhead(role: Role, tip: Point, direction: Point, length: number): Fill {
  const back = subtract(tip, scale(direction, length)),
    side = scale(rightOf(direction), length * 0.3);
  // The notch in the back keeps the head crisp where the shaft runs into it.
  return fill(
    role,
    tip,
    add(back, side),
    subtract(tip, scale(direction, length * 0.78)),
    subtract(back, side),
  );
}

/** Control-point share of the radius that makes four cubics a circle within 0.03 % (Goldapp 1991). */
const circleHandle = 0.5519150244935106;

export function circle(middle: Point, radius: number): Path {
  const r = radius,
    k = radius * circleHandle,
    { x, y } = middle;
  return pathOf(
    [
      { x: x + r, y },
      { x: x + r, y: y + k },
      { x: x + k, y: y + r },
      { x, y: y + r },
    ],
    [
      { x, y: y + r },
      { x: x - k, y: y + r },
      { x: x - r, y: y + k },
      { x: x - r, y },
    ],
    [
      { x: x - r, y },
      { x: x - r, y: y - k },
      { x: x - k, y: y - r },
      { x, y: y - r },
    ],
    [
      { x, y: y - r },
      { x: x + k, y: y - r },
      { x: x + r, y: y - k },
      { x: x + r, y },
    ],
  );
}

export const directionOf = (from: Point, to: Point): Point => unit(subtract(to, from));
