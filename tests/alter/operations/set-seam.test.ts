import { setSeam } from '@paperhinge/alter/seams';
import { walkSeam } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const armhole = (pattern: ReturnType<typeof shiftPattern>) => pattern.seams.find(s => s.name === 'armhole')!;

test('what is given is set, what is not stays, and no line moves', () => {
  const before = shiftPattern();
  const done = setSeam(before, { seam: 'armhole', ease: { percent: 4 }, takenUp: 'gathered' });
  expect(armhole(done.pattern)).toEqual({ ...armhole(before), ease: { percent: 4 }, takenUp: 'gathered' });
  expect(done.pattern.pieces).toEqual(before.pieces);
  const finer = setSeam(done.pattern, { seam: 'armhole', tolerance: 3 });
  expect(armhole(finer.pattern)).toEqual({ ...armhole(done.pattern), tolerance: 3 });
  expect(toldDid(done)).toBe('The armhole seam is sewn with 4 % of ease, the longer side gathered to fit.');
});

test('a seam that does not match does once its difference is the ease that is wanted', () => {
  const before = shiftPattern();
  const { differenceMm } = walkSeam(before, armhole(before));
  const off = setSeam(before, { seam: 'armhole', ease: { mm: differenceMm + 20 } }).pattern;
  expect(walkSeam(off, armhole(off)).matches).toBe(false);
  const on = setSeam(off, { seam: 'armhole', ease: { mm: differenceMm } }).pattern;
  expect(walkSeam(on, armhole(on)).matches).toBe(true);
  const wide = setSeam(off, { seam: 'armhole', tolerance: 25 }).pattern;
  expect(walkSeam(wide, armhole(wide)).matches).toBe(true);
});

test.each([
  ['field-missing', { seam: 'armhole' }],
  ['unknown-seam', { seam: 'armhloe', tolerance: 2 }],
  ['choice-unknown', { seam: 'armhole', takenUp: 'shirred' }],
  ['field-not-usable', { seam: 'armhole', ease: { mm: Number.NaN } }],
] as const)('%s is refused with a remedy', (code, parameters) => {
  const told = refusalOf(() => setSeam(shiftPattern(), parameters as never));
  expect(told.code).toBe(code);
  expect(told.remedy).not.toBe('');
});
