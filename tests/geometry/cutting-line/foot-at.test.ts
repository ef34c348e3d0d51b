import { pointAt, tangentAt } from '@paperhinge/geometry/curves';
import { expect, test } from 'vitest';
import { runOf } from '../../../packages/geometry/src/cutting-line/run.js';
import { footAt, isBackwards } from '../../../packages/geometry/src/cutting-line/tight-bends.js';
import { arc, at } from './pieces.js';

// A parallel lies square to what it lies beside, at its allowance: so does each place of it to its foot, also beyond a
// bend's centre, where it runs against the bend.
test.each([
  ['outside a bend', arc(at(0, 0), 30, 90, 180), 10, false],
  ['within a bend that has room for it', arc(at(0, 0), 30, 180, 90), 10, false],
  ['beyond the centre of a bend', arc(at(0, 0), 10, 180, 90), 15, true],
  ['far beyond it', arc(at(0, 0), 4, 170, 20), 25, true],
] as const)('the foot of a place of a parallel lies square to it: %s', (_, bend, allowance, isBack) => {
  const run = runOf('bend', bend, allowance);
  expect(run.parallel.length).toBeGreaterThan(0);
  for (const strand of run.parallel) {
    expect(isBackwards(run, strand)).toBe(isBack);
    for (const t of [0.1, 0.5, 0.9]) {
      const foot = footAt(run, strand, t);
      const on = pointAt(strand.beside!, foot),
        along = tangentAt(strand.beside!, foot),
        place = pointAt(strand.segment, t);
      const away = at(place.x - on.x, place.y - on.y);
      expect(Math.hypot(away.x, away.y)).toBeCloseTo(allowance, 1);
      expect(Math.abs(away.x * along.x + away.y * along.y)).toBeLessThan(0.05);
    }
  }
});
