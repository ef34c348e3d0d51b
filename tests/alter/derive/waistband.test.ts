import { draftCuff, draftWaistband } from '@paperhinge/alter/made';
import {
  at,
  definePattern,
  definePiece,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  polyline,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { nearestOnPath, pointAlong } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

/** A skirt of two halves on the fold: waists of 170 and 190 mm, 720 all round. */
const half = (name: string, waist: number) =>
  definePiece({
    name,
    outline: [
      { name: 'waist', path: polyline(at(0, 0), at(waist, 0)), allowance: 15 },
      { name: 'side', path: polyline(at(waist, 0), at(waist + 30, 500)), allowance: 15 },
      { name: 'hem', kind: 'hem', path: polyline(at(waist + 30, 500), at(0, 500)), allowance: 40 },
      { name: 'centre', kind: 'fold', path: polyline(at(0, 500), at(0, 0)) },
    ],
  });
const skirt: Pattern = definePattern({
  name: 'skirt',
  pieces: [half('front', 190), half('back', 170)],
  seams: [
    {
      name: 'side',
      a: [{ piece: 'front', edge: 'side', reversed: false }],
      b: [{ piece: 'back', edge: 'side', reversed: false }],
      ease: { mm: 0 },
    },
  ],
});
const along = [
  { piece: 'front', edge: 'waist' },
  { piece: 'back', edge: 'waist' },
];
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const seamOf = (pattern: Pattern, name: string) =>
  walkSeam(pattern, pattern.seams.find(s => s.name === name)!);

describe('a straight waistband', () => {
  // 2 × (190 + 170) = 720; cut 720 + 30 + 2 × 15 by 2 × 35 + 2 × 15.
  test('is as long as the waist all round with its underlap, twice its width, and its allowances', () => {
    const done = draftWaistband(skirt, { name: 'band', along, width: 35, underlap: 30 });
    expect(done.derived![0]).toMatchObject({ lengthMm: 780, widthMm: 100, edgeMm: 720 });
    expect(lengthOf(done.pattern, 'band', 'sewn')).toBeCloseTo(720, 9);
    expect(lengthOf(done.pattern, 'band', 'free')).toBeCloseTo(750, 9);
    expect(pieceNamed(done.pattern, 'band').alsoCut).toEqual([
      { count: 1, mirrored: false, fabric: 'interfacing' },
    ]);
    expect(toldDid(done)).toBe(
      'The band was drafted for 720 mm of edge: 720 mm when finished, and 30 mm to underlap; cut 780 mm × 100 mm, to be folded lengthwise.',
    );
  });

  test('the walk proves it, with its notches where the seams meet it', () => {
    const { pattern } = draftWaistband(skirt, { name: 'band', along, width: 35, underlap: 30 });
    expect(seamOf(pattern, 'band')).toMatchObject({ matches: true, aMm: 720, bMm: 720 });
    const at = pieceNamed(pattern, 'band').notches.map(n => n.at);
    // From the centre back: the side after 170, the front's fold after 190 more, the other side.
    expect(at).toEqual([170, 360, 550].map(mm => expect.closeTo(mm, 9)));
    expect(() => validatePattern(pattern)).not.toThrow();
  });

  test('a shorter one takes the waist up, and the seam says by how much and how', () => {
    const { pattern } = draftWaistband(skirt, {
      name: 'band',
      along,
      width: 35,
      length: 600,
      takenUp: 'gathered',
    });
    const seam = pattern.seams.find(s => s.name === 'band')!;
    expect(seam).toMatchObject({ ease: { mm: -120 }, takenUp: 'gathered' });
    expect(walkSeam(pattern, seam).matches).toBe(true);
  });

  test('without laps its ends are sewn into a ring', () => {
    const { pattern } = draftWaistband(skirt, { name: 'band', along, width: 35 });
    expect(pattern.seams.map(s => s.name)).toContain('band join');
  });
});

describe('a shaped waistband', () => {
  // Property: both edges of the part of a ring are as long as asked for, and everywhere its width apart.
  test('has both lengths, and its width everywhere', () => {
    fc.assert(
      fc.property(fc.integer({ min: 640, max: 790 }), fc.integer({ min: 30, max: 80 }), (farEdge, width) => {
        const { pattern } = draftWaistband(skirt, { name: 'band', along, width, farEdge, underlap: 20 });
        const band = pieceNamed(pattern, 'band');
        expect(lengthOf(pattern, 'band', 'sewn')).toBeCloseTo(720, 3);
        expect(lengthOf(pattern, 'band', 'free')).toBeCloseTo((740 * farEdge) / 720, 3);
        const sewn = edgePath(band, 'sewn'),
          free = edgePath(band, 'free');
        for (const share of [0.2, 0.5, 0.8]) {
          const place = pointAlong(sewn, share * pathLength(sewn));
          expect(nearestOnPath(free, place).distance).toBeCloseTo(width, 3);
        }
        expect(band.cutting).toMatchObject({ count: 2, layers: 2 });
        expect(seamOf(pattern, 'band').matches).toBe(true);
      }),
    );
  });

  test('cannot be folded, and does not run more than half round', () => {
    const folded = refusalOf(() =>
      draftWaistband(skirt, { name: 'band', along, width: 40, farEdge: 690, cut: 'folded' }),
    );
    expect(folded).toMatchObject({
      code: 'shaped-band-folded',
      remedy: expect.stringContaining('in two layers'),
    });
    const steep = refusalOf(() => draftWaistband(skirt, { name: 'band', along, width: 20, farEdge: 500 }));
    expect(steep).toMatchObject({ code: 'shaped-band-too-steep', remedy: expect.stringContaining('720 mm') });
  });
});

describe('cuffs', () => {
  test('are a pair, gathered to, each with its overlap', () => {
    const { pattern, derived } = draftCuff(shiftPattern(), {
      name: 'cuff',
      along: [{ piece: 'sleeve', edge: 'hem' }],
      width: 60,
      length: 200,
      overlap: 20,
      takenUp: 'gathered',
    });
    expect(pieceNamed(pattern, 'cuff')).toMatchObject({
      role: 'cuff',
      cutting: { count: 2, mirrored: true },
    });
    expect(derived![0]).toMatchObject({ count: 2, kind: 'cuff' });
    expect(seamOf(pattern, 'cuff')).toMatchObject({ matches: true, takenUp: 'gathered', aMm: 200 });
  });
});
