import { spread } from '@paperhinge/alter/fullness';
import { type Pattern, pathLength, pieceNamed, validatePattern, walkSeams } from '@paperhinge/geometry';
import { pleatsOf } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { refusalOf, toldDid } from '../../support/told.js';
import { areaOf, lengthOf } from '../hinge/pieces.js';

/** A skirt half on the fold, 200 by 600 mm, its waist sewn to a band. */
function skirt(): Pattern {
  const half = pieceOf('skirt', [
    side('waist', [
      [0, 0],
      [200, 0],
    ]),
    side('side', [
      [200, 0],
      [200, 600],
    ]),
    side(
      'hem',
      [
        [200, 600],
        [0, 600],
      ],
      { kind: 'hem' },
    ),
    side(
      'centre',
      [
        [0, 600],
        [0, 0],
      ],
      { kind: 'fold' },
    ),
  ]);
  return patternOf([half, rectangle('band', 400, 40)], [seam('waist', ['skirt.waist'], ['band.bottom'])]);
}
const open = (changes: Partial<Parameters<typeof spread>[1]> = {}) =>
  spread(skirt(), {
    piece: 'skirt',
    from: { edge: 'waist' },
    to: { edge: 'hem' },
    by: 60,
    slashes: 3,
    ...changes,
  });
const piece = (pattern: Pattern) => pieceNamed(pattern, 'skirt');

describe('a slash that opens at both ends', () => {
  test('opens each end by its own amount: a wedge about a point beyond the narrow end', () => {
    const { pattern } = open({ slashes: 1, by: 60, otherEnd: 20 });
    expect(lengthOf(piece(pattern), 'waist')).toBeCloseTo(260, 9);
    expect(lengthOf(piece(pattern), 'hem')).toBeCloseTo(220, 9);
    // A trapezium of 60 and 20, its sides 600 long.
    const height = Math.sqrt(600 ** 2 - 20 ** 2);
    expect(areaOf(piece(pattern))).toBeCloseTo(200 * 600 + 40 * height, 4);
    expect(toldDid(open({ slashes: 1, by: 60, otherEnd: 20 }))).toContain('20 mm at the other end');
  });
  test('alike opens in parallel', () => {
    const { pattern } = open({ by: 60, otherEnd: 60 });
    expect(areaOf(piece(pattern))).toBeCloseTo(260 * 600, 6);
  });
  test('opening one end and overlapping the other turns about a point between', () => {
    const { pattern } = open({ slashes: 1, by: 40, otherEnd: -20 });
    expect(lengthOf(piece(pattern), 'waist')).toBeCloseTo(240, 9);
    expect(lengthOf(piece(pattern), 'hem')).toBeLessThan(200);
  });
  test('hinged the other way round does the same with the ends changed', () => {
    const { pattern } = open({ hinge: 'from', slashes: 1, by: 60, otherEnd: 20 });
    expect(lengthOf(piece(pattern), 'hem')).toBeCloseTo(260, 9);
    expect(lengthOf(piece(pattern), 'waist')).toBeCloseTo(220, 9);
  });
  test('at any amounts opens by just these, in every strip', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 150, noNaN: true }),
        fc.double({ min: 1, max: 150, noNaN: true }),
        fc.integer({ min: 1, max: 6 }),
        (by, otherEnd, slashes) => {
          const { pattern } = open({ by, otherEnd, slashes });
          validatePattern(pattern);
          expect(lengthOf(piece(pattern), 'waist')).toBeCloseTo(200 + by, 6);
          expect(lengthOf(piece(pattern), 'hem')).toBeCloseTo(200 + otherEnd, 6);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('what opens, taken up', () => {
  test('by a ratio spreads the edge to so many times its length, gathered into its seam', () => {
    const done = spread(skirt(), {
      piece: 'skirt',
      from: { edge: 'waist' },
      to: { edge: 'hem' },
      ratio: 1.5,
      slashes: 4,
      hinge: 'none',
      into: 'gathers',
    });
    expect(lengthOf(piece(done.pattern), 'waist')).toBeCloseTo(300, 6);
    const [waist] = done.pattern.seams;
    expect(waist!.takenUp).toBe('gathered');
    expect(walkSeams(done.pattern)[0]!.matches).toBe(walkSeams(skirt())[0]!.matches);
    expect(toldDid(done)).toMatch(/taken up in gathers\.$/);
  });
  test.each(['knife pleats', 'box pleats', 'inverted pleats', 'tucks'] as const)(
    'into %s leaves the edge as long as it was, the folds away from the centre',
    into => {
      const { pattern } = open({ hinge: 'none', into, name: 'fold', stitched: 50 });
      const folds = pleatsOf(piece(pattern));
      expect(folds.map(f => f.name).sort()).toEqual(['fold 1', 'fold 2', 'fold 3']);
      for (const fold of folds) {
        expect(pathLength(fold.mouth)).toBeCloseTo(20, 9);
        // The fold of the piece lies where the waist begins: away from it is towards the end.
        expect(fold).toMatchObject({
          towards: 'end',
          stitched: 50,
          kind: into.split(' ')[0]!.replace('tucks', 'tuck'),
        });
      }
      expect(walkSeams(pattern)[0]!.differenceMm).toBeCloseTo(walkSeams(skirt())[0]!.differenceMm, 6);
      expect(lengthOf(piece(pattern), 'hem')).toBeCloseTo(260, 9);
      validatePattern(pattern);
    },
  );
  test('a single fold has the name alone', () => {
    const { pattern } = open({ slashes: 1, into: 'box pleats', name: 'back' });
    expect(pleatsOf(piece(pattern)).map(f => f.name)).toEqual(['back']);
  });
  test('is refused where nothing opens, without a name, or under one that is taken', () => {
    expect(refusalOf(() => open({ by: -10, into: 'tucks', name: 'x' })).code).toBe('fold-needs-opening');
    expect(refusalOf(() => open({ into: 'tucks' })).code).toBe('field-missing');
    expect(refusalOf(() => open({ slashes: 1, into: 'tucks', name: 'hem' })).code).toBe('pleat-name-taken');
  });
});
