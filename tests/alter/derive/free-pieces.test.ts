import { cautionsFor } from '@paperhinge/alter';
import { draftCasing, draftPlacket, draftTie } from '@paperhinge/alter/made';
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
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';

const hem = [{ piece: 'sleeve', edge: 'hem' }];
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

describe('ties', () => {
  // A pointed tie of width w, cut 2 w wide: the point adds a triangle of base 2 w and height w, w² in all.
  test('are folded lengthwise, their points drawn at 45°', () => {
    const { pattern } = draftTie(shiftPattern(), { name: 'tie', length: 600, width: 30, pointed: true });
    const outline = outlinePath(pieceNamed(pattern, 'tie').outline);
    expect(Math.abs(signedArea(outline))).toBeCloseTo(600 * 60 + 30 * 30, 6);
    expect(pieceNamed(pattern, 'tie').cutting).toMatchObject({ count: 2 });
    expect(() => validatePattern(pattern)).not.toThrow();
  });

  test('bring their caution, with the step and with the garment', () => {
    const done = draftTie(shiftPattern(), { name: 'tie', length: 600, width: 30 });
    expect(toldFinding(done.findings[0]!).message).toMatch(/can catch and strangle/);
    expect(cautionsFor({ pattern: done.pattern }).map(c => c.code)).toContain('cords');
    expect(cautionsFor({ pattern: shiftPattern() }).map(c => c.code)).not.toContain('cords');
  });
});

describe('a casing', () => {
  test('is as long as its edge, folded over its elastic, which is told', () => {
    const before = shiftPattern();
    const done = draftCasing(before, { name: 'casing', along: hem, elastic: 12, length: 190 });
    const edge = lengthOf(before, 'sleeve', 'hem');
    expect(lengthOf(done.pattern, 'casing', 'sewn')).toBeCloseTo(edge, 9);
    expect(lengthOf(done.pattern, 'casing', 'join-start')).toBeCloseTo(30, 9);
    expect(done.pattern.fastenings).toContainEqual(
      expect.objectContaining({ kind: 'elastic', relaxed: 190, size: 12 }),
    );
    const seam = done.pattern.seams.find(s => s.name === 'casing')!;
    expect(walkSeam(done.pattern, seam).matches).toBe(true);
    expect(toldDid(done)).toContain('190 mm of elastic');
  });

  test('an elastic that draws nothing in is refused; a shorter one is taken', () => {
    const wish = { name: 'casing', along: hem, elastic: 12 };
    expect(refusalOf(() => draftCasing(shiftPattern(), { ...wish, length: 900 }))).toMatchObject({
      code: 'elastic-too-long',
      remedy: expect.stringMatching(/shorter than/),
    });
    expect(() => draftCasing(shiftPattern(), { ...wish, length: 200 })).not.toThrow();
  });
});

describe('a placket', () => {
  // Twice the slit and two allowances of 6 by twice the width and two allowances.
  test('is twice as long as its slit, and the edge opens by it', () => {
    const along = { piece: 'sleeve', edge: 'hem' };
    const done = draftPlacket(shiftPattern(), { name: 'placket', along, length: 100 });
    expect(done.derived![0]).toMatchObject({ kind: 'placket', lengthMm: 212, widthMm: 52 });
    const sleeve = pieceNamed(done.pattern, 'sleeve').outline.parts;
    expect(sleeve.find(part => part.name === 'hem')).toMatchObject({ opening: 100 });
    expect(pieceNamed(done.pattern, 'placket')).toMatchObject({ role: 'placket', madeFor: [along] });
  });

  test('a slit longer than its edge is refused', () => {
    const along = { piece: 'sleeve', edge: 'hem' };
    expect(
      refusalOf(() => draftPlacket(shiftPattern(), { name: 'placket', along, length: 900 })),
    ).toMatchObject({
      code: 'slit-too-long',
    });
  });
});
