import { letOut } from '@paperhinge/alter/edges';
import { separatePair, unfold } from '@paperhinge/alter/seams';
import { type Pattern, pieceNamed, validatePattern, walkSeam, walkSeams } from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { demoPattern } from '../../support/demo-pattern.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const trousers = demoPattern('trousers');
const areaOf = (pattern: Pattern, piece: string): number =>
  signedArea(outlinePath(pieceNamed(pattern, piece).outline));
const labels = (pattern: Pattern, name: string) => {
  const { a, b } = pattern.seams.find(seam => seam.name === name)!;
  return [a, b].map(side => side.map(run => `${run.piece}.${run.edge}${run.reversed ? ' back' : ''}`));
};

describe('a pair that is separated', () => {
  const done = separatePair(trousers, { piece: 'front', name: 'other front' });

  test('is two pieces of one size, the second a mirror image, each cut once with its right side up', () => {
    validatePattern(done.pattern);
    expect(areaOf(done.pattern, 'other front')).toBeCloseTo(areaOf(trousers, 'front'), 6);
    for (const piece of ['front', 'other front'])
      expect(pieceNamed(done.pattern, piece).cutting).toMatchObject({
        count: 1,
        mirrored: false,
        rightSideUp: true,
      });
    expect(toldDid(done)).toBe(
      'The front and the other front, its mirror image, are pieces of their own now, each cut once with its right side up.',
    );
  });

  test('has its centre seam from one to the other, and all else once on each', () => {
    expect(labels(done.pattern, 'front crotch')).toEqual([['front.crotch back'], ['other front.crotch']]);
    expect(labels(done.pattern, 'other inseam')).toEqual([['other front.inseam back'], ['back.inseam']]);
    expect(labels(done.pattern, 'waist')[1]).toEqual([
      'front.waist',
      'back.waist back',
      'back.waist',
      'other front.waist',
    ]);
    for (const walk of walkSeams(done.pattern)) expect(walk.matches, walk.seam).toBe(true);
  });

  test('with its partner too, sews left to left and right to right: edges that run against one another', () => {
    const both = separatePair(done.pattern, { piece: 'back', name: 'other back' }).pattern;
    expect(labels(both, 'outseam')).toEqual([['front.outseam'], ['other back.outseam back']]);
    expect(labels(both, 'other outseam')).toEqual([['other front.outseam back'], ['back.outseam']]);
    const wider = letOut(both, { seam: 'outseam', by: 20 }).pattern;
    expect(areaOf(wider, 'front')).toBeGreaterThan(areaOf(both, 'front'));
    expect(areaOf(wider, 'other front')).toBeCloseTo(areaOf(both, 'other front'), 6);
    expect(walkSeam(wider, wider.seams.find(s => s.name === 'other outseam')!).matches).toBe(true);
  });

  test('carries its notches to the mirrored places', () => {
    const { pattern } = separatePair(shiftPattern(), { piece: 'sleeve', name: 'left sleeve' });
    const [own, other] = ['sleeve', 'left sleeve'].map(name => pieceNamed(pattern, name).notches);
    expect(other).toHaveLength(own!.length);
    validatePattern(pattern);
    for (const walk of walkSeams(pattern)) expect(walk.matches, walk.seam).toBe(true);
  });
});

describe('what is refused, and mended by its remedy', () => {
  test('a piece on the fold, or cut once', () => {
    const { code, remedy } = refusalOf(() => separatePair(shiftPattern(), { piece: 'front', name: 'left' }));
    expect([code, remedy]).toEqual(['pair-needed', 'Open a piece on the fold out instead, with "unfold".']);
    validatePattern(unfold(shiftPattern(), { piece: 'front' }).pattern);
  });
  test('a name that is taken', () => {
    expect(refusalOf(() => separatePair(trousers, { piece: 'front', name: 'back' })).code).toBe(
      'piece-name-taken',
    );
  });
});
