// Rules are held against the jobs beside a job only. What is left out is held against them here, on every demo: no rule
// may have anything to say of it.
import { readdirSync, readFileSync } from 'node:fs';
import type { Derived, MakingNote } from '@paperhinge/alter';
import { type Pattern, readPattern } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import { expect, test } from 'vitest';
import { jobsBeside } from '../../../packages/alter/src/order-of-work/beside.js';
import { calledFor } from '../../../packages/alter/src/order-of-work/order-of-work.js';
import { waitsBy } from '../../../packages/alter/src/order-of-work/rules.js';
import { sleeveSeams } from '../../../packages/alter/src/order-of-work/sleeve.js';

const demos = new URL('../../../demos/', import.meta.url);
const drawn = (file: string): Pattern =>
  readPattern(readFileSync(new URL(`patterns/${file}`, demos)), { file }).pattern;

/** Pairs in which a rule lets a job wait for one that does not stand beside it, and how many pairs there are. */
function overlooked(given: Pattern, derived: readonly Derived[], making: readonly MakingNote[]) {
  const { pattern, lining, called } = calledFor(given, derived, making);
  const waits = waitsBy(pattern, sleeveSeams(pattern), lining);
  const beside = jobsBeside(pattern, called);
  const pairs = called.flatMap(job => {
    const near = new Set(beside(job));
    return called.filter(other => other !== job && !near.has(other)).map(other => [job, other] as const);
  });
  return {
    left: pairs.length,
    pairs: pairs.filter(([job, other]) => waits(job, other) !== undefined).map(([j, o]) => [j.job, o.job]),
  };
}

test.each(readdirSync(new URL('patterns/', demos)).filter(f => f.endsWith('.svg')))(
  'no rule speaks of jobs of %s that stand apart',
  file => {
    const { left, pairs } = overlooked(drawn(file), [], []);
    expect(pairs).toEqual([]);
    // Something is left out at all.
    expect(left).toBeGreaterThan(0);
  },
);

const sheets = readdirSync(new URL('sheets/', demos))
  .map(file => readSheet(readFileSync(new URL(`sheets/${file}`, demos), 'utf8'), { file }))
  .filter(sheet => sheet.pattern?.endsWith('.svg'));

test.each(sheets.map(sheet => [sheet.file, sheet] as const))(
  'nor of those that the steps of %s and their notes call for',
  (_, sheet) => {
    const { altered, derived, steps } = runSheet(sheet, drawn(sheet.pattern!.replace('../patterns/', '')));
    expect(overlooked(altered, derived, steps.at(-1)!.state.making).pairs).toEqual([]);
  },
);

test('a job that names no piece may be anywhere: every job is held against it', () => {
  const note = { job: 'press flat', text: 'Press.', after: [] };
  const { pattern, called } = calledFor(drawn('woven-shift.svg'), [], [note]);
  const noted = called.find(j => j.job === 'press flat')!;
  const beside = jobsBeside(pattern, called);
  expect(beside(noted)).toEqual(called);
  for (const job of called) expect(beside(job)).toContain(noted);
});
