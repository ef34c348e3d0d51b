import { hypot } from './arithmetic.js';

/** A point or a vector, in mm; y points down the page. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The point at x, y, in mm. */
export const at = (x: number, y: number): Point => ({ x, y });
/** The sum of two vectors. */
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
/** From `b` to `a`: a − b. */
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
/** A vector k times as long. */
export const scale = (a: Point, k: number): Point => ({ x: a.x * k, y: a.y * k });
/** Scalar product, in mm²; 0 where two vectors are square to each other. */
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** Positive where `b` lies clockwise of `a` as seen on the page (y down). */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
/** Length of a vector, in mm. */
export const norm = (a: Point): number => hypot(a.x, a.y);
/** Straight distance between two points, in mm. */
export const distance = (a: Point, b: Point): number => hypot(a.x - b.x, a.y - b.y);
/** The point a share t of the way from a to b. */
export const lerp = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});
/** Same direction, length 1; the zero vector stays zero. */
export function unit(a: Point): Point {
  const n = norm(a);
  return n === 0 ? a : { x: a.x / n, y: a.y / n };
}
/** A quarter turn clockwise as seen: of a travel direction, the side to its right, the inside of a clockwise outline. */
export const rightOf = (a: Point): Point => ({ x: -a.y, y: a.x });
/** A quarter turn anticlockwise as seen: of a travel direction, the side to its left, the outside of a clockwise outline. */
export const leftOf = (a: Point): Point => ({ x: a.y, y: -a.x });
/** Angle in rad from `a` to `b`, in (−π, π], positive clockwise as seen. */
export const angleBetween = (a: Point, b: Point): number => Math.atan2(cross(a, b), dot(a, b));
