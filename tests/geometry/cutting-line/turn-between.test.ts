import type { Segment } from '@paperhinge/geometry';
import { reversed } from '@paperhinge/geometry/curves';
import { expect, test } from 'vitest';
import { runOf, turnBetween } from '../../../packages/geometry/src/cutting-line/run.js';
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
