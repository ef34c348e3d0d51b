import { expect, test } from 'vitest';
import { facingEdges } from '../../../packages/geometry/src/measure/facing-edges.js';
import { patternOf, rectangle, seam } from '../../support/polygon-piece.js';

/** Strips in two rows, `a0`, `a1` ... over `b0`, `b1` ..., sewn along their tops; which lies on which. */
function facing(above: readonly number[], below: readonly number[]): readonly string[] {
  const row = (letter: string, lengths: readonly number[]) =>
    lengths.map((length, i) => rectangle(`${letter}${i}`, length, 50));
  const tops = (letter: string, lengths: readonly number[]) => lengths.map((_, i) => `${letter}${i}.top`);
  const pattern = patternOf(
    [...row('a', above), ...row('b', below)],
    [seam('s', tops('a', above), tops('b', below))],
  );
  return facingEdges(pattern).map(({ a, b }) => `${a.piece} on ${b.piece}`);
}

test('edges face each other where their runs lie beside one another', () => {
  expect(facing([100, 200], [100, 200])).toEqual(['a0 on b0', 'a1 on b1']);
  expect(facing([100, 200], [150, 150])).toEqual(['a0 on b0', 'a1 on b0', 'a1 on b1']);
  expect(facing([50, 60, 90], [200])).toEqual(['a0 on b0', 'a1 on b0', 'a2 on b0']);
});

test('ease is spread evenly: shares of each side count, not millimetres', () => {
  expect(facing([100, 100], [150, 150])).toEqual(['a0 on b0', 'a1 on b1']);
  expect(facing([300, 300], [10, 10])).toEqual(['a0 on b0', 'a1 on b1']);
});

test.each([
  [0.7, ['a0 on b0', 'a1 on b1']],
  [0.9, ['a0 on b0', 'a0 on b1', 'a1 on b1']],
])('edges that overlap by %d mm, of a seam matched within 0.8', (over, expected) => {
  expect(facing([100 + over, 100 - over], [100, 100])).toEqual(expected);
});

test('the shorter side decides how much lies beside one another', () => {
  // A thousandth of 1000 mm overlaps, which on 200 mm of elastic is a fifth of a millimetre.
  expect(facing([501, 499], [100, 100])).toEqual(['a0 on b0', 'a1 on b1']);
  expect(facing([100, 100], [501, 499])).toEqual(['a0 on b0', 'a1 on b1']);
  expect(facing([506, 494], [100, 100])).toEqual(['a0 on b0', 'a0 on b1', 'a1 on b1']);
});
