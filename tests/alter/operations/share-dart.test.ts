import { closeDart, joinDarts, moveDart, shareDart } from '@paperhinge/alter/darts';
import { edgePath, type Piece, validatePattern } from '@paperhinge/geometry';
import { pathEnd } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf, toldDid } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  block,
  depth,
  expectClosed,
  expectUntouched,
  leg,
  lengthOf,
  mouth,
  only,
  patternOf,
  radius,
  refusal,
} from '../hinge/pieces.js';

type Given = Parameters<typeof shareDart>[1];
const share = (changes: Partial<Given> = {}, piece: Piece = block()) =>
  shareDart(patternOf(piece), {
    piece: 'block',
    dart: 'bust',
    among: [{ edge: 'hem', share: 0.5 }, { edge: 'top' }],
    ...changes,
  });
/** The angle of the block's dart, in rad: w 30, L 120. */
const whole = 2 * Math.asin(mouth / 2 / leg);

describe('a dart shared out among edges', () => {
  // Hem 400 mm below the point, top 200 above it: each opens by 2 R sin(θ/4), half of the angle each.
  test('opens each by 2 R sin of half its share', () => {
    const after = only(share().pattern);
    expect(lengthOf(after, 'hem') - lengthOf(block(), 'hem')).toBeCloseTo(
      2 * radius * Math.sin(whole / 4),
      9,
    );
    expect(lengthOf(after, 'top') - lengthOf(block(), 'top')).toBeCloseTo(2 * 200 * Math.sin(whole / 4), 9);
    expect(dartsOf(after)).toEqual([]);
    expectUntouched(block(), after, 'hem', 'top');
    expectClosed(after);
  });
  test('adds the two wedges to the area and nothing else', () => {
    const wedge = (reach: number) => 0.5 * reach ** 2 * Math.sin(whole / 2);
    expect(areaOf(only(share().pattern)) - areaOf(block())).toBeCloseTo(wedge(radius) + wedge(200), 6);
  });
  test('is what closing it by shares, one after the other, gives', () => {
    const first = closeDart(patternOf(block()), { piece: 'block', dart: 'bust', into: 'hem', share: 0.3 });
    const both = closeDart(first.pattern, { piece: 'block', dart: 'bust', into: 'top' });
    const after = only(share({ among: [{ edge: 'hem', share: 0.3 }, { edge: 'top' }] }).pattern);
    for (const name of ['side-upper', 'side-lower', 'hem']) {
      const at = (piece: Piece) => pathEnd(edgePath(piece, name));
      expect(at(after).x).toBeCloseTo(at(only(both.pattern)).x, 9);
      expect(at(after).y).toBeCloseTo(at(only(both.pattern)).y, 9);
    }
  });
  test('into two places of one edge', () => {
    const among = [
      { edge: 'hem', at: { share: 0.25 } },
      { edge: 'hem', at: { share: 0.6 } },
    ];
    const after = only(share({ among }).pattern);
    const x = 100 + depth;
    const reaches = [0.25, 0.6].map(along => Math.hypot(x * (1 - along) - 100, radius));
    const opened = reaches.reduce((sum, reach) => sum + 2 * reach * Math.sin(whole / 4), 0);
    expect(lengthOf(after, 'hem') - lengthOf(block(), 'hem')).toBeCloseTo(opened, 9);
  });
  test('keeps in the dart what no share takes', () => {
    const among = [
      { edge: 'hem', share: 0.25 },
      { edge: 'top', share: 0.25 },
    ];
    const done = share({ among });
    const [rest] = dartsOf(only(done.pattern));
    const [a, b] = [rest!.legs[0].segments[0]![0], rest!.legs[1].segments.at(-1)!.at(-1)!];
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(2 * leg * Math.sin(whole / 4), 9);
    expect(toldDid(done)).toBe(
      `The bust dart of the block (14.4°) was shared out: 25 % into the hem, slashed ${depth.toFixed(1)} mm from its start, which opened by ${(2 * radius * Math.sin(whole / 8)).toFixed(1)} mm; 25 % into the top, slashed 100 mm from its start, which opened by ${(400 * Math.sin(whole / 8)).toFixed(1)} mm. 7.2° stays in it.`,
    );
  });
});

