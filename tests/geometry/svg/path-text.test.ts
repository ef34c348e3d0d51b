import { line, pathOf } from '@paperhinge/geometry';
import { quadratic } from '@paperhinge/geometry/curves';
import { toPathData } from '@paperhinge/geometry/svg';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toSvgNumber } from '../../../packages/geometry/src/svg/path-text.js';

const at = (x: number, y: number) => ({ x, y });

test.each([
  [0, '0'],
  [-0, '0'],
  [1e-12, '0'],
  [-1e-12, '0'],
  [12, '12'],
  [-12.5, '-12.5'],
  [0.1, '0.1'],
  [1.05, '1.05'],
  [1.0005, '1.0005'],
  [1.00005, '1.00005'],
  [1.00000001, '1.00000001'],
  [0.00000012, '0.00000012'],
  [0.99999999999, '1'],
  [-999.99999999999, '-1000'],
  [0.0000000012, '0.0000000012'],
  [1.0100000001, '1.0100000001'],
  [123.4567, '123.4567'],
  [123.456789, '123.456789'],
  [100000, '100000'],
  [1e20, '100000000000000000000'],
])('%d is written %s', (value, text) => {
  expect(toSvgNumber(value)).toBe(text);
});

test('numbers are written to ten decimals, without exponent or idle zeros', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), value => {
      const text = toSvgNumber(value);
      expect(text).toMatch(/^-?\d+(\.\d*[1-9])?$/);
      expect(Math.abs(Number(text) - value)).toBeLessThan(0.7e-10);
    }),
    { numRuns: 2000 },
  );
});

test('a path is written in absolute lines and cubics', () => {
  const path = pathOf(line(at(0, 0), at(10, 0)), quadratic(at(10, 0), at(13, 0), at(13, 3)));
  expect(toPathData(path)).toBe('M0 0 L10 0 C12 0 13 1 13 3');
});

test('one that comes back to its start is closed', () => {
  const path = pathOf(line(at(0, 0), at(10, 0)), line(at(10, 0), at(0, 5)), line(at(0, 5), at(0, 0)));
  expect(toPathData(path)).toBe('M0 0 L10 0 L0 5 L0 0 Z');
});

test('one that leaps is lifted there and not closed', () => {
  const path = pathOf(line(at(0, 0), at(10, 0)), line(at(20, 0), at(0, 0)));
  expect(toPathData(path)).toBe('M0 0 L10 0 M20 0 L0 0');
});
