import { expect, test } from 'vitest';
import { lengthOfAll } from '../../../packages/geometry/src/cutting-line/lost-lengths.js';

test('stretches of one run count once where they lie on each other, in whatever order they are told', () => {
  expect(lengthOfAll([])).toBe(0);
  expect(lengthOfAll([{ from: 5, to: 12 }])).toBe(7);
  const [first, second, third] = [
    { from: 0, to: 15 },
    { from: 10, to: 20 },
    { from: 40, to: 45 },
  ];
  for (const order of [
    [first, second, third],
    [third, first, second],
    [second, third, first],
    [third, second, first],
  ])
    expect(lengthOfAll(order)).toBe(25);
  // One within another, and one that ends before it begins.
  expect(lengthOfAll([{ from: 0, to: 30 }, second, { from: 35, to: 32 }])).toBe(30);
});
