import { at, type Point } from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';
import fc from 'fast-check';

/** To a millionth of a millimetre, as files give them. */
const coordinate = fc.integer({ min: -300e6, max: 300e6 }).map(i => i / 1e6);
export const anyPoint: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate).map(([x, y]) => at(x, y));
const tame: fc.Arbitrary<Cubic> = fc.tuple(anyPoint, anyPoint, anyPoint, anyPoint);
const small = fc.integer({ min: 0, max: 12 }).map(k => 10 ** -k);

/** Cubics as they come, and the kinds that break curve code: legs of no length, cusps, hairpins, turn-backs, specks. */
export const anyCubic: fc.Arbitrary<Cubic> = fc.oneof(
  { weight: 3, arbitrary: tame },
  tame.map(([p, , r, s]): Cubic => [p, p, r, s]),
  tame.map(([p, q, , s]): Cubic => [p, q, s, s]),
  tame.map(([p, , , s]): Cubic => [p, p, s, s]),
  tame.map(([p, q, r]): Cubic => [p, q, r, p]),
  // All on one line, to and fro.
  fc.tuple(anyPoint, anyPoint, coordinate, coordinate, coordinate).map(([p, v, a, b, c]): Cubic => {
    const on = (k: number): Point => at(p.x + (v.x * k) / 100, p.y + (v.y * k) / 100);
    return [p, on(a), on(b), on(c)];
  }),
  // Crossed handles of all but equal length: from a loop through a cusp to a tight bend.
  fc.tuple(coordinate, small).map(([w, e]): Cubic => [at(0, 0), at(w, 300 + e), at(0, 300), at(w, 0)]),
  // A hairpin.
  fc.tuple(small, small).map(([a, b]): Cubic => [at(0, 0), at(300, a), at(-100, b), at(200, 0)]),
  fc.tuple(tame, small).map(([c, k]) => c.map(p => at(p.x * k, p.y * k)) as unknown as Cubic),
  tame.map(c => c.map(p => at(p.x * 300, p.y * 300)) as unknown as Cubic),
);

/** Curves as garments have them: no turn over 120 degrees, 100 to 400 mm. */
export const garmentCubic: fc.Arbitrary<Cubic> = fc
  .tuple(
    fc.double({ min: 100, max: 300, noNaN: true }),
    fc.double({ min: 20, max: 300, noNaN: true }),
    fc.double({ min: 0.2, max: 0.6, noNaN: true }),
    fc.double({ min: 0, max: 0.2, noNaN: true }),
    fc.double({ min: 0.7, max: 1, noNaN: true }),
    fc.double({ min: 0.3, max: 0.8, noNaN: true }),
  )
  .map(([x, y, a, b, c, d]): Cubic => [at(0, 0), at(x * a, y * b), at(x * c, y * d), at(x, y)]);
