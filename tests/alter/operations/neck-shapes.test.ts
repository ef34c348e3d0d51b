import { recutNeckline } from '@paperhinge/alter/edges';
import { edgePath, pieceNamed, validatePattern } from '@paperhinge/geometry';
import { pathEnd, pathStart, startTangent } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';
import { anyBodice, areaOf, lengthOf, patternOf } from '../hinge/pieces.js';

const shapes = ['boat', 'scoop', 'sweetheart'] as const;
const recut = (shape: (typeof shapes)[number] | 'V' | 'square' | 'round') =>
  recutNeckline(shiftPattern(), { piece: 'front', shape, depth: 60, halfWidth: 130 });

describe('necklines of more shapes', () => {
  test.each(shapes)('a %s begins at its depth on the fold and ends on the shoulder', shape => {
    const [before, after] = [shiftPattern(), recut(shape).pattern].map(p => pieceNamed(p, 'front'));
    expect(lengthOf(after!, 'centre-front')).toBeCloseTo(lengthOf(before!, 'centre-front') - 60, 9);
    const path = edgePath(after!, 'neck');
    expect(pathStart(path)).toEqual(pathEnd(edgePath(after!, 'centre-front')));
    expect(pathEnd(path)).toEqual(pathStart(edgePath(after!, 'shoulder')));
    validatePattern(recut(shape).pattern);
  });
  test('boat and scoop are square to the fold; a sweetheart comes to a point there', () => {
    const rise = (shape: (typeof shapes)[number]) =>
      startTangent(edgePath(pieceNamed(recut(shape).pattern, 'front'), 'neck'));
    expect(Math.abs(rise('boat').y)).toBeLessThan(1e-9);
    expect(Math.abs(rise('scoop').y)).toBeLessThan(1e-9);
    expect(rise('sweetheart').y).toBeLessThan(-0.5);
  });
  test('a scoop takes more than a round neck and less than a square one, a boat more than a V and less than a round', () => {
    const area = (shape: Parameters<typeof recut>[0]) => areaOf(pieceNamed(recut(shape).pattern, 'front'));
    expect(area('scoop')).toBeLessThan(area('round'));
    expect(area('scoop')).toBeGreaterThan(area('square'));
    expect(area('boat')).toBeLessThan(area('V'));
    expect(area('boat')).toBeGreaterThan(area('round'));
  });
  test('any of them on any bodice is sound, or refused with a reason', () => {
    const wish = fc.record({
      shape: fc.constantFrom(...shapes),
      depth: fc.double({ min: 5, max: 90, noNaN: true }),
      halfWidth: fc.double({ min: 50, max: 130, noNaN: true }),
    });
    let done = 0;
    fc.assert(
      fc.property(anyBodice, wish, (piece, parameters) => {
        try {
          const { pattern } = recutNeckline(patternOf(piece), { piece: 'block', ...parameters });
          validatePattern(pattern);
          done++;
        } catch (error) {
          if (!/^(half-width|neckline)/.test((error as { readonly code?: string }).code ?? '')) throw error;
        }
      }),
      { numRuns: 60 },
    );
    expect(done).toBeGreaterThan(20);
  });
  test('is said by its name', () => {
    expect(toldDid(recut('sweetheart'))).toBe(
      'The front has a new neckline, a sweetheart 60 mm deep and 130 mm to each side.',
    );
    expect(refusalOf(() => recutNeckline(shiftPattern(), { piece: 'front', shape: 'boat' })).code).toBe(
      'field-missing',
    );
  });
});
