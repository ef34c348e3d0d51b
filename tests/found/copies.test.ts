import { walkSeams } from '@paperhinge/geometry';
import { hemSweep } from '@paperhinge/geometry/measure';
import { describe, expect, test } from 'vitest';
import { foundCheck, foundRun } from './found.js';

describe('a panel cut six times and sewn to itself', () => {
  // Independent sum: the level at y = 200 across one gore, its side a cubic, is 216.985 mm; six of them.
  const run = foundRun('six-gores');
  test('counts six times in the girth, and there is no false fault', () => {
    expect(run.record.girths.hip!.beforeMm).toBeCloseTo(6 * 216.985, 1);
    expect(run.record.findings.map(f => f.code)).not.toContain('girth-too-small');
  });
  test('is taken in by what is asked for in the whole garment', () => {
    const { beforeMm, afterMm } = run.record.girths.hip!;
    // Twelve edges take 5 mm each, square to the seam, which leans a little at the hip.
    expect(beforeMm! - afterMm!).toBeGreaterThan(60);
    expect(beforeMm! - afterMm!).toBeLessThan(61);
  });
  test('is held by a waistband as long as six tops', () => {
    const top = run.record.after.pieces.panel!.edges.top!.lengthMm;
    expect(run.record.derived.waistband!.lengthMm).toBeCloseTo(6 * top + 30, 6);
    expect(run.record.after.seams.waistband!.bMm).toBeCloseTo(6 * top, 6);
  });
  test('sweeps all round at the hem', () => {
    const hem = run.record.after.pieces.panel!.edges.hem!.lengthMm;
    expect(hemSweep(run.altered).map(s => s.sweepMm)).toEqual([expect.closeTo(6 * hem, 6)]);
  });
});

test('a waistband drawn whole is held against both halves of the trousers', () => {
  const { pattern } = foundCheck('whole-waistband');
  const waist = walkSeams(pattern).find(w => w.seam === 'waist')!;
  expect(waist.aMm).toBe(860);
  // Once front and back, once back and front again: 416.69 mm each way, measured outside the project.
  expect(waist.bMm).toBeCloseTo(2 * 416.69, 1);
  expect(waist.counted).toBe('garment');
});
