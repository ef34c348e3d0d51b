import { shorten } from '@paperhinge/alter/length';
import { draftStrip } from '@paperhinge/alter/made';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refit } from '../../../packages/alter/src/fit/adjust/refit.js';
import { shapeSleeve } from '../../../packages/alter/src/operations/shape-sleeve.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const lengthOf = (pattern: Pattern, edge: string, piece = 'sleeve'): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const seamOf = (pattern: Pattern, name: string) =>
  walkSeam(pattern, pattern.seams.find(s => s.name === name)!);

describe('a sleeve with fullness', () => {
  // Property: each slash is bridged by its share, so that the edge that opens is longer by the whole amount.
  test.each([
    ['bell', 'hem', 'cap'],
    ['bishop', 'hem', 'cap'],
    ['puff', 'cap', 'hem'],
  ] as const)('%s: its %s is longer by the fullness, its %s as it was', (into, opens, stays) => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 160 }), fc.integer({ min: 1, max: 6 }), (by, slashes) => {
        const before = shiftPattern();
        const { pattern } = shapeSleeve(before, { piece: 'sleeve', into, by, slashes });
        validatePattern(pattern);
        expect(lengthOf(pattern, opens) - lengthOf(before, opens)).toBeCloseTo(by, 6);
        expect(lengthOf(pattern, stays)).toBeCloseTo(lengthOf(before, stays), 6);
        expect(seamOf(pattern, 'underarm').matches).toBe(true);
      }),
      { numRuns: 12 },
    );
  });

  test('a flutter sleeve is short at the underarm first, and wide at the hem then', () => {
    const before = shiftPattern();
    const short = shapeSleeve(before, { piece: 'sleeve', into: 'flutter', by: 1, slashes: 1 }).pattern;
    for (const underarm of ['underarm-front', 'underarm-back'])
      expect(Math.abs(lengthOf(short, underarm) - 25)).toBeLessThan(0.5);
    const wide = shapeSleeve(before, { piece: 'sleeve', into: 'flutter', by: 160, underarm: 60 }).pattern;
    validatePattern(wide);
    expect(Math.abs(lengthOf(wide, 'underarm-front') - 60)).toBeLessThan(0.5);
    expect(lengthOf(wide, 'cap')).toBeCloseTo(lengthOf(before, 'cap'), 6);
    expect(seamOf(wide, 'underarm').matches).toBe(true);
  });

  test('a sleeve cut short has a band drafted to its new hem', () => {
    const short = shorten(shiftPattern(), { pieces: ['sleeve'], at: 'hem', by: 260 }).pattern;
    const along = [{ piece: 'sleeve', edge: 'hem' }];
    const { pattern } = draftStrip(short, { name: 'sleeve band', along, width: 60, join: 10 });
    validatePattern(pattern);
    const band = pieceNamed(pattern, 'sleeve band');
    expect(band.cutting.count).toBe(2);
    expect(seamOf(pattern, pattern.seams.at(-1)!.name).matches).toBe(true);
  });

  test('a puff that is raised is gathered into its armhole by all that it is longer', () => {
    const { pattern } = shapeSleeve(shiftPattern(), { piece: 'sleeve', into: 'puff', by: 100, drop: 20 });
    expect(seamOf(pattern, 'armhole')).toMatchObject({ matches: true, takenUp: 'gathered' });
    expect(seamOf(pattern, 'armhole').differenceMm).toBeGreaterThan(112);
  });

  test('a piece without a cap is refused', () => {
    expect(
      refusalOf(() => shapeSleeve(shiftPattern(), { piece: 'front', into: 'bell', by: 50 })),
    ).toMatchObject({
      code: 'no-cap',
    });
  });
});

describe('refitted for another cloth', () => {
  test('for a knit: sides in, dart to ease, armhole up, and a knit’s ease in the cap; every seam sews', () => {
    const before = shiftPattern();
    const done = refit(before, { for: 'knit', by: 60 });
    validatePattern(done.pattern);
    for (const name of ['side', 'armhole', 'underarm', 'shoulder'])
      expect(seamOf(done.pattern, name).matches, name).toBe(true);
    expect(seamOf(done.pattern, 'armhole').differenceMm).toBeCloseTo(6, 2);
    expect(pieceNamed(done.pattern, 'front').outline.parts.some(part => part.type === 'dart')).toBe(false);
  });

  test('accounts for every change in its sentence', () => {
    const said = toldDid(refit(shiftPattern(), { for: 'knit', by: 60 }));
    for (const words of [
      'side seam was taken in by 60 mm',
      'armhole of',
      'into ease',
      'cap of the sleeve',
      '6 mm of ease',
    ])
      expect(said).toContain(words);
  });

  test('for woven cloth: the armhole is longer and the cap has a set-in sleeve’s ease', () => {
    const before = shiftPattern();
    const { pattern } = refit(before, { for: 'woven', by: 40 });
    expect(lengthOf(pattern, 'armhole', 'front')).toBeGreaterThan(lengthOf(before, 'armhole', 'front'));
    expect(seamOf(pattern, 'armhole')).toMatchObject({ matches: true, differenceMm: expect.closeTo(25, 2) });
  });
});
