import { at, type Point } from '@paperhinge/geometry';
import { type Cubic, pointAt, tangentAt } from '@paperhinge/geometry/curves';
import { leftOf } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { footWithin } from '../../../packages/geometry/src/curve/foot-within.js';
import { powerForm } from '../../../packages/geometry/src/curve/power-form.js';

const footOn = (curve: Cubic, point: Point, low = 0, high = 1): number =>
  footWithin(powerForm(curve), point, low, high);

const level: Cubic = [at(10, 20), at(40, 20), at(70, 20), at(100, 20)];

test('on a line it lies straight below the point', () => {
  expect(footOn(level, at(37, 80))).toBeCloseTo(0.3, 12);
  expect(footOn(level, at(37, -500))).toBeCloseTo(0.3, 12);
});

test('it stays between the two parameters that it is sought between', () => {
  expect(footOn(level, at(37, 80), 0.4, 0.9)).toBe(0.4);
  expect(footOn(level, at(37, 80), 0.1, 0.2)).toBe(0.2);
  expect(footOn(level, at(-50, 0))).toBe(0);
  expect(footOn(level, at(500, 0))).toBe(1);
});

test('of a curve that stands still it is the middle', () => {
  const still: Cubic = [at(5, 5), at(5, 5), at(5, 5), at(5, 5)];
  expect(footOn(still, at(9, 9), 0.25, 0.75)).toBe(0.5);
});

// A parabola y = x² / 100 raised to a cubic; what lies square to it at a place, nearer than its centre of curvature,
// has its foot there.
const parabola: Cubic = [at(-90, 81), at(-30, -27), at(30, -27), at(90, 81)];

test('what lies square to a place of a curve has its foot there, from either side', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.double({ min: -40, max: 25, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (t, away, share) => {
        const { x, y } = leftOf(tangentAt(parabola, t)),
          on = pointAt(parabola, t);
        // 0.1 to either side in all, the place anywhere within.
        const low = Math.max(0, t - 0.1 * share),
          high = Math.min(1, low + 0.1);
        expect(Math.abs(footOn(parabola, at(on.x - away * x, on.y - away * y), low, high) - t)).toBeLessThan(
          1e-10,
        );
      },
    ),
    { numRuns: 400 },
  );
});
