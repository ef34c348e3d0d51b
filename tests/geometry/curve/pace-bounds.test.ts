import { at } from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paceBounds } from '../../../packages/geometry/src/curve/curvature.js';

/** B′ and B″ from differences of the control points, term by term. */
function motion([p, q, r, s]: Cubic, t: number) {
  const u = 1 - t;
  const along = (a: number, b: number, c: number, d: number) => ({
    first: 3 * (u * u * (b - a) + 2 * u * t * (c - b) + t * t * (d - c)),
    second: 6 * (u * (a - 2 * b + c) + t * (b - 2 * c + d)),
  });
  const x = along(p.x, q.x, r.x, s.x),
    y = along(p.y, q.y, r.y, s.y);
  return { speedSquared: x.first ** 2 + y.first ** 2, turn: x.first * y.second - y.first * x.second };
}

test('of an even curve the bounds are the figures themselves', () => {
  // x = 30 t, y = 6 t²: B′ = (30, 12 t), B″ = (0, 12).
  const parabola: Cubic = [at(0, 0), at(10, 0), at(20, 2), at(30, 6)];
  expect(paceBounds(parabola)).toEqual({ speedSquared: 900, leastTurn: 360, mostTurn: 360 });
});
test('no place of any curve is slower, or turns less or more, than the bounds say', () => {
  const place = fc.tuple(fc.integer({ min: -300, max: 300 }), fc.integer({ min: -300, max: 300 }));
  fc.assert(
    fc.property(place, place, place, place, (...places) => {
      const curve = places.map(([x, y]) => at(x, y)) as unknown as Cubic;
      const { speedSquared, leastTurn, mostTurn } = paceBounds(curve);
      for (let i = 0; i <= 20; i++) {
        const here = motion(curve, i / 20);
        const slack = 1e-9 * (1 + Math.abs(here.turn) + here.speedSquared);
        expect(here.speedSquared).toBeGreaterThanOrEqual(speedSquared - slack);
        expect(here.turn).toBeGreaterThanOrEqual(leastTurn - slack);
        expect(here.turn).toBeLessThanOrEqual(mostTurn + slack);
      }
    }),
    { numRuns: 1000 },
  );
});
