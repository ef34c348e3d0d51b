import { expect, test } from 'vitest';
import { lengthOfAll, lostOfBend } from '../../../packages/geometry/src/cutting-line/lost-lengths.js';
import { runOf } from '../../../packages/geometry/src/cutting-line/run.js';
import { arc, at } from './pieces.js';

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

test('of a bend nothing is lost at an inner corner but what runs back on itself', () => {
  const bend = (radius: number) => runOf('bend', arc(at(0, 0), radius, 180, 90), 10);
  const none = { start: false, end: false };
  const lost = (radius: number, isInner: typeof none, kept: readonly number[] = []) => {
    const run = bend(radius);
    return lengthOfAll(
      lostOfBend(
        run,
        run.parallel.filter((_, i) => kept.includes(i)),
        isInner,
      ),
    );
  };
  const quarter = (radius: number) => (Math.PI * radius) / 2;
  // With room for its allowance none runs back; without, all of it.
  expect(lost(30, none)).toBeCloseTo(quarter(30), 6);
  expect(lost(30, { start: true, end: false })).toBe(0);
  expect(lost(30, { start: false, end: true })).toBe(0);
  expect(lost(4, none)).toBeCloseTo(quarter(4), 3);
  expect(lost(4, { start: true, end: true })).toBeCloseTo(quarter(4), 3);
  // What is lost between stretches that are kept is no corner's; nor is it at the end that is none.
  const count = bend(30).parallel.length,
    share = quarter(30) / count;
  const inner = [...Array(count).keys()];
  const both = { start: true, end: true };
  expect(count).toBeGreaterThan(3);
  expect(lost(30, both, [0, count - 1])).toBeCloseTo(quarter(30) - 2 * share, 3);
  expect(lost(30, both, inner)).toBeCloseTo(0, 6);
  const whole = bend(30);
  for (const line of [whole.parallel, [...whole.parallel].reverse()])
    expect(lengthOfAll(lostOfBend(whole, line, none))).toBeCloseTo(0, 6);
  expect(lost(30, { start: true, end: false }, inner.slice(0, -1))).toBeCloseTo(share, 3);
  expect(lost(30, { start: false, end: true }, inner.slice(0, -1))).toBeCloseTo(0, 6);
  expect(lost(30, { start: false, end: true }, inner.slice(1))).toBeCloseTo(share, 3);
  expect(lost(30, { start: true, end: false }, inner.slice(1))).toBeCloseTo(0, 6);
});
