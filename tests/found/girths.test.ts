import { girthsAtLevels } from '@paperhinge/geometry/measure';
import { expect, test } from 'vitest';
import { foundRun } from './found.js';

// Closed form: spread by 30 at the cap, 580 mm above the hinge at the hem. The underarm corners lie 178 to either side
// of the slash and 430 above the hinge; one of them turns about it by 2 asin(30 / 2 / 580).
test('a sleeve spread at its cap is wider by what opens at the underarm, not by another sleeve', () => {
  const { record, altered } = foundRun('limb-girth-sleeve');
  const turn = 2 * Math.asin(15 / 580);
  const corner = {
    x: 178 * Math.cos(turn) + 430 * Math.sin(turn),
    y: 178 * Math.sin(turn) - 430 * Math.cos(turn),
  };
  expect(record.girths['upper arm']!.beforeMm).toBeCloseTo(356, 9);
  expect(record.girths['upper arm']!.afterMm).toBeCloseTo(Math.hypot(corner.x + 178, corner.y + 430), 2);
  expect(girthsAtLevels(altered)).toMatchObject([{ level: 'upper arm', limb: true, pieces: ['sleeve'] }]);
});

test('a leg let out at its inseam is measured round one leg, to the corner that moved', () => {
  const { record } = foundRun('limb-girth-leg');
  const { beforeMm, afterMm } = record.girths.thigh!;
  expect(beforeMm).toBeCloseTo(626.99, 2);
  // Two edges in each leg take 10 mm each, square to the inseam.
  expect(afterMm! - beforeMm!).toBeGreaterThan(20);
  expect(afterMm! - beforeMm!).toBeLessThan(21);
});

test('above the crotch a girth is the sum over left and right, below it one leg’s', () => {
  const { record } = foundRun('trousers-hip-girth');
  expect(record.girths.hip!.afterMm).toBeCloseTo(2 * 542.138, 2);
  expect(record.girths.knee!.afterMm).toBeCloseTo(451.824, 2);
  expect(record.findings.map(f => f.code)).not.toContain('girth-too-small');
});
