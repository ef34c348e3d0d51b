import { letOut } from '@paperhinge/alter/edges';
import { addVent, draftCircleSkirt, draftFlounce, draftGodet, leaveSlit } from '@paperhinge/alter/fullness';
import { refresh } from '@paperhinge/alter/made';
import {
  checkPattern,
  edgeNamed,
  type Pattern,
  pieceNamed,
  type Saying,
  validatePattern,
  walkSeams,
} from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { patternOf, pieceOf, rectangle, seam, side } from '../../support/polygon-piece.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';
import { areaOf, lengthOf } from '../hinge/pieces.js';

const empty = patternOf([rectangle('band', 700, 40)]);
const circle = (changes: Partial<Parameters<typeof draftCircleSkirt>[1]> = {}) =>
  draftCircleSkirt(empty, { name: 'skirt', part: 'full', waist: 700, length: 600, ...changes });

describe('a circle skirt', () => {
  // check-values §7 [derived]: waist radius C / 2πf for C 26 in, 28 in, 700 mm and 1000 mm.
  test.each([
    [26 * 25.4, [4.138, 5.517, 8.276, 16.552].map(inches => inches * 25.4), 0.02],
    [28 * 25.4, [4.456, 5.942, 8.913, 17.825].map(inches => inches * 25.4), 0.02],
    [700, [111.408, 148.545, 222.817, 445.634], 0.001],
    [1000, [159.155, 212.207, 318.31, 636.62], 0.001],
  ] as const)('of waist %d has the radii of the table', (waist, radii, within) => {
    for (const [i, part] of (['full', 'three-quarter', 'half', 'quarter'] as const).entries()) {
      const done = circle({ part, waist });
      const { facts } = done.did as Saying;
      expect(Math.abs((facts.radiusMm as number) - radii[i]!)).toBeLessThan(within);
      // Every panel's waist is its share of the whole: drawn half, on the fold, two panels.
      expect(4 * lengthOf(pieceNamed(done.pattern, 'skirt'), 'waist')).toBeCloseTo(waist, 3);
    }
  });
  // check-values §7 [derived]: hem of a full circle, r 111.408, l 600: 4469.9 mm.
  test('has the hem of the table', () => {
    expect(4 * lengthOf(pieceNamed(circle().pattern, 'skirt'), 'hem')).toBeCloseTo(4469.9, 1);
    expect(toldDid(circle())).toBe(
      'The skirt was drafted as a full circle in 2 panels: waist 700 mm, drawn with a radius of 111.4 mm; 600 mm long; hem 4469.9 mm all round.',
    );
  });
  test('covers its part of the ring, however many panels', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('full', 'three-quarter', 'half', 'quarter'),
        fc.integer({ min: 2, max: 8 }),
        fc.double({ min: 200, max: 1500, noNaN: true }),
        (part, panels, length) => {
          const done = circle({ part, panels, length });
          validatePattern(done.pattern);
          const piece = pieceNamed(done.pattern, 'skirt');
          const share = { full: 1, 'three-quarter': 0.75, half: 0.5, quarter: 0.25 }[part];
          const radius = 700 / (2 * Math.PI * share);
          const ring = Math.PI * share * ((radius + length) ** 2 - radius ** 2);
          expect((2 * panels * areaOf(piece)) / ring).toBeCloseTo(1, 6);
          expect(piece.cutting.count).toBe(panels);
          expect(walkSeams(done.pattern).every(w => w.matches)).toBe(true);
        },
      ),
      { numRuns: 20 },
    );
  });
  test('says that its hem drops, and where the cloth is too narrow', () => {
    expect(circle().findings.map(f => f.code)).toEqual(['bias-hem-hangs']);
    const narrow: Pattern = { ...empty, fabrics: [{ name: 'main', role: 'main', width: 1400 }] };
    const done = draftCircleSkirt(narrow, { name: 'skirt', part: 'full', waist: 700, length: 700 });
    expect(done.findings.map(f => f.code)).toContain('circle-too-wide-for-cloth');
  });
  test('is refused under a name that is taken', () => {
    expect(refusalOf(() => circle({ name: 'band' })).code).toBe('piece-name-taken');
  });
});

describe('a flounce', () => {
  const flounce = (rings = 1) =>
    draftFlounce(shiftPattern(), {
      name: 'flounce',
      along: [{ piece: 'sleeve', edge: 'hem' }],
      width: 80,
      rings,
    });
  test.each([1, 3])(
    'of %d rings is as long inside as its edge, and 2π of width more for each ring outside',
    rings => {
      const { pattern } = flounce(rings);
      const hem = lengthOf(pieceNamed(shiftPattern(), 'sleeve'), 'hem');
      const piece = pieceNamed(pattern, 'flounce');
      expect(2 * rings * lengthOf(piece, 'sewn')).toBeCloseTo(hem, 3);
      expect(2 * rings * lengthOf(piece, 'hem')).toBeCloseTo(hem + 2 * Math.PI * 80 * rings, 3);
      // One for each sleeve.
      expect(piece.cutting.count).toBe(2 * rings);
      validatePattern(pattern);
    },
  );
  test('is drafted again when its edge has changed', () => {
    const wider = letOut(flounce().pattern, { seam: 'underarm', by: 30 }).pattern;
    const again = refresh(wider, {}).pattern;
    const sleeve = pieceNamed(wider, 'sleeve');
    expect(2 * lengthOf(pieceNamed(again, 'flounce'), 'sewn')).toBeCloseTo(lengthOf(sleeve, 'hem'), 3);
  });
  test('sews on without a fault: every copy counts', () => {
    expect(checkPattern(flounce(2).pattern).filter(f => f.severity === 'fault')).toEqual([]);
  });
});

