import type { Segment } from '@paperhinge/geometry';
import { reversed } from '@paperhinge/geometry/curves';
import { expect, test } from 'vitest';
import { runOf, smoothGroups, turnBetween } from '../../../packages/geometry/src/cutting-line/run.js';
import { at } from './pieces.js';

const turn = (before: Segment, after: Segment): number =>
  turnBetween(runOf('before', [before], 0), runOf('after', [after], 0));
const flipped = (segment: Segment): Segment => segment.map(({ x, y }) => at(x, -y)) as unknown as Segment;

test('a turn is told in its sense: to the right as one goes clockwise, outer; to the left, inner', () => {
  const along: Segment = [at(0, 0), at(100, 0)];
  for (const degrees of [-170, -90, -1, 0, 1, 45, 90, 179]) {
    const angle = (degrees * Math.PI) / 180;
    const next: Segment = [at(100, 0), at(100 + 50 * Math.cos(angle), 50 * Math.sin(angle))];
    expect(turn(along, next)).toBeCloseTo(angle, 12);
  }
});

test('where the line goes back the way it came, its bends beside the turn tell a spike from a slit', () => {
  const back: Segment = [at(100, 0), at(0, 0)];
  // Bent one way all along, and bent so at its end alone, the other way before.
  const bow: Segment = [at(0, -60), at(40, -20), at(60, 0), at(100, 0)];
  const sway: Segment = [at(0, -20), at(40, -60), at(60, 0), at(100, 0)];
  const told = turn(bow, back);
  expect(Math.abs(told)).toBe(Math.PI);
  expect(turn(sway, back)).toBe(told);
  for (const curve of [bow, sway]) {
    expect(turn(flipped(curve), back)).toBe(-told);
    // Going the other way it is the line that leaves the turn that bends.
    const out: Segment = [at(0, 0), at(100, 0)];
    expect(turn(out, reversed(curve))).toBe(-told);
    expect(turn(out, reversed(flipped(curve)))).toBe(told);
  }
});

test('of a line of several bends, the one beside the turn tells', () => {
  const back: Segment = [at(100, 0), at(0, 0)];
  const bow: Segment = [at(0, -60), at(40, -20), at(60, 0), at(100, 0)];
  // Bent as much the other way, before it.
  const other: Segment = [at(-100, 0), at(-60, 0), at(-20, -20), at(0, -60)];
  const told = turn(bow, back);
  const chained = (before: readonly Segment[], after: readonly Segment[]): number =>
    turnBetween(runOf('before', before, 0), runOf('after', after, 0));
  expect(chained([flipped(other), bow], [back])).toBe(told);
  expect(chained([other, flipped(bow)], [back])).toBe(-told);
  const out: Segment = [at(0, 0), at(100, 0)];
  expect(chained([out], [reversed(bow), reversed(flipped(other))])).toBe(-told);
});

test('a turn back is told by its bends, on whichever side rounding leaves it', () => {
  const bow: Segment = [at(0, -60), at(40, -20), at(60, 0), at(100, 0)];
  const told = turn(bow, [at(100, 0), at(0, 0)]);
  for (const y of [1e-8, -1e-8]) expect(turn(bow, [at(100, 0), at(0, y)])).toBe(told);
});

// Two parallels end as far apart as their allowance times the turn: no corner up to a thousandth of a millimetre.
test.each([
  [100, 0.9e-5, 1],
  [100, 1.1e-5, 2],
  [10, 0.9e-4, 1],
  [10, 1.1e-4, 2],
  [0.5, 0.9e-3, 1],
  [0.5, 1.1e-3, 2],
  [0, 0.9e-3, 1],
  [0, 0.5, 2],
])('at %d mm a turn of %d rad leaves %d stretches without a corner', (allowance, angle, count) => {
  for (const sense of [1, -1]) {
    const next: Segment = [at(100, 0), at(100 + 50 * Math.cos(angle), sense * 50 * Math.sin(angle))];
    expect(smoothGroups([[at(0, 0), at(100, 0)], next], allowance)).toHaveLength(count);
  }
});
