import { moveDartPoint, openDart, resizeDart } from '@paperhinge/alter/darts';
import { at, line, type Piece, validatePattern } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toldDid } from '../../support/told.js';
import {
  anyBodice,
  areaOf,
  block,
  dart,
  depth,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  mouth,
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

const dartOf = (piece: Piece, name: string) => dartsOf(piece).find(d => d.name === name)!;
const mouthOf = (piece: Piece, name: string) => {
  const { legs } = dartOf(piece, name);
  return [pathStart(legs[0]), pathEnd(legs[1])] as const;
};

const open = (changes: Partial<Parameters<typeof openDart>[1]> = {}, piece = block()) =>
  openDart(patternOf(piece), {
    piece: 'block',
    edge: 'hem',
    at: { mm: 100 },
    intake: 24,
    depth: 110,
    name: 'waist',
    ...changes,
  });

describe('a new dart', () => {
  test('takes its intake from the edge and half of intake times depth from the area', () => {
    const after = only(open().pattern);
    expect(lengthOf(after, 'hem')).toBeCloseTo(lengthOf(block(), 'hem') - 24, 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()) - (24 * 110) / 2, 6);
    expectUntouched(block(), after, 'hem');
    expectClosed(after);
  });
  test('has equal legs, its point square to the edge', () => {
    const { apex } = dartOf(only(open().pattern), 'waist');
    // The hem runs from the right (100 + depth, 600) to the left.
    expect(distance(apex, at(depth, 490))).toBeLessThan(1e-9);
    expect(toldDid(open())).toBe(
      'The waist dart of the block was drawn into the hem, 100 mm from its start: it takes in 24 mm and is 110 mm deep.',
    );
  });
  test('points to a mark where its legs come out equal, and says where they would', () => {
    const marked = { ...block(), marks: [{ kind: 'point', name: 'dart point', at: at(120, 500) }] };
    const fits = { depth: undefined, to: 'dart point', at: { mm: 100 + depth - 120 } };
    const { depth: _, ...rest } = fits;
    const drawn = openDart(patternOf(marked), {
      piece: 'block',
      edge: 'hem',
      intake: 24,
      name: 'waist',
      ...rest,
    });
    expect(dartOf(only(drawn.pattern), 'waist').apex).toEqual(at(120, 500));
    const askew = () =>
      openDart(patternOf(marked), {
        piece: 'block',
        edge: 'hem',
        at: { mm: 60 },
        intake: 24,
        name: 'waist',
        to: 'dart point',
      });
    expect(askew).toThrow(
      refusal('dart-uneven-there', new RegExp(`${(100 + depth - 120).toFixed(1)} mm from the start`)),
    );
  });
  test('notches beside it keep their cloth; one in its mouth is told', () => {
    const notched: Piece = {
      ...block(),
      notches: [50, 100, 150].map(along => ({ edge: 'hem', at: along, style: 'single' as const })),
    };
    const done = open({}, notched);
    expect(only(done.pattern).notches.map(n => n.at)).toEqual([50, 126]);
    expect(done.findings.map(f => f.code)).toEqual(['notch-cut-away']);
  });
  test('is refused off the edge, across another dart, out of the piece, under a name that is taken', () => {
    expect(() => open({ at: { mm: 8 } })).toThrow(refusal('dart-off-edge', /farther/));
    expect(() => open({ at: { share: 1 } })).toThrow(refusal('dart-off-edge'));
    expect(() => open({ depth: 700 })).toThrow(refusal('dart-leaves-piece', /less deep/));
    expect(() => open({ at: { mm: 60 }, depth: 405 })).toThrow(refusal('dart-leaves-piece'));
    expect(() => open({ name: 'bust' })).toThrow(refusal('dart-name-taken'));
    expect(() => open({ to: 'bust point' })).toThrow(expect.objectContaining({ code: 'fields-exclude' }));
  });
});

const resize = (to: number, piece = block()) =>
  resizeDart(patternOf(piece), { piece: 'block', dart: 'bust', to });

