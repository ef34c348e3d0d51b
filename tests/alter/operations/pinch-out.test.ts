import { closeDart, pinchOut } from '@paperhinge/alter/darts';
import { type Piece, validatePattern } from '@paperhinge/geometry';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toldDid } from '../../support/told.js';
import {
  angleOf,
  anyBodice,
  areaOf,
  block,
  expectClosed,
  expectUntouched,
  leg,
  lengthOf,
  mouth,
  only,
  patternOf,
  refusal,
} from '../hinge/pieces.js';

type Given = Parameters<typeof pinchOut>[1];
const pinch = (changes: Partial<Given> = {}, piece: Piece = block()) =>
  pinchOut(patternOf(piece), {
    piece: 'block',
    edge: 'top',
    at: { mm: 100 },
    by: 12,
    into: 'bust',
    ...changes,
  });
const deg = (rad: number) => (rad * 180) / Math.PI;

describe('what gapes at an edge, pinched out into a dart', () => {
  // The point lies 200 mm under the top: 12 mm are 2 asin(12 / 400) = 3.438°, by which the dart opens.
  const turn = 2 * Math.asin(12 / 400);
  test('opens the dart by 2 asin of half the amount over the length of the fold', () => {
    const done = pinch();
    const whole = 2 * Math.asin(mouth / 2 / leg);
    expect(angleOf(only(done.pattern), 'bust')).toBeCloseTo(deg(whole + turn), 9);
    const wide = 2 * leg * Math.sin((whole + turn) / 2);
    expect(toldDid(done)).toBe(
      `12 mm (3.4°) were pinched out of the top of the block, 100 mm from its start, into the bust dart, which takes in ${wide.toFixed(1)} mm now; it was 30 mm.`,
    );
  });
  test('takes the wedge out of the area, cut across the fold', () => {
    // A straight edge square to the slash: each half crosses the other at 200 tan(θ/2) from its end.
    const lost = 2 * 200 * Math.tan(turn / 2);
    const after = only(pinch().pattern);
    expect(lengthOf(after, 'top')).toBeCloseTo(lengthOf(block(), 'top') - lost, 6);
    expect(areaOf(block()) - areaOf(after)).toBeCloseTo(200 * 200 * Math.tan(turn / 2), 5);
    expectUntouched(block(), after, 'top');
    expectClosed(after);
  });
  test('and the same dart closed again by as much into the same place gives back the angle', () => {
    const after = pinch().pattern;
    const now = (angleOf(only(after), 'bust') * Math.PI) / 180;
    const back = closeDart(after, { piece: 'block', dart: 'bust', into: 'hem', share: turn / now });
    expect(angleOf(only(back.pattern), 'bust')).toBeCloseTo(deg(2 * Math.asin(mouth / 2 / leg)), 9);
  });
  test('about a mark keeps the point as far back from it as it was', () => {
    const [dart] = dartsOf(only(pinch({ pivot: 'bust point' }).pattern));
    expect(distance(dart!.apex, block().marks[0]!.at)).toBeCloseTo(25, 9);
  });
  test('on any bodice opens the dart and keeps every edge but the one that gaped', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 1, max: 20, noNaN: true }), (piece, by) => {
        const given = { edge: 'neck', at: { share: 0.5 }, by };
        const { pattern } = pinch(given, piece);
        validatePattern(pattern);
        expect(angleOf(only(pattern), 'bust')).toBeGreaterThan(angleOf(piece, 'bust'));
        expectUntouched(piece, only(pattern), 'neck');
        expect(lengthOf(only(pattern), 'neck')).toBeLessThan(lengthOf(piece, 'neck'));
      }),
      { numRuns: 60 },
    );
  });
});

describe('what is refused, each with its remedy', () => {
  test('a fold wider than it is long; less mends it', () => {
    expect(() => pinch({ by: 260 })).toThrow(refusal('pinch-too-wide', /less/));
    expect(() => pinch({ by: 20 })).not.toThrow();
  });
  test('a dart and a mark that are not there', () => {
    expect(() => pinch({ into: 'waist' })).toThrow(refusal('unknown-dart', /bust/));
    expect(() => pinch({ pivot: 'nipple' })).toThrow(refusal('unknown-mark', /bust point/));
  });
});