/** A straight skirt: front and back on the fold, sewn side to side. */
function skirt(): Pattern {
  const half = (name: string) =>
    pieceOf(name, [
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
        { kind: 'hem', allowance: 30 },
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
  return patternOf([half('front'), half('back')], [seam('side', ['front.side'], ['back.side'])]);
}

describe('a godet', () => {
  const godet = (changes = {}) =>
    draftGodet(skirt(), { name: 'godet', seam: 'side', depth: 200, sweep: 150, ...changes });
  test('is a part of a circle of the depth, its hem the sweep', () => {
    const piece = pieceNamed(godet().pattern, 'godet');
    expect(lengthOf(piece, 'first')).toBeCloseTo(200, 9);
    expect(lengthOf(piece, 'second')).toBeCloseTo(200, 9);
    expect(lengthOf(piece, 'hem')).toBeCloseTo(150, 4);
    expect(areaOf(piece)).toBeCloseTo((150 * 200) / 2, 2);
    expect(piece.cutting.count).toBe(2);
  });
  test('leaves the seam sewn as far as its point, and matches on both sides', () => {
    const { pattern } = godet();
    validatePattern(pattern);
    const [shorter] = walkSeams(pattern);
    expect(shorter!.aMm).toBeCloseTo(400, 6);
    expect(walkSeams(pattern).every(w => w.matches)).toBe(true);
    expect(pattern.seams.map(s => s.name)).toEqual(['side', 'godet first', 'godet second']);
  });
  test('is refused in a seam that is short, or has no hem', () => {
    expect(refusalOf(() => godet({ depth: 600 })).code).toBe('godet-seam-short');
    expect(
      refusalOf(() => draftGodet(shiftPattern(), { name: 'g', seam: 'shoulder', depth: 20, sweep: 20 })).code,
    ).toBe('vent-not-at-hem');
    expect(
      refusalOf(() => draftGodet(shiftPattern(), { name: 'g', seam: 'side', depth: 20, sweep: 20 })).code,
    ).toBe('seam-not-of-two-edges');
  });
});

describe('slits and vents', () => {
  const edge = { piece: 'back', edge: 'side' };
  test('a slit is left open, no line moved', () => {
    const done = leaveSlit(skirt(), { edge, length: 150 });
    expect(edgeNamed(pieceNamed(done.pattern, 'back'), 'side').opening).toBe(150);
    expect(areaOf(pieceNamed(done.pattern, 'back'))).toBe(areaOf(pieceNamed(skirt(), 'back')));
    expect(refusalOf(() => leaveSlit(skirt(), { edge, length: 700 })).code).toBe('slit-beyond-edge');
  });
  test('a vent adds a strip whose top is aslant: its width times its length less half its width', () => {
    const done = addVent(skirt(), { edge, length: 180, width: 40 });
    const back = pieceNamed(done.pattern, 'back');
    expect(areaOf(back) - areaOf(pieceNamed(skirt(), 'back'))).toBeCloseTo(40 * 180 - (40 * 40) / 2, 6);
    expect(lengthOf(back, 'side')).toBeCloseTo(420, 9);
    expect(lengthOf(back, 'hem')).toBeCloseTo(240, 9);
    expect(lengthOf(back, 'vent')).toBeCloseTo(140, 9);
    expect(lengthOf(back, 'vent-top')).toBeCloseTo(Math.hypot(40, 40), 9);
    expect(back.lines.at(-1)).toMatchObject({ kind: 'fold', name: 'side vent' });
    validatePattern(done.pattern);
  });
  test('on a side that the hem begins at comes out the same, mirrored', () => {
    const left = pieceOf('left', [
      side('waist', [
        [0, 0],
        [200, 0],
      ]),
      side(
        'centre',
        [
          [200, 0],
          [200, 600],
        ],
        { kind: 'fold' },
      ),
      side(
        'hem',
        [
          [200, 600],
          [0, 600],
        ],
        { kind: 'hem' },
      ),
      side('side', [
        [0, 600],
        [0, 0],
      ]),
    ]);
    const done = addVent(patternOf([left]), {
      edge: { piece: 'left', edge: 'side' },
      length: 180,
      width: 40,
    });
    const after = done.pattern.pieces[0]!;
    expect(areaOf(after) - areaOf(left)).toBeCloseTo(40 * 180 - (40 * 40) / 2, 6);
    validatePattern(done.pattern);
  });
  test('is refused away from the hem, or too long', () => {
    expect(
      refusalOf(() => addVent(skirt(), { edge: { piece: 'back', edge: 'waist' }, length: 50, width: 20 }))
        .code,
    ).toBe('vent-not-at-hem');
    expect(refusalOf(() => addVent(skirt(), { edge, length: 580, width: 40 })).code).toBe('vent-too-long');
  });
});
