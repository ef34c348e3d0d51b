import { orderOfWork } from '@paperhinge/alter';
import { recutNeckline } from '@paperhinge/alter/edges';
import { draftFacing, draftInterfacing, refresh } from '@paperhinge/alter/made';
import {
  checkPattern,
  edgeNamed,
  edgeNames,
  type Piece,
  pathLength,
  pieceNamed,
  validatePattern,
} from '@paperhinge/geometry';
import { foldEdgeOf, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPattern } from '../../support/demo-pattern.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, sentence, toldDid } from '../../support/told.js';

const areaOf = (piece: Piece): number => signedArea(outlinePath(piece.outline));
const trousers = demoPattern('trousers');
const wish = { name: 'waistband interfacing', piece: 'waistband' };

describe('interfacing', () => {
  // Hand sum: the waistband is 802.125 × 80; 2 inside it all round leaves 798.125 × 76.
  test('is trimmed inside the stitching line, without allowances', () => {
    const done = draftInterfacing(trousers, { ...wish, inside: 2 });
    validatePattern(done.pattern);
    const piece = pieceNamed(done.pattern, wish.name);
    expect(areaOf(piece)).toBeCloseTo(798.125 * 76, 6);
    expect(edgeNames(piece).map(edge => edgeNamed(piece, edge).allowance)).toEqual([0, 0, 0, 0]);
    expect(piece).toMatchObject({ role: 'interfacing', cutting: { count: 1, fabric: 'interfacing' } });
    expect(piece.lines.map(l => l.kind)).toEqual(['fold', 'grain']);
    expect(toldDid(done)).toBe(
      'The waistband interfacing was traced from the waistband, 2 mm inside the stitching line, without allowances; cut 1, instead of the waistband cut of that cloth besides.',
    );
    expect(pieceNamed(done.pattern, 'waistband').alsoCut).toBeUndefined();
    expect(checkPattern(done.pattern).filter(f => f.severity === 'fault')).toEqual([]);
  });

  test('else has the outline, notches and allowances of its piece, and its fold', () => {
    const along = [{ piece: 'front', edge: 'neck' }];
    const faced = draftFacing(shiftPattern(), { name: 'facing', along, width: 60 }).pattern;
    const facing = pieceNamed(faced, 'facing');
    const piece = pieceNamed(
      draftInterfacing(faced, { name: 'backing', piece: 'facing', count: 3, fabric: 'canvas' }).pattern,
      'backing',
    );
    expect(areaOf(piece)).toBeCloseTo(areaOf(facing), 9);
    expect(edgeNames(piece)).toEqual(edgeNames(facing));
    expect(edgeNamed(piece, 'neck').allowance).toBe(edgeNamed(facing, 'neck').allowance);
    expect(foldEdgeOf(piece)?.name).toBe(foldEdgeOf(facing)?.name);
    expect(piece.notches).toEqual(facing.notches);
    expect(piece.cutting).toEqual({ count: 3, mirrored: false, fabric: 'canvas' });
  });

  // Property: trimmed, it ends everywhere so far inside but at the fold, where it goes on.
  test('keeps its distance from what it backs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 120, max: 180 }), (inside, depth) => {
        const before = recutNeckline(shiftPattern(), { piece: 'front', shape: 'round', depth }).pattern;
        const { pattern } = draftInterfacing(before, { name: 'backing', piece: 'front', inside });
        validatePattern(pattern);
        const [own, of] = [pieceNamed(pattern, 'backing'), pieceNamed(pattern, 'front')];
        expect(areaOf(own)).toBeLessThan(areaOf(of));
        const [shorter, longer] = [own, of].map(piece => pathLength(foldEdgeOf(piece)!.path));
        expect(longer! - shorter!).toBeCloseTo(2 * inside, 3);
      }),
      { numRuns: 15 },
    );
  });

  test('is fused before its piece is sewn, and its darts are not sewn by themselves', () => {
    const { pattern, derived } = draftInterfacing(trousers, { name: 'back interfacing', piece: 'back' });
    const { order } = orderOfWork(pattern, derived ?? [], []);
    const jobs = order.map(o => o.job);
    expect(jobs.indexOf('fuse back interfacing')).toBeLessThan(jobs.indexOf('dart back'));
    expect(jobs.indexOf('fuse back interfacing')).not.toBe(-1);
    expect(jobs.filter(job => job.startsWith('dart'))).toEqual(['dart back']);
    expect(order.map(o => sentence(o.text))).toContain('Fuse the back interfacing to the back.');
    // As read again from a file, without what this run drafted.
    expect(orderOfWork(pattern, [], []).order.map(o => o.job)).toEqual(jobs);
  });

  test('is traced again when its piece has changed', () => {
    const traced = draftInterfacing(shiftPattern(), { name: 'backing', piece: 'front', inside: 3 }).pattern;
    const recut = recutNeckline(traced, { piece: 'front', shape: 'round', depth: 180 }).pattern;
    const again = refresh(recut).pattern;
    const fresh = draftInterfacing(recut, { name: 'anew', piece: 'front', inside: 3 }).pattern;
    expect(areaOf(pieceNamed(again, 'backing'))).toBeCloseTo(areaOf(pieceNamed(fresh, 'anew')), 6);
    expect(areaOf(pieceNamed(again, 'backing'))).not.toBeCloseTo(areaOf(pieceNamed(recut, 'backing')), 0);
  });

  test('that lies so far inside that nothing is left is refused, and less is done', () => {
    const error = refusalOf(() => draftInterfacing(trousers, { ...wish, inside: 45 }));
    expect(error).toMatchObject({
      code: 'interfacing-too-far-inside',
      remedy: expect.stringContaining('less'),
    });
    expect(draftInterfacing(trousers, { ...wish, inside: 3 }).derived).toHaveLength(1);
    expect(refusalOf(() => draftInterfacing(trousers, { ...wish, piece: 'band' })).code).toBe(
      'unknown-piece',
    );
  });
});
