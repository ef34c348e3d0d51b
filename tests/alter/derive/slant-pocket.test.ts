import { readFileSync } from 'node:fs';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  readPattern,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draftSlantPocket } from '../../../packages/alter/src/derive/draft-slant-pocket.js';
import { refusalOf } from '../../support/told.js';

const trousers: Pattern = readPattern(
  readFileSync(new URL('../../../demos/patterns/trousers.svg', import.meta.url), 'utf8'),
  { file: 'trousers.svg' },
).pattern;
const wish = { name: 'slant', piece: 'front', waist: 'waist', side: 'outseam' } as const;
const areaOf = (pattern: Pattern, piece: string): number =>
  Math.abs(signedArea(outlinePath(pieceNamed(pattern, piece).outline)));
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

// Property: what the front loses is what the side piece has more than the facing; every seam that sewed still does.
test('the side piece has the corner that was cut off, and every seam sews', () => {
  fc.assert(
    fc.property(fc.integer({ min: 25, max: 60 }), fc.integer({ min: 120, max: 200 }), (inMm, down) => {
      const { pattern } = draftSlantPocket(trousers, { ...wish, in: inMm, down });
      validatePattern(pattern);
      const lost = areaOf(trousers, 'front') - areaOf(pattern, 'front');
      expect(areaOf(pattern, 'slant side') - areaOf(pattern, 'slant facing')).toBeCloseTo(lost, 1);
      for (const seam of pattern.seams) expect(walkSeam(pattern, seam).matches, seam.name).toBe(true);
      expect(lengthOf(pattern, 'front', 'outseam')).toBeCloseTo(
        lengthOf(trousers, 'front', 'outseam') - down,
        6,
      );
      expect(lengthOf(pattern, 'front', 'waist')).toBeCloseTo(lengthOf(trousers, 'front', 'waist') - inMm, 6);
    }),
    { numRuns: 15 },
  );
});

test('both its pieces are cut as often as the front', () => {
  const { pattern } = draftSlantPocket(trousers, wish);
  const { count, mirrored } = pieceNamed(trousers, 'front').cutting;
  for (const name of ['slant side', 'slant facing'])
    expect(pieceNamed(pattern, name)).toMatchObject({ role: 'pocket', cutting: { count, mirrored } });
});

test('edges that do not meet, and a pocket larger than its edges, are refused with what mends them', () => {
  expect(refusalOf(() => draftSlantPocket(trousers, { ...wish, side: 'hem' }))).toMatchObject({
    code: 'corner-not-there',
    remedy: expect.stringContaining('meet'),
  });
  expect(refusalOf(() => draftSlantPocket(trousers, { ...wish, depth: 300 }))).toMatchObject({
    code: 'pocket-beyond-edge',
    remedy: expect.stringContaining('smaller'),
  });
  expect(() => draftSlantPocket(trousers, { ...wish, depth: 100 })).not.toThrow();
});
