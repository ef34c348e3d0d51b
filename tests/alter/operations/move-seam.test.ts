import { foldToSeam, moveSeam, seamToFold } from '@paperhinge/alter/seams';
import { edgePath, pieceNamed, validatePattern, walkSeams } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, run, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';
import { areaOf, lengthOf } from '../hinge/pieces.js';

/** Two rectangles sewn side to side: `left` 100 wide, `right` 80 wide, 300 high. */
const two = () =>
  patternOf(
    [rectangle('left', 100, 300), rectangle('right', 80, 300)],
    [{ ...seam('middle', ['left.right'], ['-right.left']) }],
  );

describe('a seam moved', () => {
  test('by a strip that one piece loses and the other gains', () => {
    const { pattern } = moveSeam(two(), { seam: 'middle', into: 'left', by: 30 });
    const [left, right] = pattern.pieces;
    expect(areaOf(left!)).toBeCloseTo(70 * 300, 6);
    expect(areaOf(right!)).toBeCloseTo(110 * 300, 6);
    expect(lengthOf(right!, 'top')).toBeCloseTo(110, 9);
    expect(walkSeams(pattern).every(w => w.matches)).toBe(true);
  });
  test('by other amounts at its two ends is a wedge', () => {
    const { pattern } = moveSeam(two(), { seam: 'middle', into: 'left', by: [20, 0] });
    const [left, right] = pattern.pieces;
    expect(areaOf(right!) - 80 * 300).toBeCloseTo((20 * 300) / 2, 6);
    expect(areaOf(left!) + areaOf(right!)).toBeCloseTo(180 * 300, 6);
    // The seam runs from the left piece's top: there it moves.
    expect(lengthOf(left!, 'top')).toBeCloseTo(80, 9);
    expect(lengthOf(left!, 'bottom')).toBeCloseTo(100, 9);
  });
  test('there and back again leaves both pieces as they were', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 90, noNaN: true }), by => {
        const there = moveSeam(two(), { seam: 'middle', into: 'left', by }).pattern;
        const back = moveSeam(there, { seam: 'middle', into: 'right', by }).pattern;
        validatePattern(back);
        for (const [i, piece] of back.pieces.entries()) {
          expect(areaOf(piece)).toBeCloseTo(areaOf(two().pieces[i]!), 6);
          expect(lengthOf(piece, 'top')).toBeCloseTo(lengthOf(two().pieces[i]!, 'top'), 6);
        }
      }),
      { numRuns: 30 },
    );
  });
  test('a shoulder forward: neck and armhole keep their length round the garment', () => {
    const before = shiftPattern();
    const done = moveSeam(before, { seam: 'shoulder', into: 'front', by: 15 });
    const round = (pattern: typeof before, edge: string) =>
      lengthOf(pieceNamed(pattern, 'front'), edge) + lengthOf(pieceNamed(pattern, 'back'), edge);
    for (const edge of ['neck', 'armhole'])
      expect(round(done.pattern, edge)).toBeCloseTo(round(before, edge), 1);
    expect(walkSeams(done.pattern).filter(w => !w.matches)).toEqual([]);
    validatePattern(done.pattern);
    expect(toldDid(done)).toBe(
      'The shoulder seam was moved into the front by 15 mm; the back has the strip.',
    );
  });
  test('is refused where it does not sew the piece, or the strip is too wide', () => {
    const wrong = refusalOf(() => moveSeam(shiftPattern(), { seam: 'shoulder', into: 'sleeve', by: 5 }));
    expect([wrong.code, wrong.remedy]).toEqual([
      'seam-not-of-piece',
      'Name one of the two pieces that the seam joins.',
    ]);
    expect(refusalOf(() => moveSeam(two(), { seam: 'middle', into: 'left', by: 130 })).code).toBe(
      'take-in-too-much',
    );
    expect(refusalOf(() => moveSeam(shiftPattern(), { seam: 'side', into: 'front', by: 5 })).code).toBe(
      'seam-not-of-two-edges',
    );
  });
});

describe('fold and seam', () => {
  test('a fold becomes a seam of a pair, and back', () => {
    const before = shiftPattern();
    const opened = foldToSeam(before, { piece: 'back', allowance: 15 });
    const back = pieceNamed(opened.pattern, 'back');
    expect(back.cutting).toMatchObject({ count: 2, mirrored: true });
    expect(back.outline.parts.at(-1)).toMatchObject({ name: 'centre-back', kind: 'seam', allowance: 15 });
    expect(opened.pattern.seams.at(-1)).toMatchObject({ name: 'centre-back', a: [run('back.centre-back')] });
    validatePattern(opened.pattern);
    expect(walkSeams(opened.pattern).every(w => w.matches)).toBe(true);
    const closed = seamToFold(opened.pattern, { piece: 'back', edge: 'centre-back' });
    expect(pieceNamed(closed.pattern, 'back').cutting).toMatchObject({ count: 1, mirrored: false });
    expect(closed.pattern.seams.map(s => s.name)).toEqual(before.seams.map(s => s.name));
    const [was, is] = [before, closed.pattern].map(p => edgePath(pieceNamed(p, 'back'), 'centre-back'));
    expect([pathStart(is!), pathEnd(is!)]).toEqual([pathStart(was!), pathEnd(was!)]);
  });
  test('takes the allowance most seams have where none is given', () => {
    const { pattern } = foldToSeam(shiftPattern(), { piece: 'front' });
    expect(pieceNamed(pattern, 'front').outline.parts.at(-1)).toMatchObject({ allowance: 15.875 });
  });
  test('is refused where there is no fold, one already, a bent edge, no pair, or another piece sewn to it', () => {
    const shift = shiftPattern();
    expect(refusalOf(() => foldToSeam(shift, { piece: 'sleeve' })).code).toBe('no-fold-to-open');
    expect(refusalOf(() => foldToSeam(shift, { piece: 'back', seam: 'side' })).code).toBe('seam-name-taken');
    expect(refusalOf(() => seamToFold(shift, { piece: 'back', edge: 'side' })).code).toBe(
      'fold-there-already',
    );
    expect(refusalOf(() => seamToFold(shift, { piece: 'sleeve', edge: 'cap' })).code).toBe(
      'edge-not-for-fold',
    );
    expect(refusalOf(() => seamToFold(two(), { piece: 'left', edge: 'left' })).code).toBe('fold-needs-pair');
    const pair = pieceOf(
      'half',
      [
        side('centre', [
          [0, 100],
          [0, 0],
        ]),
        side('rest', [
          [0, 0],
          [50, 0],
          [50, 100],
          [0, 100],
        ]),
      ],
      { cutting: { count: 2, mirrored: true } },
    );
    const sewn = patternOf([pair, rectangle('other', 100, 20)], [seam('s', ['half.centre'], ['other.top'])]);
    expect(refusalOf(() => seamToFold(sewn, { piece: 'half', edge: 'centre' })).code).toBe(
      'fold-sewn-elsewhere',
    );
  });
});
