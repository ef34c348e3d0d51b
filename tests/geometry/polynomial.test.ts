import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rootsInUnit } from '../../packages/geometry/src/polynomial.js';

/** Coefficients of (t − r0)(t − r1)... */
const withRoots = (roots: readonly number[]): number[] =>
  roots.reduce<number[]>((c, r) => c.concat(0).map((_, i) => (c[i - 1] ?? 0) - r * (c[i] ?? 0)), [1]);

test('roots well apart are all found, in order, and none besides', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: -10, max: 30 }), { minLength: 1, maxLength: 5 }), tenths => {
      const roots = tenths.map(n => n / 20 + 0.013).sort((a, b) => a - b);
      const inside = roots.filter(r => r >= 0 && r <= 1);
      const found = rootsInUnit(withRoots(roots));
      expect(found.length).toBe(inside.length);
      for (const [i, t] of found.entries()) expect(Math.abs(t - inside[i]!)).toBeLessThan(1e-9);
    }),
  );
});
test('a double root is a touch: given once, and only where touches are asked for', () => {
  const touching = [0.25 + 1e-12, -1, 1];
  expect(rootsInUnit(touching)).toEqual([]);
  expect(rootsInUnit(touching, 1e-9)).toEqual([0.5]);
  expect(rootsInUnit([0.25 - 1e-12, -1, 1], 1e-9)).toEqual([0.5]);
  expect(rootsInUnit([0.25 - 1e-4, -1, 1], 1e-9)).toHaveLength(2);
});
test('ends count, exactly or nearly as asked, and are never given twice', () => {
  expect(rootsInUnit([0, 1])[0]).toBeCloseTo(0, 15);
  expect(rootsInUnit([-1, 1])).toEqual([1]);
  expect(rootsInUnit([1e-12, 1], 1e-9)).toEqual([0]);
  expect(rootsInUnit([0, -1, 1])).toEqual([0, 1]);
});
test('a constant has no root that could be named', () => {
  expect(rootsInUnit([0])).toEqual([]);
  expect(rootsInUnit([3, 0, 0])).toEqual([]);
});
