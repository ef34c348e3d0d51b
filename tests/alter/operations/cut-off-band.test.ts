import { cutOffBand } from '@paperhinge/alter/length';
import { joinPieces } from '@paperhinge/alter/seams';
import { at, line, pathOf, pieceNamed, validatePattern, walkSeams } from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';
import { anyBodice, areaOf, edge, lengthOf, patternOf, pieceOf, refusal } from '../hinge/pieces.js';

/** Half a flared panel on the fold: its side leans out by 60 on 600, its hem is straight and square to the fold. */
const panel = () =>
  pieceOf([
    edge('waist', 'seam', line(at(0, 0), at(200, 0))),
    edge('side', 'seam', line(at(200, 0), at(260, 600))),
    edge('hem', 'hem', line(at(260, 600), at(0, 600))),
    edge('centre', 'fold', line(at(0, 600), at(0, 0))),
  ]);
type Given = Parameters<typeof cutOffBand>[1];
const cut = (changes: Partial<Given> = {}, piece = panel()) =>
  cutOffBand(patternOf(piece), {
    edge: { piece: 'block', edge: 'hem' },
    width: 80,
    name: 'band',
    ...changes,
  });

describe('a band cut off along a hem', () => {
  // 80 above the hem the side has come in by 8: the seam is 252 long, the band a trapezium of 256 × 80.
  test('is as wide as asked and as long as the piece is there', () => {
    const done = cut();
    const [rest, band] = ['block', 'band'].map(name => pieceNamed(done.pattern, name));
    expect(lengthOf(band!, 'band')).toBeCloseTo(252, 9);
    expect(areaOf(band!)).toBeCloseTo(256 * 80, 6);
    expect(areaOf(rest!) + areaOf(band!)).toBeCloseTo(areaOf(panel()), 6);
    expect(lengthOf(rest!, 'side') + lengthOf(band!, 'side')).toBeCloseTo(lengthOf(panel(), 'side'), 9);
    expect(lengthOf(band!, 'hem')).toBeCloseTo(260, 9);
    expect(toldDid(done)).toBe(
      'A band 80 mm wide was cut off along the hem of the block: the band, cut 2 times, sewn on in the band seam, 252 mm long.',
    );
  });
  test('is cut twice, its outer edge a seam between the two; or once, with its hem', () => {
    const edgeOf = (pattern: ReturnType<typeof cut>['pattern']) =>
      pieceNamed(pattern, 'band').outline.parts.find(p => p.name === 'hem');
    const twice = cut().pattern;
    expect(pieceNamed(twice, 'band').cutting).toMatchObject({ count: 2, layers: 2 });
    expect(edgeOf(twice)).toMatchObject({ kind: 'seam', allowance: 10 });
    const once = cut({ doubled: false }).pattern;
    expect(pieceNamed(once, 'band').cutting).toMatchObject({ count: 1 });
    expect(edgeOf(once)).toMatchObject({ kind: 'hem' });
  });
  test('off the fold, is cut as a pair, twice', () => {
    const before = shiftPattern();
    const done = cutOffBand(before, { edge: { piece: 'front', edge: 'armhole' }, width: 40, name: 'band' });
    expect(pieceNamed(done.pattern, 'band').cutting).toMatchObject({ count: 4, mirrored: true, layers: 2 });
    expect(done.findings.map(f => toldFinding(f).message)).toContain(
      'The band is no longer on the fold: it is cut 4 times, as a pair.',
    );
  });
  test('joined on again gives back the piece', () => {
    const { pattern } = cut({ doubled: false });
    const joined = joinPieces(pattern, { seam: 'band' }).pattern;
    expect(areaOf(joined.pieces[0]!)).toBeCloseTo(areaOf(panel()), 6);
    expect(lengthOf(joined.pieces[0]!, 'side')).toBeCloseTo(lengthOf(panel(), 'side'), 6);
  });
  test('leaves every seam of a garment as it was', () => {
    const before = shiftPattern();
    const { pattern } = cutOffBand(before, {
      edge: { piece: 'front', edge: 'hem' },
      width: 60,
      name: 'front band',
    });
    const was = new Map(walkSeams(before).map(walk => [walk.seam, walk]));
    for (const walk of walkSeams(pattern)) {
      expect(walk.matches).toBe(true);
      if (was.has(walk.seam)) expect(walk.aMm).toBeCloseTo(was.get(walk.seam)!.aMm, 6);
    }
    expect(walkSeams(pattern).length).toBe(was.size + 1);
  });
  test('along the curved hem of any bodice accounts for all of its area', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 20, max: 70, noNaN: true }), (piece, width) => {
        const { pattern } = cut({ width, doubled: false }, piece);
        validatePattern(pattern);
        const parts = pattern.pieces.map(areaOf);
        expect(parts[0]! + parts[1]!).toBeCloseTo(areaOf(piece), 3);
        expect(lengthOf(pattern.pieces[1]!, 'hem')).toBeCloseTo(lengthOf(piece, 'hem'), 6);
      }),
      { numRuns: 50 },
    );
  });
});

describe('what is refused, each with its remedy', () => {
  test('a band wider than the piece is; narrower mends it', () => {
    expect(() => cut({ width: 700 })).toThrow(refusal('band-too-wide', /narrower/));
    expect(() => cut({ width: 100 })).not.toThrow();
  });
  test('names that are taken', () => {
    expect(() => cut({ name: 'block' })).toThrow(refusal('piece-name-taken'));
    expect(() => cut({ seam: 'side' })).toThrow(refusal('edge-name-taken'));
  });
  test('an edge that a dart parts', () => {
    const parted = pieceOf([
      edge('waist', 'seam', line(at(0, 0), at(80, 0))),
      {
        type: 'dart',
        name: 'waist dart',
        legs: [pathOf(line(at(80, 0), at(90, 100))), pathOf(line(at(90, 100), at(100, 0)))],
        apex: at(90, 100),
      },
      edge('waist', 'seam', line(at(100, 0), at(200, 0))),
      ...panel().outline.parts.slice(1),
    ]);
    const waist = { edge: { piece: 'block', edge: 'waist' } };
    expect(refusalOf(() => cut(waist, parted))).toMatchObject({ code: 'edge-in-two-parts' });
  });
});
