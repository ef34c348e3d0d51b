import { draftHood, draftLining } from '@paperhinge/alter/made';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const along = [
  { piece: 'front', edge: 'neck' },
  { piece: 'back', edge: 'neck' },
];
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const walked = (pattern: Pattern, name: string) =>
  walkSeam(pattern, pattern.seams.find(s => s.name === name)!);

describe('a hood', () => {
  // Property: whatever its size, its neck edge is half the neck, its face upright and as high as asked.
  test('stands on half the neck, and the walk proves it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 320, max: 420 }),
        fc.integer({ min: 220, max: 300 }),
        fc.integer({ min: 0, max: 40 }),
        (height, depth, rise) => {
          const { pattern } = draftHood(shiftPattern(), { name: 'hood', along, height, depth, rise });
          validatePattern(pattern);
          const half = lengthOf(pattern, 'front', 'neck') + lengthOf(pattern, 'back', 'neck');
          expect(lengthOf(pattern, 'hood', 'neck')).toBeCloseTo(half, 6);
          expect(lengthOf(pattern, 'hood', 'face')).toBeCloseTo(height, 9);
          const neck = edgePath(pieceNamed(pattern, 'hood'), 'neck');
          expect(Math.abs(pathStart(neck).y - pathEnd(neck).y)).toBeCloseTo(rise, 9);
          expect(walked(pattern, 'hood').matches).toBe(true);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('says what children’s hoods must not have', () => {
    const { findings } = draftHood(shiftPattern(), { name: 'hood', along, height: 350, depth: 260 });
    expect(findings.map(f => f.code)).toContain('hood-without-cords');
  });

  test('too small to stand on its neck is refused, a larger one is taken', () => {
    const wish = { name: 'hood', along, height: 150, depth: 260 };
    expect(refusalOf(() => draftHood(shiftPattern(), wish))).toMatchObject({
      code: 'hood-too-small',
      remedy: expect.stringContaining('higher'),
    });
    expect(() => draftHood(shiftPattern(), { ...wish, height: 350 })).not.toThrow();
  });
});

describe('a lining', () => {
  test('is its pieces, shorter, of the lining cloth, and sewn as they are', () => {
    const before = shiftPattern();
    const done = draftLining(before, { pieces: ['front', 'back'], shorter: 20 });
    validatePattern(done.pattern);
    expect(pieceNamed(done.pattern, 'front lining')).toMatchObject({
      role: 'lining',
      cutting: { fabric: 'lining' },
    });
    expect(lengthOf(done.pattern, 'front lining', 'armhole')).toBeCloseTo(
      lengthOf(before, 'front', 'armhole'),
      9,
    );
    expect(lengthOf(done.pattern, 'front lining', 'centre-front')).toBeCloseTo(
      lengthOf(before, 'front', 'centre-front') - 20,
      6,
    );
    for (const seam of ['lining shoulder', 'lining side'])
      expect(walked(done.pattern, seam).matches).toBe(true);
    expect(toldDid(done)).toMatch(
      /^The front lining and the back lining were traced, 20 mm shorter; 2 seams go/,
    );
  });

  // The fold moves out by half the pleat: neck and hem are that much longer, within the hem's slope.
  test('has half its ease pleat beyond the fold at the back alone', () => {
    const before = shiftPattern();
    const { pattern } = draftLining(before, { pieces: ['front', 'back'], shorter: 0, pleat: 40 });
    expect(lengthOf(pattern, 'back lining', 'neck') - lengthOf(before, 'back', 'neck')).toBeCloseTo(20, 1);
    expect(lengthOf(pattern, 'front lining', 'neck')).toBeCloseTo(lengthOf(before, 'front', 'neck'), 9);
    expect(pieceNamed(pattern, 'back lining').notches).toContainEqual(
      expect.objectContaining({ name: 'ease pleat', edge: 'neck', at: 20 }),
    );
  });
});
