import { addContourDart } from '@paperhinge/alter/darts';
import { levelGirths, pieceNamed, validatePattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const add = (changes: Partial<Parameters<typeof addContourDart>[1]> = {}) =>
  addContourDart(shiftPattern(), {
    piece: 'back',
    name: 'waist dart',
    line: 'waist',
    out: 110,
    intake: 30,
    above: 150,
    below: 140,
    ...changes,
  });

describe('a contour dart', () => {
  test('is a closed line of four straight sides, two by two equal', () => {
    const { path } = pieceNamed(add().pattern, 'back').lines.find(l => l.kind === 'dart')!;
    const lengths = path.segments.map(([a, b]) => Math.hypot(b!.x - a!.x, b!.y - a!.y));
    const [up, down] = [Math.hypot(15, 150), Math.hypot(15, 140)];
    for (const [i, wanted] of [up, down, down, up].entries()) expect(lengths[i]).toBeCloseTo(wanted, 9);
    expect(path.segments.at(-1)!.at(-1)).toEqual(path.segments[0]![0]);
    validatePattern(add().pattern);
  });
  test('takes its intake twice from the girth at its level: the back is on the fold', () => {
    const waist = (pattern: ReturnType<typeof shiftPattern>) => levelGirths(pattern).waist!;
    expect(waist(shiftPattern()) - waist(add().pattern)).toBeCloseTo(60, 6);
  });
  test('is said', () => {
    expect(toldDid(add())).toBe(
      'The back has a contour dart "waist dart": it takes in 30 mm on the waist line and runs 150 mm up and 140 mm down.',
    );
  });
  test('is refused beyond the piece, on no line, or twice', () => {
    expect(refusalOf(() => add({ out: 900 })).code).toBe('contour-dart-leaves-piece');
    expect(refusalOf(() => add({ out: 12 })).code).toBe('contour-dart-leaves-piece');
    expect(refusalOf(() => add({ above: 470 })).code).toBe('contour-dart-leaves-piece');
    expect(refusalOf(() => add({ line: 'wiast' })).remedy).toContain('waist');
    const twice = () =>
      addContourDart(add().pattern, {
        piece: 'back',
        name: 'waist dart',
        line: 'hip',
        out: 100,
        intake: 10,
        above: 20,
        below: 20,
      });
    expect(refusalOf(twice).code).toBe('dart-name-taken');
  });
});
