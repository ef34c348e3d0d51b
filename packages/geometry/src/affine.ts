import { dot, type Point, subtract, unit } from './vector.js';

/** An affine map in SVG order: x′ = a x + c y + e, y′ = b x + d y + f; e and f in mm. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** The map that leaves everything where it is. */
export const identity: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
/** The map that moves everything by a vector, in mm. */
export const translation = ({ x, y }: Point): Affine => ({ ...identity, e: x, f: y });

/** Turn about a point by an angle in rad, positive clockwise as seen. */
export const rotation = (angle: number, about: Point = { x: 0, y: 0 }): Affine =>
  rotationTo(Math.cos(angle), Math.sin(angle), about);

/** Turn about a point by the angle of which cosine and sine are given: exact where those are. */
export const rotationTo = (c: number, s: number, about: Point): Affine => ({
  a: c,
  b: s,
  c: -s,
  d: c,
  e: about.x - c * about.x + s * about.y,
  f: about.y - s * about.x - c * about.y,
});

/** Mirror image in the line through `on` with the given direction. */
export function mirror(on: Point, direction: Point): Affine {
  const { x, y } = unit(direction);
  const a = x * x - y * y,
    b = 2 * x * y;
  return { a, b, c: b, d: -a, e: on.x - a * on.x - b * on.y, f: on.y - b * on.x + a * on.y };
}

/** The map that does `first`, then `then`. */
export const compose = (first: Affine, then: Affine): Affine => ({
  a: then.a * first.a + then.c * first.b,
  b: then.b * first.a + then.d * first.b,
  c: then.a * first.c + then.c * first.d,
  d: then.b * first.c + then.d * first.d,
  e: then.a * first.e + then.c * first.f + then.e,
  f: then.b * first.e + then.d * first.f + then.f,
});

/** The map that undoes one; of a map that flattens everything onto a line there is none, and its entries are not finite. */
export function inverse({ a, b, c, d, e, f }: Affine): Affine {
  const det = a * d - b * c;
  return {
    a: d / det,
    b: -b / det,
    c: -c / det,
    d: a / det,
    e: (c * f - d * e) / det,
    f: (b * e - a * f) / det,
  };
}

/** Where a map carries a point, in mm. */
export const apply = (m: Affine, p: Point): Point => ({
  x: m.a * p.x + m.c * p.y + m.e,
  y: m.b * p.x + m.d * p.y + m.f,
});
/** Carries a direction: the map without its translation. */
export const applyToVector = (m: Affine, v: Point): Point => ({
  x: m.a * v.x + m.c * v.y,
  y: m.b * v.x + m.d * v.y,
});
/** By how much a map scales areas; negative where it turns pieces over. */
export const determinant = (m: Affine): number => m.a * m.d - m.b * m.c;

/** The rigid motion that carries point `from` with direction `fromDirection` onto `to` with `toDirection`. */
export function carrying(from: Point, fromDirection: Point, to: Point, toDirection: Point): Affine {
  const u = unit(fromDirection),
    v = unit(toDirection);
  const c = dot(u, v),
    s = u.x * v.y - u.y * v.x;
  const turned = { x: c * from.x - s * from.y, y: s * from.x + c * from.y };
  const shift = subtract(to, turned);
  return { a: c, b: s, c: -s, d: c, e: shift.x, f: shift.y };
}
