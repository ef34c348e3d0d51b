import { recutNeckline } from '@paperhinge/alter/edges';
import { draftBand, draftCollar, draftFacing, refresh } from '@paperhinge/alter/made';
import { unfold } from '@paperhinge/alter/seams';
import { edgePath, type Pattern, pathLength, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { readSheet, runSheet } from '@paperhinge/sheet';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf } from '../../support/told.js';

const along = [
  { piece: 'front', edge: 'neck' },
  { piece: 'back', edge: 'neck' },
];
const necks = (pattern: Pattern): number =>
  2 * along.reduce((sum, { piece, edge }) => sum + pathLength(edgePath(pieceNamed(pattern, piece), edge)), 0);
const band = { name: 'neckband', along, ratio: 0.8, width: 56, join: 7 };

describe('refresh', () => {
  // Property: drafted again, a band is as long as one drafted only now.
  test('drafts a band again for its edges as they are now', () => {
    fc.assert(
      fc.property(fc.integer({ min: 140, max: 200 }), depth => {
        const drafted = draftBand(shiftPattern(), band).pattern;
        const recut = recutNeckline(drafted, { piece: 'front', shape: 'round', depth }).pattern;
        const { pattern, derived } = refresh(recut, {});
        expect(derived).toHaveLength(1);
        expect(derived![0]!.lengthMm).toBeCloseTo(0.8 * necks(recut) + 14, 6);
        expect(
          walkSeam(
            pattern,
            pattern.seams.find(
              s => s.b.some(r => r.piece === 'neckband') || s.a.some(r => r.piece === 'neckband'),
            )!,
          ).matches,
        ).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  test('knows the edges by the names that they have now', () => {
    const drafted = draftBand(shiftPattern(), band).pattern;
    const whole = unfold(drafted, { piece: 'front' }).pattern;
    const { derived } = refresh(whole, { pieces: ['neckband'] });
    expect(derived![0]!.lengthMm).toBeCloseTo(0.8 * necks(drafted) + 14, 6);
    expect(derived![0]!.along).toEqual(along);
  });

  test('drafts all pieces of one draft at once: a collar with its stand, a facing of two', () => {
    const collar = draftCollar(shiftPattern(), { name: 'collar', along, kind: 'shirt', width: 45 }).pattern;
    const { pattern, derived } = refresh(draftFacing(collar, { name: 'facing', along, width: 60 }).pattern);
    expect(derived!.map(d => d.name)).toEqual(['collar stand', 'collar', 'facing front', 'facing back']);
    expect(pattern.pieces.length).toBe(collar.pieces.length + 2);
  });

  test('in a sheet, what was outgrown no longer is', () => {
    const sheet = (last: string) =>
      readSheet(
        `pattern: p.svg\nsteps:\n  - draft band: { name: neckband, along: [front.neck, back.neck], ratio: 80 %, width: 56, join: 7 }\n  - recut neckline: { piece: front, shape: round, depth: 180 }\n${last}`,
        { file: 'x.yaml' },
      );
    const codes = (last: string) => runSheet(sheet(last), shiftPattern()).findings.map(f => f.code);
    expect(codes('')).toContain('made-for-edge-changed');
    expect(codes('  - refresh: {}\n')).not.toContain('made-for-edge-changed');
  });

  test('a piece that no step drafted is refused, and a pattern without any is told', () => {
    expect(refusalOf(() => refresh(shiftPattern(), { pieces: ['front'] }))).toMatchObject({
      code: 'not-drafted-here',
      remedy: expect.stringContaining('same name'),
    });
    expect(refresh(shiftPattern()).findings.map(f => f.code)).toEqual(['nothing-to-refresh']);
  });
});
