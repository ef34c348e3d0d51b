import { lengthen } from '@paperhinge/alter/length';
import { draftPatchPocket, draftSeamPocket, refresh } from '@paperhinge/alter/made';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf } from '../../support/told.js';

const patch = {
  name: 'pocket',
  piece: 'front',
  width: 110,
  height: 125,
  beside: { edge: 'centre-front', at: { mm: 400, from: 'hem' }, in: 110 },
} as const;
const areaOf = (pattern: Pattern, piece: string): number =>
  Math.abs(signedArea(outlinePath(pieceNamed(pattern, piece).outline)));

describe('a patch pocket', () => {
  // Square: 110 × 125. Round by r: less (4 − π) r² / 2. Pointed by p: less w p / 2.
  test.each([
    ['square', 110 * 125],
    ['round', 110 * 125 - ((4 - Math.PI) * 20 * 20) / 2],
    ['pointed', 110 * 125 - (110 * 20) / 2],
  ] as const)('with %s corners has its area', (corners, area) => {
    const { pattern } = draftPatchPocket(shiftPattern(), { ...patch, corners });
    expect(Math.abs(areaOf(pattern, 'pocket') - area)).toBeLessThan(0.01);
    expect(pieceNamed(pattern, 'pocket')).toMatchObject({ role: 'pocket', cutting: { count: 1 } });
    expect(() => validatePattern(pattern)).not.toThrow();
  });

  test('is drawn on its piece, as long as its own line, and the piece keeps its outline', () => {
    const before = shiftPattern();
    const { pattern } = draftPatchPocket(before, { ...patch, corners: 'round' });
    const front = pieceNamed(pattern, 'front');
    expect(front.outline).toBe(pieceNamed(before, 'front').outline);
    const placed = front.lines.find(l => l.name === 'pocket')!;
    expect(placed.kind).toBe('placement');
    expect(pathLength(placed.path)).toBeCloseTo(
      pathLength(edgePath(pieceNamed(pattern, 'pocket'), 'round')),
      6,
    );
  });

  test('that would not lie within its piece is refused; farther in it is taken', () => {
    const at = (mm: number) => () =>
      draftPatchPocket(shiftPattern(), { ...patch, beside: { ...patch.beside, in: mm } });
    expect(refusalOf(at(30))).toMatchObject({
      code: 'pocket-off-piece',
      remedy: expect.stringContaining('farther'),
    });
    expect(at(110)).not.toThrow();
  });

  test('with corners larger than itself is refused', () => {
    expect(
      refusalOf(() => draftPatchPocket(shiftPattern(), { ...patch, corners: 'round', by: 60 })),
    ).toMatchObject({
      code: 'pocket-corners-too-large',
      remedy: 'Round them by 55 mm at most.',
    });
  });
});

describe('an in-seam pocket', () => {
  // Property: wherever it lies, the seam and the pocket together take all that the seam took before.
  test('leaves its mouth open on both sides, and every seam still walks', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 450 }), fc.integer({ min: 120, max: 200 }), (from, mouth) => {
        const before = shiftPattern();
        const was = walkSeam(before, before.seams.find(s => s.name === 'side')!);
        const { pattern } = draftSeamPocket(before, { name: 'pocket', seam: 'side', from, mouth });
        validatePattern(pattern);
        const walked = (name: string) => walkSeam(pattern, pattern.seams.find(s => s.name === name)!);
        expect(walked('side').aMm).toBeCloseTo(was.aMm - mouth, 6);
        for (const name of ['side', 'pocket front', 'pocket back', 'pocket bag'])
          expect(walked(name).matches, name).toBe(true);
        expect(walked('pocket front').aMm).toBeCloseTo(mouth, 6);
      }),
      { numRuns: 30 },
    );
  });

  test('has two bags for each side of the garment', () => {
    const { pattern } = draftSeamPocket(shiftPattern(), { name: 'pocket', seam: 'side', from: 200 });
    expect(pieceNamed(pattern, 'pocket front').cutting).toMatchObject({ count: 2, mirrored: true });
    expect(pieceNamed(pattern, 'pocket back').cutting).toMatchObject({ count: 2, mirrored: true });
  });

  test('whose mouth ends beyond the seam is refused', () => {
    const work = () => draftSeamPocket(shiftPattern(), { name: 'pocket', seam: 'side', from: 600 });
    expect(refusalOf(work)).toMatchObject({
      code: 'mouth-beyond-seam',
      remedy: expect.stringContaining('higher up'),
    });
  });
});

test('a pocket in a seam that has grown longer is drafted again, its old mouth closed and a new one left', () => {
  const before = shiftPattern();
  const drafted = draftSeamPocket(before, { name: 'pocket', seam: 'side', from: 260 }).pattern;
  const longer = lengthen(drafted, { pieces: ['front', 'back'], at: 'waist', by: 20 }).pattern;
  const again = refresh(longer).pattern;
  const fresh = draftSeamPocket(
    lengthen(before, { pieces: ['front', 'back'], at: 'waist', by: 20 }).pattern,
    {
      name: 'pocket',
      seam: 'side',
      from: 260,
    },
  ).pattern;
  const seam = (pattern: Pattern, name: string) =>
    walkSeam(pattern, pattern.seams.find(s => s.name === name)!);
  for (const name of ['side', 'pocket front', 'pocket back', 'pocket bag']) {
    expect(seam(again, name).matches).toBe(true);
    expect(seam(again, name).aMm).toBeCloseTo(seam(fresh, name).aMm, 6);
  }
  expect(again.seams.length).toBe(fresh.seams.length);
});
