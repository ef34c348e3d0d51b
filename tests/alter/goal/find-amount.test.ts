import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findAmount, type Search } from '../../../packages/alter/src/goal/find-amount.js';

const search = (more: Partial<Search>): Search => ({
  least: 0,
  most: 5000,
  stride: 1,
  from: 0,
  to: 0,
  within: 1e-3,
  ...more,
});
const to = (figure: number, more: Partial<Search> = {}): Search =>
  search({ from: figure, to: figure, ...more });

describe('the amount that comes to a figure', () => {
  test('is the root of a square, to the nearness asked for', () => {
    const found = findAmount(x => x * x, to(2000));
    expect(found?.reached).toBe(true);
    expect(Math.abs(found!.amount - Math.sqrt(2000))).toBeLessThan(1e-3 / (2 * Math.sqrt(2000)) + 1e-12);
  });

  // Property: whatever rises or falls without a turn is found wherever it lies in range.
  test('is found of any cubic that only rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 4999.5, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.boolean(),
        (amount, slope, falls) => {
          const way = falls ? -1 : 1;
          const outcome = (x: number) => way * (slope * x + (x / 1000) ** 3);
          const found = findAmount(outcome, to(outcome(amount)));
          return found!.reached && Math.abs(found!.amount - amount) <= 1e-3 / slope + 1e-9;
        },
      ),
    );
  });

  test('is nothing where nothing is enough', () => {
    expect(findAmount(x => 580 + x, search({ from: 570, to: 600 }))).toEqual({
      amount: 0,
      is: 580,
      reached: true,
    });
  });

  test('is the smallest that comes within a range', () => {
    expect(findAmount(x => 500 + x, search({ from: 570, to: 600 }))!.amount).toBeCloseTo(70, 2);
    expect(findAmount(x => 900 - x, search({ from: 570, to: 600 }))!.amount).toBeCloseTo(300, 2);
  });

  test('is sought the other way where the bounds allow it', () => {
    expect(findAmount(x => 100 + x, to(60, { least: -500 }))!.amount).toBeCloseTo(-40, 2);
  });

  // What cannot be done beyond 300 still has its goal at 299.9 found.
  test('just before what cannot be done is not missed', () => {
    const found = findAmount(x => (x < 300 ? x : undefined), to(299.9));
    expect(found!.reached).toBe(true);
    expect(found!.amount).toBeCloseTo(299.9, 2);
  });

  test('beginning near one that did nearly the same, takes few tries', () => {
    let tries = 0;
    const counted = (x: number) => {
      tries++;
      return x;
    };
    const found = findAmount(counted, to(812, { near: 810 }));
    expect(found!.amount).toBeCloseTo(812, 2);
    expect(tries).toBeLessThan(20);
  });
});

describe('where no amount does it', () => {
  test('the nearest is told', () => {
    expect(findAmount(x => Math.min(x, 250), to(400))).toMatchObject({ is: 250, reached: false });
  });

  test('nothing is told where nothing can be done', () => {
    expect(findAmount(() => undefined, to(400))).toBeUndefined();
  });

  test('a leap past the figure is no answer', () => {
    const found = findAmount(x => (x < 37 ? 0 : 10), to(5));
    expect(found!.reached).toBe(false);
  });
});
