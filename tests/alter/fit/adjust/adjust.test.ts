import { perform } from '@paperhinge/alter';
import { closeDart } from '@paperhinge/alter/darts';
import {
  edgePath,
  levelGirths,
  type Pattern,
  pathLength,
  pieceNamed,
  type Saying,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adjust, adjustVerb } from '../../../../packages/alter/src/fit/adjust/adjust.js';
import { type Adjustment, adjustments } from '../../../../packages/alter/src/fit/adjust/names.js';
import { demoPattern } from '../../../support/demo-pattern.js';
import { shiftPattern } from '../../../support/shift.js';
import { refusalOf } from '../../../support/told.js';

const [shift, dress, trousers, skirt] = ['woven-shift', 'darted-dress', 'trousers', 'yoke-skirt'].map(
  demoPattern,
) as [Pattern, Pattern, Pattern, Pattern];
const lengthOf = (pattern: Pattern, piece: string, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));
const changes = (before: Pattern, after: Pattern, piece: string, edge: string): number =>
  lengthOf(after, piece, edge) - lengthOf(before, piece, edge);
const dartAngle = (pattern: Pattern): number => {
  const { legs, apex } = dartsOf(pieceNamed(pattern, 'front')).find(d => d.name === 'bust')!;
  const [a, b] = [pathStart(legs[0]), pathEnd(legs[1])];
  const [p, q] = [Math.atan2(a.y - apex.y, a.x - apex.x), Math.atan2(b.y - apex.y, b.x - apex.x)];
  return Math.abs(p - q);
};

describe('a full or small bust', () => {
  // Property, trade-notes §9: rigid parts keep their lengths, the hem gains g, and the garment 2 g at waist and hip.
  test('widens the half by g and leaves armhole, shoulder, neck and sides as long as they were', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -40, max: 120 }).filter(by => Math.abs(by) > 4),
        by => {
          const what: Adjustment = by > 0 ? 'full bust' : 'small bust';
          const { pattern } = adjust(shift, { for: what, by: Math.abs(by) });
          validatePattern(pattern);
          for (const edge of ['armhole', 'shoulder', 'neck'])
            expect(Math.abs(changes(shift, pattern, 'front', edge)), edge).toBeLessThan(1e-6);
          const before = levelGirths(shift),
            after = levelGirths(pattern);
          expect(after.waist! - before.waist!).toBeCloseTo(by, 1);
          expect(walkSeam(pattern, pattern.seams.find(s => s.name === 'side')!).matches).toBe(true);
        },
      ),
      { numRuns: 25 },
    );
  });

  // The bust point goes round the hinge: across by g, down by the drop; the centre front is longer by the drop.
  test('lengthens the centre by the drop of the bust point, and opens the dart by the turn', () => {
    const { pattern, did } = adjust(shift, { for: 'full bust', by: 60 });
    const steps = (did as Saying).facts.steps as readonly Saying[];
    const swung = steps.find(({ code }) => code === 'swung-bust')!;
    expect(changes(shift, pattern, 'front', 'centre-front')).toBeCloseTo(swung.facts.dropMm as number, 6);
    expect(changes(shift, pattern, 'front', 'hem')).toBeCloseTo(30, 0);
    expect(dartAngle(pattern)).toBeGreaterThan(dartAngle(shift));
  });

  test('opens a dart where there was none', () => {
    const whole = shiftPattern();
    const front = pieceNamed(whole, 'front');
    expect(dartsOf(front).length).toBeGreaterThan(0);
    const closed = closeDart(whole, { piece: 'front', dart: 'bust', into: 'hem' }).pattern;
    const { pattern } = adjust(closed, { for: 'full bust', by: 40 });
    expect(dartsOf(pieceNamed(pattern, 'front')).map(d => d.name)).toContain('bust');
  });

  test('in a bodice opens its waist dart with the rest', () => {
    const { pattern } = adjust(dress, { for: 'full bust', by: 40 });
    const mouth = (of: Pattern) => {
      const { legs } = dartsOf(pieceNamed(of, 'front')).find(d => d.name.includes('under'))!;
      return distance(pathStart(legs[0]), pathEnd(legs[1]));
    };
    expect(mouth(pattern) - mouth(dress)).toBeCloseTo(20, 0);
  });
});

// Found by random sequences: at 60.4 mm the point was half way between the two legs, and one was 1.0004 mm longer.
test('the waist dart of a bodice that was widened has legs of one length', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 110 }), by => {
      const { pattern } = adjust(dress, { for: 'full bust', by });
      validatePattern(pattern);
      const { legs } = dartsOf(pieceNamed(pattern, 'front')).find(d => d.name === 'under-bust')!;
      const before = dartsOf(pieceNamed(dress, 'front')).find(d => d.name === 'under-bust')!.legs;
      const apart = ([first, second]: typeof legs): number => pathLength(first) - pathLength(second);
      expect(Math.abs(apart(legs) - apart(before))).toBeLessThan(0.01);
    }),
    { numRuns: 25, examples: [[60.4]] },
  );
});

