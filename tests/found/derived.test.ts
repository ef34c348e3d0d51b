import { cuttingLine, edgeNamed, edgePath, pathLength, pieceNamed } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { copiesInGarment, foldEdgeOf } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { foundRun } from './found.js';

const lengthOf = (run: ReturnType<typeof foundRun>, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(run.altered, piece), edge));

test('cuffs are a pair of 179 mm each, as many as the garment has rings', () => {
  const run = foundRun('cuffs-are-pairs');
  const cuff = pieceNamed(run.altered, 'cuff');
  // 220 mm of hem at 75 % and two joins of 7 mm.
  expect(run.record.derived.cuff!.lengthMm).toBeCloseTo(179, 9);
  expect([cuff.cutting.count, cuff.cutting.mirrored]).toEqual([2, true]);
  expect(copiesInGarment(cuff)).toBe(2);
});

test('a cuff of 80 mm on a hem finishes at 25 mm folded, not at 5', () => {
  const run = foundRun('cuff-on-hem');
  expect(edgeNamed(pieceNamed(run.altered, 'sleeve'), 'hem')).toMatchObject({ kind: 'seam', allowance: 15 });
  expect(edgeNamed(pieceNamed(run.altered, 'cuff'), 'sewn').allowance).toBe(15);
  expect(run.record.derived.cuff!.finishedWidthMm).toBeCloseTo((80 - 2 * 15) / 2, 9);
  expect(run.record.findings.map(f => f.code)).toContain('hem-becomes-seam');
});

test('a bound hem is a seam on both its pieces', () => {
  const run = foundRun('bound-hem-and-open-front');
  for (const piece of ['front', 'back', 'sleeve'])
    expect(edgeNamed(pieceNamed(run.altered, piece), 'hem')).toMatchObject({ kind: 'seam', allowance: 15 });
  expect(run.record.derived.hemb!.edgeMm).toBeCloseTo(4 * 250, 6);
});

test('a faced hem keeps no turning, nor does its facing', () => {
  const run = foundRun('hem-facing-allowance');
  for (const piece of ['skirt', 'hf'])
    expect(edgeNamed(pieceNamed(run.altered, piece), 'hem')).toMatchObject({ kind: 'seam', allowance: 15 });
});

describe('a steep V', () => {
  test('is cut where its allowance meets the fold, and not beyond it', () => {
    const front = pieceNamed(foundRun('deep-v-on-fold').altered, 'front');
    const neck = edgePath(front, 'neck');
    const ends = [pathStart(neck), pathEnd(neck)].sort((p, q) => q.y - p.y);
    const [point, shoulder] = [ends[0]!, ends[1]!];
    const half = Math.atan2(shoulder.x - point.x, point.y - shoulder.y);
    const cut = cuttingLine(front).path.segments.flat();
    expect(Math.min(...cut.map(p => p.x))).toBeCloseTo(point.x, 6);
    const onFold = cut.filter(p => Math.abs(p.x - point.x) < 1e-6).map(p => p.y);
    expect(Math.min(...onFold)).toBeCloseTo(point.y - 7 / Math.sin(half), 5);
  });
  test('has a facing on the fold, as long there as its width over the sine of half its angle', () => {
    const run = foundRun('steep-v-on-demo');
    const facing = pieceNamed(run.altered, 'front facing');
    // The V is 140 mm deep below a neck point 124 mm above and 110 mm out.
    const half = Math.atan2(110, 140 + 124);
    expect(foldEdgeOf(facing)?.name).toBe('centre-front');
    expect(lengthOf(run, 'front facing', 'centre-front')).toBeCloseTo(60 / Math.sin(half), 2);
    expect(copiesInGarment(facing)).toBe(2);
  });
});

test('what a piece was made as is still known when its pattern is read again', () => {
  const run = foundRun('roles-lost-on-rereading');
  const roles = Object.fromEntries(run.altered.pieces.filter(p => p.madeFor).map(p => [p.name, p.role]));
  expect(roles).toMatchObject({ 'shoulder stay': 'stay', 'neck facing front': 'facing' });
});