describe('a dart shared out into another dart', () => {
  /** The block with a second dart, moved there from the first by two fifths about the bust point. */
  const twoDarts = (piece: Piece = block()) =>
    only(
      moveDart(patternOf(piece), {
        piece: 'block',
        dart: 'bust',
        to: { edge: 'hem' },
        pivot: 'bust point',
        pointBack: 20,
        share: 0.4,
        name: 'waist',
      }).pattern,
    );
  const angleAbout = (piece: Piece, name: string, point: { readonly x: number; readonly y: number }) => {
    const { legs } = dartsOf(piece).find(d => d.name === name)!;
    const [a, b] = [legs[0].segments[0]![0], legs[1].segments.at(-1)!.at(-1)!];
    const turn = Math.atan2(a.y - point.y, a.x - point.x) - Math.atan2(b.y - point.y, b.x - point.x);
    return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)));
  };
  const given: Partial<Given> = {
    among: [{ dart: 'waist', share: 0.5 }, { edge: 'top' }],
    pivot: 'bust point',
  };

  test('keeps the sum of all angles about the pivot', () => {
    const before = twoDarts();
    const after = only(share(given, before).pattern);
    const point = before.marks[0]!.at;
    const bust = angleAbout(before, 'bust', point);
    expect(angleAbout(after, 'waist', point)).toBeCloseTo(angleAbout(before, 'waist', point) + bust / 2, 9);
    expect(lengthOf(after, 'top') - lengthOf(before, 'top')).toBeCloseTo(2 * 200 * Math.sin(bust / 4), 9);
    expectUntouched(before, after, 'top', 'hem');
  });
  test('wholly is what joining the two gives', () => {
    const before = twoDarts();
    const joined = joinDarts(patternOf(before), {
      piece: 'block',
      dart: 'bust',
      into: 'waist',
      pivot: 'bust point',
    });
    const after = only(share({ ...given, among: [{ dart: 'waist' }] }, before).pattern);
    expect(areaOf(after)).toBeCloseTo(areaOf(only(joined.pattern)), 6);
    expect(dartsOf(after).map(d => d.name)).toEqual(['waist']);
  });
  test('on any bodice is sound, closes the dart, and keeps what no slash touched', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 0.1, max: 0.8, noNaN: true }), (piece, part) => {
        const before = twoDarts(piece);
        const among = [{ dart: 'waist', share: part }, { edge: 'shoulder' }];
        const { pattern } = share({ among, pivot: 'bust point' }, before);
        validatePattern(pattern);
        expect(dartsOf(only(pattern)).map(d => d.name)).toEqual(['waist']);
        // Legs that came out unequal are trued at the edge beside them.
        expectUntouched(before, only(pattern), 'shoulder', 'hem', 'side-upper', 'side-lower');
      }),
      { numRuns: 40 },
    );
  });
});

describe('what is refused, each with its remedy', () => {
  test('shares of more than the whole; less mends it', () => {
    const among = (last: number) => [
      { edge: 'hem', share: 0.7 },
      { edge: 'top', share: last },
    ];
    expect(() => share({ among: among(0.5) })).toThrow(refusal('shares-over-whole', /100 % or less/));
    expect(() => share({ among: among(0.3) })).not.toThrow();
    expect(() => share({ among: [{ edge: 'hem', share: 0.7 }, { edge: 'top' }] })).not.toThrow();
  });
  test('a part without a share where the others take all', () => {
    const among = [{ edge: 'hem', share: 1 }, { edge: 'top' }];
    expect(() => share({ among })).toThrow(refusal('shares-leave-nothing', /leave that part out/));
    expect(() => share({ among: among.slice(0, 1) })).not.toThrow();
  });
  test('a part that goes nowhere, or to two places', () => {
    expect(() => share({ among: [{ share: 0.5 }] })).toThrow(
      refusal('share-place-unclear', /either "edge" or "dart"/),
    );
    expect(() => share({ among: [{ edge: 'hem', dart: 'bust' }] })).toThrow(refusal('share-place-unclear'));
  });
  test('the dart itself, none at all, and a dart that is not there', () => {
    expect(() => share({ among: [{ dart: 'bust' }] })).toThrow(refusal('dart-into-itself'));
    expect(refusalOf(() => share({ among: [] }))).toMatchObject({
      code: 'field-out-of-range',
      remedy: 'Give 1 to 12.',
    });
    expect(() => share({ among: [{ dart: 'waist' }] })).toThrow(refusal('unknown-dart'));
  });
});
