import { raiseNeckline, wrapOver } from '@paperhinge/alter/edges';
import { at, edgeNamed, edgePath, pieceNamed, validatePattern, walkSeams } from '@paperhinge/geometry';
import { endTangent, pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';
import { anyBodice, areaOf, lengthOf, mirrorImage, only, patternOf } from '../hinge/pieces.js';

describe('a front that wraps over', () => {
  const wrap = (changes = {}) =>
    wrapOver(shiftPattern(), { piece: 'front', edge: 'centre-front', by: 90, depth: 300, ...changes });
  test('has its neck straight from the shoulder to beyond the centre', () => {
    const [before, after] = [shiftPattern(), wrap().pattern].map(p => pieceNamed(p, 'front'));
    const neck = edgePath(after!, 'neck');
    expect(neck.segments).toHaveLength(1);
    expect(pathEnd(neck)).toEqual(pathStart(edgePath(before!, 'shoulder')));
    const top = pathEnd(edgePath(before!, 'centre-front'));
    expect(distance(pathStart(neck), at(top.x - 90, top.y + 300))).toBeLessThan(1e-9);
    validatePattern(wrap().pattern);
  });
  test('runs down parallel to the centre, which stays as a line, and is cut as a pair', () => {
    const after = pieceNamed(wrap().pattern, 'front');
    const front = edgePath(after, 'centre-front');
    expect(pathStart(front).x).toBeCloseTo(pathEnd(front).x, 9);
    expect(edgeNamed(after, 'centre-front')).toMatchObject({ kind: 'seam', role: 'opening' });
    expect(after.lines.find(l => l.role === 'centre')).toMatchObject({ name: 'centre-front' });
    expect(after.cutting).toMatchObject({ count: 2, mirrored: true });
    expect(lengthOf(after, 'hem')).toBeCloseTo(lengthOf(pieceNamed(shiftPattern(), 'front'), 'hem') + 90, 3);
  });
  test('is the same, mirrored, on a piece that is turned over', () => {
    fc.assert(
      fc.property(anyBodice, piece => {
        const wish = { piece: 'block', edge: 'centre', by: 70, depth: 180 };
        const [right, left] = [piece, mirrorImage(piece)].map(p =>
          only(wrapOver(patternOf(p), wish).pattern),
        );
        validatePattern(patternOf(left!));
        expect(areaOf(left!)).toBeCloseTo(areaOf(right!), 4);
        expect(lengthOf(left!, 'neck')).toBeCloseTo(lengthOf(right!, 'neck'), 6);
      }),
      { numRuns: 20 },
    );
  });
  test('is refused at an edge that does not come to the neck, or deeper than the centre', () => {
    expect(refusalOf(() => wrap({ depth: 900 })).code).toBe('wrap-too-deep');
    expect(refusalOf(() => wrap({ edge: 'hem' })).code).toBe('stand-edge-bent');
    expect(refusalOf(() => wrap({ edge: 'shoulder', depth: 20 })).code).toBe('wrap-not-at-neck');
    expect(
      refusalOf(() => wrapOver(shiftPattern(), { piece: 'sleeve', edge: 'underarm-back', by: 9, depth: 9 }))
        .code,
    ).toBe('wrap-not-at-neck');
  });
});

describe('a neckline raised', () => {
  const raise = (by = 45) => raiseNeckline(shiftPattern(), { pieces: ['front', 'back'], by });
  test('stands up by so much at centre and shoulder, level at both ends', () => {
    const [before, after] = [shiftPattern(), raise().pattern].map(p => pieceNamed(p, 'front'));
    expect(lengthOf(after!, 'centre-front')).toBeCloseTo(lengthOf(before!, 'centre-front') + 45, 9);
    const neck = edgePath(after!, 'neck');
    const was = edgePath(before!, 'neck');
    expect(distance(pathEnd(neck), at(pathEnd(was).x, pathEnd(was).y - 45))).toBeLessThan(1e-9);
    expect(Math.abs(startTangent(neck).y)).toBeLessThan(1e-9);
    expect(Math.abs(endTangent(neck).y)).toBeLessThan(1e-9);
  });
  test('leaves the shoulders matching, and nothing else changed', () => {
    const before = shiftPattern();
    const { pattern } = raise();
    validatePattern(pattern);
    expect(walkSeams(pattern).find(w => w.seam === 'shoulder')!.matches).toBe(true);
    for (const name of ['front', 'back'])
      expect(lengthOf(pieceNamed(pattern, name), 'armhole')).toBeCloseTo(
        lengthOf(pieceNamed(before, name), 'armhole'),
        9,
      );
  });
  test('on any bodice, either way round, is sound', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 5, max: 70, noNaN: true }), (piece, by) => {
        const [right, left] = [piece, mirrorImage(piece)].map(p =>
          only(raiseNeckline(patternOf(p), { pieces: ['block'], by }).pattern),
        );
        validatePattern(patternOf(left!));
        expect(areaOf(left!)).toBeCloseTo(areaOf(right!), 4);
        expect(areaOf(right!)).toBeGreaterThan(areaOf(piece));
      }),
      { numRuns: 20 },
    );
  });
  test('says that it must still pass over the head; a whole piece is refused', () => {
    expect(toldDid(raise())).toMatch(/was raised by 45 mm; .* It must still pass over the head, or open\.$/);
    expect(refusalOf(() => raiseNeckline(shiftPattern(), { pieces: ['sleeve'], by: 5 })).code).toBe(
      'no-neck',
    );
  });
});
