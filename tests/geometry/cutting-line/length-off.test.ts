import { type Edge, pathLength } from '@paperhinge/geometry';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthOff, redrawn } from '../../../packages/geometry/src/cutting-line/redrawn.js';
import { at, polygon, rectangle } from './pieces.js';

const level = { segments: [[at(-10, 0), at(200, 0)] as const] };

test('what lies on a line is nowhere off it, what lies beyond what can be seen is so in its whole length', () => {
  for (const length of [0.3, 1, 7, 100]) {
    const beside = (y: number) => lengthOff([[at(0, y), at(length, y)]], level);
    for (const y of [0, 0.05, 0.099, -0.099]) expect(beside(y)).toBe(0);
    for (const y of [0.101, -0.101, 3]) expect(beside(y)).toBeCloseTo(length, 9);
  }
  expect(lengthOff([], level)).toBe(0);
  expect(lengthOff([[at(5, 1), at(5, 1)]], level)).toBe(0);
});

test('of several stretches the lengths add up', () => {
  const stretches = [
    [at(0, 1), at(30, 1)],
    [at(30, 0), at(50, 0)],
    [at(50, -1), at(62, -1)],
  ] as const;
  expect(lengthOff(stretches, level)).toBeCloseTo(42, 9);
});

test('a stretch that leaves the line is off it from there on, to two millimetres', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 80 }), fc.integer({ min: 0, max: 1000 }), (length, permille) => {
      const share = permille / 1000;
      // So flat that it is as long as it is wide, and as far off as can be seen at that share of it.
      const heightAt = (x: number): number => 0.1 + 0.001 * (x / length - share);
      const leaving = [at(0, heightAt(0)), at(length, heightAt(length))] as const;
      const off = (1 - share) * length;
      expect(Math.abs(lengthOff([leaving], level) - off)).toBeLessThan(2 + 1e-6);
    }),
    { examples: [[10, 740]] },
  );
});

test('a rectangle’s cutting line is drawn by the allowances that were included', () => {
  const parts = polygon(rectangle(100, 60), () => ({ allowance: 3 })).outline.parts;
  const line = redrawn(parts, (edge: Edge) => (edge.name === 'e0' ? 20 : 10))!.path;
  expect(signedArea(line)).toBeCloseTo(120 * 90, 9);
  expect(pathLength(line)).toBeCloseTo(2 * (120 + 90), 9);
});

test('where allowances are none that can be drawn there is no line', () => {
  const { parts } = polygon(rectangle(100, 60)).outline;
  expect(redrawn(parts, () => Number.NaN)).toBeUndefined();
  expect(redrawn([], () => 10)).toBeUndefined();
});