describe('a dart that takes in more or less', () => {
  test('gives half the difference to the edge on either side', () => {
    const after = only(resize(20).pattern);
    expect(lengthOf(after, 'side-upper')).toBeCloseTo(185 + 5, 9);
    expect(lengthOf(after, 'side-lower')).toBeCloseTo(385 + 5, 9);
    expect(distance(...mouthOf(after, 'bust'))).toBeCloseTo(20, 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()) + (10 * depth) / 2, 6);
    expectUntouched(block(), after, 'side-upper', 'side-lower');
    expectClosed(after);
  });
  test('takes half of it from either side', () => {
    const after = only(resize(50).pattern);
    expect(lengthOf(after, 'side-upper')).toBeCloseTo(175, 9);
    expect(lengthOf(after, 'side-lower')).toBeCloseTo(375, 9);
    expect(toldDid(resize(50))).toBe('The bust dart of the block takes in 50 mm now; it was 30 mm.');
  });
  test('on any bodice takes in what is asked, and made as it was gives the edges their lengths back', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 2, max: 60, noNaN: true }), (piece, to) => {
        const was = distance(...mouthOf(piece, 'bust'));
        const done = resize(to, piece).pattern;
        validatePattern(done);
        expect(Math.abs(distance(...mouthOf(only(done), 'bust')) - to)).toBeLessThan(1e-6);
        if (to > was) return;
        const again = only(resizeDart(done, { piece: 'block', dart: 'bust', to: was }).pattern);
        expect(lengthOf(again, 'side-upper')).toBeCloseTo(lengthOf(piece, 'side-upper'), 6);
        expect(lengthOf(again, 'side-lower')).toBeCloseTo(lengthOf(piece, 'side-lower'), 6);
      }),
      { numRuns: 60 },
    );
  });
  test('is refused where the edge beside it is used up', () => {
    expect(() => resize(420)).toThrow(refusal('dart-beside-nothing', /take in less/));
  });
});

const point = (changes: Omit<Parameters<typeof moveDartPoint>[1], 'piece' | 'dart'>, piece = block()) =>
  moveDartPoint(patternOf(piece), { piece: 'block', dart: 'bust', ...changes });

describe('a dart’s point', () => {
  test('goes deeper or back along its axis', () => {
    expect(dartOf(only(point({ deeper: 25 }).pattern), 'bust').apex).toEqual(at(75, 200));
    const back = only(point({ deeper: -40 }).pattern);
    expect(dartOf(back, 'bust').apex.x).toBeCloseTo(140, 9);
    expect(areaOf(back)).toBeCloseTo(areaOf(block()) + (mouth * 40) / 2, 6);
    expectUntouched(block(), back);
    expect(toldDid(point({ deeper: 25 }))).toBe(
      `The point of the bust dart of the block was moved by 25 mm: the dart is ${(depth + 25).toFixed(1)} mm deep now; it was ${depth.toFixed(1)} mm.`,
    );
  });
  test('goes to a mark', () => {
    expect(dartOf(only(point({ to: 'bust point' }).pattern), 'bust').apex).toEqual(at(75, 200));
  });
  test('raised leaves the shorter leg drawn on to the length of the other, its edge to the new end', () => {
    const done = point({ up: 10 });
    const after = only(done.pattern);
    const { apex } = dartOf(after, 'bust');
    expect(apex).toEqual(at(100, 190));
    const [a, b] = mouthOf(after, 'bust');
    // From (100, 190): to (100 + depth, 185) and (100 + depth, 215); the upper leg is lengthened to the lower.
    expect(distance(b, apex)).toBeCloseTo(Math.hypot(depth, 25), 9);
    expect(distance(a, apex)).toBeCloseTo(Math.hypot(depth, 25), 9);
    expect(done.findings.map(f => [f.code, f.where.edge])).toEqual([['dart-end-redrawn', 'side-upper']]);
    expect(done.findings[0]!.figures!.movedMm).toBeCloseTo(Math.hypot(depth, 25) - Math.hypot(depth, 5), 9);
    validatePattern(done.pattern);
    expectClosed(after);
  });
  test('is refused where nothing of the dart is left, or out of reach', () => {
    expect(() => point({ deeper: -depth })).toThrow(refusal('dart-too-deep', /by less/));
    expect(() => point({ up: 150 })).toThrow(refusal('pivot-out-of-reach'));
    expect(() => point({ deeper: 300 })).toThrow(refusal('pivot-out-of-reach'));
    expect(() => point({})).toThrow(expect.objectContaining({ code: 'field-missing' }));
  });
});

test('a dart between two edges of a corner is resized', () => {
  const corner = pieceOf([
    edge('top', 'seam', line(at(0, 0), at(300, 0))),
    edge('side', 'seam', line(at(300, 0), at(300, 385))),
    dart('bust', at(300, 385), at(150, 250), at(285, 400)),
    edge('hem', 'hem', line(at(285, 400), at(0, 400))),
    edge('centre', 'fold', line(at(0, 400), at(0, 0))),
  ]);
  const after = only(resize(10, corner).pattern);
  expect(distance(...mouthOf(after, 'bust'))).toBeCloseTo(10, 9);
  expectClosed(after);
});