describe('arm and thigh', () => {
  // Four rigid parts about four hinges: edges keep their lengths, and the underarms are by farther apart.
  test.each([
    ['full upper arm', 50],
    ['full upper arm', 12],
    ['thin upper arm', 20],
  ] as const)('%s by %d mm', (what, by) => {
    const { pattern } = adjust(shift, { for: what, by });
    const width = (of: Pattern) => {
      const cap = edgePath(pieceNamed(of, 'sleeve'), 'cap');
      return Math.abs(pathStart(cap).x - pathEnd(cap).x);
    };
    expect(width(pattern) - width(shift)).toBeCloseTo(what === 'full upper arm' ? by : -by, 3);
    if (what === 'full upper arm')
      expect(Math.abs(changes(shift, pattern, 'sleeve', 'cap'))).toBeLessThan(1e-6);
    expect(walkSeam(pattern, pattern.seams.find(s => s.name === 'armhole')!).differenceMm).toBeCloseTo(12, 0);
  });

  // Found: a cap swung down dips below the line between its underarms, and could not be cut there again.
  test('an arm made fuller and thinner again has the sleeve that it had', () => {
    const fuller = adjust(shift, { for: 'full upper arm', by: 60 }).pattern;
    const back = adjust(fuller, { for: 'thin upper arm', by: 60 }).pattern;
    validatePattern(back);
    const cap = (of: Pattern) => edgePath(pieceNamed(of, 'sleeve'), 'cap');
    const corners = (of: Pattern) => distance(pathStart(cap(of)), pathEnd(cap(of)));
    // The middle of a cap that is not quite even is found anew.
    expect(Math.abs(corners(back) - corners(shift))).toBeLessThan(0.5);
    expect(Math.abs(changes(shift, back, 'sleeve', 'underarm-front'))).toBeLessThan(1e-6);
  });

  test('a full thigh keeps waist, crotch, leg seams and hem', () => {
    const { pattern } = adjust(trousers, { for: 'full thigh', by: 40 });
    for (const piece of ['front', 'back'])
      for (const edge of ['crotch', 'inseam', 'outseam'])
        expect(Math.abs(changes(trousers, pattern, piece, edge)), `${piece} ${edge}`).toBeLessThan(1e-6);
    expect(pattern.seams.filter(seam => !walkSeam(pattern, seam).matches)).toEqual([]);
  });
});

describe('girths at levels', () => {
  test.each([
    [shift, 'full hips', 'hip', 1],
    [shift, 'narrow hips', 'hip', -1],
    [shift, 'full waist', 'waist', 1],
    [shift, 'narrow waist', 'waist', -1],
    [shift, 'broad back', 'bust', 1],
    [shift, 'full abdomen', 'hip', 1],
    [dress, 'full hips', 'hip', 1],
    [trousers, 'full hips', 'hip', 1],
  ] as const)('%#: the garment changes by the amount there', (pattern, what, level, sign) => {
    const after = adjust(pattern, { for: what, by: 24 }).pattern;
    expect(Math.abs(levelGirths(after)[level]! - levelGirths(pattern)[level]! - sign * 24)).toBeLessThan(1);
  });
});

describe('shoulders', () => {
  test('a square shoulder rises at the armhole by the amount, and its armhole with it', () => {
    const { pattern } = adjust(shift, { for: 'square shoulder', by: 15 });
    for (const piece of ['front', 'back']) {
      expect(Math.abs(changes(shift, pattern, piece, 'armhole'))).toBeLessThan(1e-6);
      const tip = (of: Pattern) => pathEnd(edgePath(pieceNamed(of, piece), 'shoulder'));
      expect(Math.abs(tip(pattern).y - tip(shift).y)).toBeCloseTo(15, 6);
    }
  });

  test('a forward shoulder keeps the garment: what the front loses the back gains', () => {
    const { pattern } = adjust(shift, { for: 'forward shoulder', by: 12 });
    const armholes = (of: Pattern) => lengthOf(of, 'front', 'armhole') + lengthOf(of, 'back', 'armhole');
    expect(armholes(pattern)).toBeCloseTo(armholes(shift), 1);
    expect(lengthOf(pattern, 'front', 'armhole')).toBeLessThan(lengthOf(shift, 'front', 'armhole') - 10);
  });
});

// Every adjustment runs on one of the demo patterns, and leaves pieces that sew: no crossing, no lost seam.
test.each(adjustments)('%s can be done', what => {
  const fits = [shift, dress, trousers, skirt].filter(pattern => {
    try {
      validatePattern(adjust(pattern, { for: what, by: 12 }).pattern);
      return true;
    } catch {
      return false;
    }
  });
  expect(fits.length).toBeGreaterThan(0);
});

describe('what is refused', () => {
  const code = (pattern: Pattern, what: Adjustment, by = 20) =>
    refusalOf(() => adjust(pattern, { for: what, by }));

  test('a pattern without the piece, the seam, the level or the mark', () => {
    expect(code(trousers, 'full bust')).toMatchObject({
      code: 'adjust-needs-piece',
      remedy: expect.stringContaining('role'),
    });
    expect(code(shift, 'long crotch point')).toMatchObject({ code: 'adjust-needs-seam' });
    expect(code(dress, 'sway back')).toMatchObject({
      code: 'adjust-needs-level',
      remedy: expect.stringContaining('waist'),
    });
    const unmarked = { ...shift, pieces: shift.pieces.map(p => ({ ...p, marks: [] })) };
    expect(code(unmarked, 'full bust')).toMatchObject({ code: 'bust-point-unknown' });
  });

  test('more than the paper reaches', () => {
    expect(code(shift, 'full upper arm', 900)).toMatchObject({
      code: 'adjust-too-much',
      remedy: expect.stringContaining('less'),
    });
  });

  test('an adjustment that there is not, with the nearest', () => {
    expect(refusalOf(() => perform(adjustVerb as never, shift, { for: 'full buste', by: 10 }))).toMatchObject(
      {
        remedy: expect.stringContaining('full bust'),
      },
    );
  });
});
