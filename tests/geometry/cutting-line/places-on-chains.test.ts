import { expect, test } from 'vitest';
import {
  pointOnChain,
  type Strand,
  straight,
  strandsBetween,
  tangentOnChain,
} from '../../../packages/geometry/src/cutting-line/strand.js';
import { at } from './pieces.js';

// Ten to the right, then twenty down.
const chain: readonly Strand[] = [
  ...straight(at(0, 0), at(10, 0), 'level'),
  ...straight(at(10, 0), at(10, 20), 'steep'),
];

test.each([
  [0, at(0, 0), at(1, 0)],
  [0.3, at(3, 0), at(1, 0)],
  [1, at(10, 0), at(0, 1)],
  [1.5, at(10, 10), at(0, 1)],
  [2, at(10, 20), at(0, 1)],
])(
  'place %d of a chain is a point of it, with the direction from there on, at its end the last',
  (place, point, along) => {
    for (const [found, wanted] of [
      [pointOnChain(chain, place), point],
      [tangentOnChain(chain, place), along],
    ] as const) {
      expect(found.x).toBeCloseTo(wanted.x, 12);
      expect(found.y).toBeCloseTo(wanted.y, 12);
    }
  },
);

test('between two places lie the strands between, cut at both', () => {
  const spans = (from: number, to: number) =>
    strandsBetween(chain, from, to).map(({ of, segment: [p, q] }) => [of, p.x, p.y, q.x, q.y]);
  expect(spans(0, 2)).toEqual([
    ['level', 0, 0, 10, 0],
    ['steep', 10, 0, 10, 20],
  ]);
  expect(spans(0.5, 1.25)).toEqual([
    ['level', 5, 0, 10, 0],
    ['steep', 10, 0, 10, 5],
  ]);
  expect(spans(1.25, 1.75)).toEqual([['steep', 10, 5, 10, 15]]);
  for (const [from, to] of [
    [1, 1],
    [0.5, 0.5],
    [1.5, 1],
    [0.5, 0.5 + 1e-9],
  ] as const)
    expect(spans(from, to)).toEqual([]);
});

test('from a point to itself there is no strand', () => {
  expect(straight(at(3, 4), at(3, 4), 'none')).toEqual([]);
  expect(straight(at(3, 4), at(3, 5), 'some', 'dart')).toEqual([
    { segment: [at(3, 4), at(3, 5)], of: 'some', shape: 'dart' },
  ]);
});
