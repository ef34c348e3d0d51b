import { type AnyVerb, alterSoThat, measured } from '@paperhinge/alter';
import {
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  validatePattern,
  walkSeam,
} from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { edgeParts } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeCap, changeCapVerb } from '../../../packages/alter/src/operations/change-cap.js';
import { setSeam } from '../../../packages/alter/src/operations/set-seam.js';
import { walkCap } from '../../../packages/alter/src/operations/walk-cap.js';
import { shiftPattern } from '../../support/shift.js';
import { refusalOf, toldDid } from '../../support/told.js';

const cap = (pattern: Pattern) => edgePath(pieceNamed(pattern, 'sleeve'), 'cap');
const lengthOf = (pattern: Pattern, edge: string): number =>
  pathLength(edgePath(pieceNamed(pattern, 'sleeve'), edge));
const width = (pattern: Pattern): number => Math.abs(pathStart(cap(pattern)).x - pathEnd(cap(pattern)).x);
const seam = (pattern: Pattern, name: string) => walkSeam(pattern, pattern.seams.find(s => s.name === name)!);

describe('a cap at constant seam length', () => {
  // Property: four rigid parts about four hinges; nothing changes its length, and the lower cap makes the wider sleeve.
  test('keeps cap, underarms and hem, and is the wider the lower it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: -35, max: -3 }), by => {
        const before = shiftPattern();
        const { pattern } = changeCap(before, { piece: 'sleeve', by, keep: 'seam' });
        validatePattern(pattern);
        for (const { name } of edgeParts(pieceNamed(before, 'sleeve')))
          expect(Math.abs(lengthOf(pattern, name) - lengthOf(before, name)), name).toBeLessThan(1e-6);
        expect(width(pattern)).toBeGreaterThan(width(before));
        expect(seam(pattern, 'underarm').matches).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  test('says what it did', () => {
    const done = changeCap(shiftPattern(), { piece: 'sleeve', by: -20, keep: 'seam' });
    expect(toldDid(done)).toMatch(
      /^The cap of the sleeve is 20 mm lower; its seam is as before, the sleeve [\d.]+ mm wider\.$/,
    );
  });

  test('lower than its seam allows is refused', () => {
    expect(
      refusalOf(() => changeCap(shiftPattern(), { piece: 'sleeve', by: 300, keep: 'seam' })),
    ).toMatchObject({
      code: 'adjust-too-much',
    });
  });
});

describe('a cap at constant width', () => {
  // Stretched along the grain from the line between the underarms: the top rises by the amount, the underarms stay.
  test('rises by the amount between the same underarms', () => {
    const before = shiftPattern();
    const { pattern } = changeCap(before, { piece: 'sleeve', by: 12, keep: 'width' });
    expect(pathStart(cap(pattern))).toEqual(pathStart(cap(before)));
    expect(width(pattern)).toBeCloseTo(width(before), 9);
    const top = (of: Pattern) => Math.min(...cap(of).segments.flatMap(s => s.map(p => p.y)));
    expect(top(before) - top(pattern)).toBeCloseTo(12, 0);
  });

  test('and there and back it is what it was', () => {
    const before = shiftPattern();
    const up = changeCap(before, { piece: 'sleeve', by: 15, keep: 'width' }).pattern;
    const back = changeCap(up, { piece: 'sleeve', by: -15, keep: 'width' }).pattern;
    expect(lengthOf(back, 'cap')).toBeCloseTo(lengthOf(before, 'cap'), 1);
  });

  test('with a goal is as high as the ease asks', () => {
    const by = { soThat: { of: 'seam-ease', seam: 'armhole' }, is: 25 };
    const done = alterSoThat(changeCapVerb as AnyVerb, shiftPattern(), {
      piece: 'sleeve',
      by,
      keep: 'width',
    });
    expect(measured(done.pattern, { of: 'seam-ease', seam: 'armhole' })).toBeCloseTo(25, 2);
  });

  test('cannot be lowered to nothing', () => {
    expect(
      refusalOf(() => changeCap(shiftPattern(), { piece: 'sleeve', by: -400, keep: 'width' })),
    ).toMatchObject({
      code: 'cap-too-low',
      remedy: expect.stringContaining('less than'),
    });
  });
});

describe('a cap walked into its armhole', () => {
  const eased = setSeam(shiftPattern(), { seam: 'armhole', ease: { mm: 12 } }).pattern;

  test('has no ease in its lowest thirds, and the rest where it belongs', () => {
    const { pattern } = walkCap(eased, { seam: 'armhole', front: 0.4 });
    const { stretches, findings } = seam(pattern, 'armhole');
    expect(stretches.map(s => s.easeMm)).toEqual([0, 12, 0].map(mm => expect.closeTo(mm, 0)));
    expect(findings.filter(f => f.severity !== 'note')).toEqual([]);
    // The top lies where the shoulder comes: the front armhole and 40 % of the ease from the front underarm.
    const front = pathLength(edgePath(pieceNamed(eased, 'front'), 'armhole'));
    const top = pieceNamed(pattern, 'sleeve').notches.find(n => n.name === 'top')!;
    const whole = lengthOf(pattern, 'cap');
    const ease = whole - front - pathLength(edgePath(pieceNamed(eased, 'back'), 'armhole'));
    expect(
      Math.min(Math.abs(top.at - front - 0.4 * ease), Math.abs(whole - top.at - front - 0.4 * ease)),
    ).toBeLessThan(1e-6);
  });

  test('loses no notch without setting another, and says the ease on both sides', () => {
    const done = walkCap(eased, { seam: 'armhole' });
    expect(done.findings).toEqual([]);
    expect(toldDid(done)).toMatch(/of 12 mm of ease 4\.8 mm lie in front and 7\.2 mm at the back/);
  });

  test('that is shorter than its armhole is refused; raised, it is taken', () => {
    const low = changeCap(eased, { piece: 'sleeve', by: -25, keep: 'width' }).pattern;
    expect(refusalOf(() => walkCap(low, { seam: 'armhole' }))).toMatchObject({
      code: 'cap-shorter-than-armhole',
      remedy: expect.stringContaining('change cap'),
    });
    const raised = changeCap(low, { piece: 'sleeve', by: 40, keep: 'width' }).pattern;
    expect(() => walkCap(raised, { seam: 'armhole' })).not.toThrow();
  });

  test('a seam without a cap is refused', () => {
    expect(refusalOf(() => walkCap(eased, { seam: 'side' }))).toMatchObject({ code: 'seam-without-cap' });
  });
});
