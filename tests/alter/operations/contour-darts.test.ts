import { addContourDart, changeDart, closeDart, resizeDart } from '@paperhinge/alter/darts';
import { spread } from '@paperhinge/alter/fullness';
import { shorten } from '@paperhinge/alter/length';
import { divide } from '@paperhinge/alter/seams';
import {
  checkPattern,
  levelGirths,
  type Pattern,
  pieceNamed,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid, toldFinding } from '../../support/told.js';
import { lengthOf } from '../hinge/pieces.js';

/** The shift with a double-pointed dart in its back: 30 wide at the waist, 150 up and 140 down. */
const shaped = (intake = 30, pattern = shiftPattern()): Pattern =>
  addContourDart(pattern, {
    piece: 'back',
    name: 'shaping',
    line: 'waist',
    out: 110,
    intake,
    above: 150,
    below: 140,
  }).pattern;
const ringOf = (pattern: Pattern) => pieceNamed(pattern, 'back').lines.find(l => l.name === 'shaping')!.path;
const atWaist = (pattern: Pattern) =>
  divide(pattern, { piece: 'back', name: 'back bodice', line: 'waist', seam: 'waistline' });

describe('a piece divided through a double-pointed dart', () => {
  test('has a dart on either side, as wide as it was there and as deep as it reached', () => {
    const { pattern } = atWaist(shaped());
    const [upper, lower] = ['back bodice', 'back'].map(name => dartsOf(pieceNamed(pattern, name))[0]!);
    for (const [dart, deep] of [
      [upper!, 150],
      [lower!, 140],
    ] as const) {
      expect(dart.name).toBe('shaping');
      const [a, b] = [pathStart(dart.legs[0]), pathEnd(dart.legs[1])];
      expect(distance(a, b)).toBeCloseTo(30, 6);
      for (const end of [a, b]) expect(distance(end, dart.apex)).toBeCloseTo(Math.hypot(deep, 15), 6);
    }
    expect(pieceNamed(pattern, 'back').lines.some(l => l.name === 'shaping')).toBe(false);
    validatePattern(pattern);
  });
  test('sews the new seam to its like, shorter by what the darts take in', () => {
    const plain = atWaist(shiftPattern()).pattern;
    const { pattern } = atWaist(shaped());
    const seam = walkSeams(pattern).find(w => w.seam === 'waistline')!;
    expect(seam.matches).toBe(true);
    expect(seam.aMm).toBeCloseTo(lengthOf(pieceNamed(plain, 'back'), 'waistline') - 30, 6);
  });
  test('aslant leaves it cut, and the check says so with what to do', () => {
    const { pattern } = divide(shaped(), {
      piece: 'back',
      name: 'back skirt',
      from: { edge: 'side', at: { mm: 210 } },
      to: { edge: 'centre-back', at: { mm: 470 } },
    });
    const told = checkPattern(pattern).filter(f => f.code === 'contour-dart-cut');
    expect(told.length).toBe(2);
    expect(toldFinding(told[0]!)).toMatchObject({
      message: expect.stringContaining('shaping dart of the back'),
      remedy: expect.stringContaining('add contour dart'),
    });
  });
});

describe('a double-pointed dart resized', () => {
  test('takes in what is asked between the points it had', () => {
    const before = shaped();
    const done = resizeDart(before, { piece: 'back', dart: 'shaping', to: 12 });
    const points = ringOf(done.pattern).segments.map(s => s[0]);
    expect(Math.max(...points.map(p => p.x)) - Math.min(...points.map(p => p.x))).toBeCloseTo(12, 9);
    expect(points.map(p => p.y)).toEqual(ringOf(before).segments.map(s => expect.closeTo(s[0].y, 9)));
    expect(toldDid(done)).toBe('The shaping dart of the back takes in 12 mm now; it was 30 mm.');
  });
  test('to what it was is as it was', () => {
    fc.assert(
      fc.property(fc.double({ min: 2, max: 80, noNaN: true }), to => {
        const before = shaped();
        const there = resizeDart(before, { piece: 'back', dart: 'shaping', to }).pattern;
        const back = resizeDart(there, { piece: 'back', dart: 'shaping', to: 30 }).pattern;
        for (const [i, s] of ringOf(back).segments.entries())
          expect(distance(s[0], ringOf(before).segments[i]![0])).toBeLessThan(1e-9);
      }),
      { numRuns: 30 },
    );
  });
  test('is refused where it would leave its piece; smaller mends it', () => {
    const wide = () => resizeDart(shaped(), { piece: 'back', dart: 'shaping', to: 400 });
    expect(refusalOf(wide)).toMatchObject({ code: 'contour-dart-leaves-piece' });
  });
});

test('a double-pointed dart as ease is left unsewn, and the girth is what it was without it', () => {
  const done = changeDart(shaped(), { piece: 'back', dart: 'shaping', into: 'ease' });
  expect(levelGirths(done.pattern).waist).toBeCloseTo(levelGirths(shiftPattern()).waist!, 9);
  expect(done.findings).toEqual([]);
  expect(toldDid(done)).toBe(
    'The shaping dart of the back is not sewn any more: the piece keeps the 30 mm it took in.',
  );
  expect(
    refusalOf(() => changeDart(shaped(), { piece: 'back', dart: 'shaping', into: 'tuck' })),
  ).toMatchObject({
    code: 'dart-within-piece',
  });
});

describe('a double-pointed dart under other operations', () => {
  test('has no mouth to close; divided through, as the remedy says, it has', () => {
    const close = (pattern: Pattern, piece: string) => () =>
      closeDart(pattern, { piece, dart: 'shaping', into: 'hem' });
    expect(refusalOf(close(shaped(), 'back'))).toMatchObject({
      code: 'dart-within-piece',
      remedy: expect.stringMatching(/divide.*two darts/),
    });
    expect(close(atWaist(shaped()).pattern, 'back')).not.toThrow();
  });
  test('moves whole with the cloth it lies on', () => {
    const slash = { from: { edge: 'hem', at: { share: 0.95 } }, to: { edge: 'neck', at: { share: 0.1 } } };
    const { pattern } = spread(shaped(), { piece: 'back', ...slash, by: 40 });
    const sides = (path: ReturnType<typeof ringOf>) => path.segments.map(s => distance(s[0], s.at(-1)!));
    expect(sides(ringOf(pattern))).toEqual(sides(ringOf(shaped())).map(mm => expect.closeTo(mm, 9)));
  });
  test('slashed from point to point stays a ring', () => {
    // Straight down its axis: one half of it goes with either side.
    const [top] = ringOf(shaped()).segments[0]!;
    const { pattern } = spread(shaped(), {
      piece: 'back',
      from: { edge: 'hem', at: { mm: 300 - top.x } },
      to: { edge: 'shoulder', at: { share: 0.05 } },
      by: 40,
    });
    const ring = ringOf(pattern);
    expect(distance(pathStart(ring), pathEnd(ring))).toBeLessThan(1e-9);
    expect(checkPattern(pattern).map(f => f.code)).not.toContain('contour-dart-cut');
  });
  test('that the hem cuts is told', () => {
    const { pattern } = shorten(shaped(), { pieces: ['back'], at: 'hem', by: 420 });
    expect(checkPattern(pattern).map(f => f.code)).toContain('contour-dart-cut');
    expect(checkPattern(shaped()).map(f => f.code)).not.toContain('contour-dart-cut');
  });
});
