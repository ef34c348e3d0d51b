import { joinDarts, moveDart } from '@paperhinge/alter/darts';
import { at, line, type Piece, validatePattern } from '@paperhinge/geometry';
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
  only,
  patternOf,
  pieceOf,
  refusal,
} from '../hinge/pieces.js';

const deg = (rad: number): number => (rad * 180) / Math.PI;
/** Angle in degrees at a point between the ends of a dart's mouth. */
function angleAt(piece: Piece, name: string, point: { readonly x: number; readonly y: number }): number {
  const { legs } = dartsOf(piece).find(d => d.name === name)!;
  const a = legs[0].segments[0]![0],
    b = legs[1].segments.at(-1)!.at(-1)!;
  const turn = Math.atan2(a.y - point.y, a.x - point.x) - Math.atan2(b.y - point.y, b.x - point.x);
  return Math.abs(deg(Math.atan2(Math.sin(turn), Math.cos(turn))));
}

const split = (changes: Partial<Parameters<typeof moveDart>[1]> = {}, piece = block()) =>
  moveDart(patternOf(piece), {
    piece: 'block',
    dart: 'bust',
    to: { edge: 'hem' },
    pivot: 'bust point',
    pointBack: 20,
    share: 0.4,
    name: 'waist',
    ...changes,
  });

describe('a share of a dart moved', () => {
  const pivot = at(75, 200);
  const whole = angleAt(block(), 'bust', pivot);
  test('leaves two darts whose angles about the pivot add up to the first', () => {
    const after = only(split().pattern);
    expect(angleAt(after, 'waist', pivot)).toBeCloseTo(0.4 * whole, 9);
    expect(angleAt(after, 'bust', pivot)).toBeCloseTo(0.6 * whole, 9);
    expectUntouched(block(), after);
    expectClosed(after);
  });
  test('sets the point of either back from the pivot: the old one as far as it was', () => {
    const darts = dartsOf(only(split().pattern));
    const back = (name: string) => distance(darts.find(d => d.name === name)!.apex, pivot);
    expect(back('bust')).toBeCloseTo(25, 9);
    expect(back('waist')).toBeCloseTo(20, 9);
  });
  test('says how much went where', () => {
    const slash = Math.hypot((100 + depth) / 2 - 75, 400);
    const wide = (2 * slash * Math.sin((0.2 * whole * Math.PI) / 180)).toFixed(1);
    expect(toldDid(split())).toBe(
      `40 % of the bust dart of the block (${(0.4 * whole).toFixed(1)}°) was moved to the hem, ${((100 + depth) / 2).toFixed(1)} mm from its start, as the waist dart, ${wide} mm wide; ${(0.6 * whole).toFixed(1)}° stays.`,
    );
  });
  test('is refused without a name, with a name that is taken, or with both points in one', () => {
    const nameless = () =>
      moveDart(patternOf(block()), {
        piece: 'block',
        dart: 'bust',
        to: { edge: 'hem' },
        share: 0.5,
        pointBack: 9,
      });
    expect(nameless).toThrow(expect.objectContaining({ code: 'field-missing' }));
    expect(() => split({ name: 'bust' })).toThrow(refusal('dart-name-taken', /another name/));
    expect(() => split({ pointBack: 0 })).toThrow(refusal('dart-points-meet', /point back: 20 mm/));
    expect(() => split({ pointBack: 20 })).not.toThrow();
  });
  test('on any bodice keeps every length, and joined again gives back the whole angle', () => {
    fc.assert(
      fc.property(anyBodice, fc.double({ min: 0.2, max: 0.8, noNaN: true }), (piece, share) => {
        const parted = split({ share, to: { edge: 'shoulder' }, pointBack: 15 }, piece).pattern;
        validatePattern(parted);
        expectUntouched(piece, only(parted), 'side-upper', 'side-lower');
        const point = piece.marks[0]!.at;
        const joined = joinDarts(parted, {
          piece: 'block',
          dart: 'waist',
          into: 'bust',
          pivot: 'bust point',
        }).pattern;
        validatePattern(joined);
        expect(dartsOf(only(joined)).map(d => d.name)).toEqual(['bust']);
        const turned = only(joined).marks[0]!.at;
        expect(distance(turned, point)).toBeLessThan(1e-6);
      }),
      { numRuns: 40 },
    );
  });
});

/** Two darts whose points are one: closing one adds its angle to the other. */
function twoDarts(): Piece {
  return pieceOf(
    [
      edge('top', 'seam', line(at(0, 0), at(300, 0))),
      edge('side', 'seam', line(at(300, 0), at(300, 185))),
      dart('bust', at(300, 185), at(150, 200), at(300, 215)),
      edge('side', 'seam', line(at(300, 215), at(300, 500))),
      edge('waist', 'seam', line(at(300, 500), at(140, 500))),
      dart('under-bust', at(140, 500), at(120, 240), at(100, 500)),
      edge('waist', 'seam', line(at(100, 500), at(0, 500))),
      edge('centre', 'fold', line(at(0, 500), at(0, 0))),
    ],
    { marks: [{ kind: 'point', name: 'bust point', at: at(120, 200) }], lines: [] },
  );
}
const join = (piece = twoDarts(), changes: Partial<Parameters<typeof joinDarts>[1]> = {}) =>
  joinDarts(patternOf(piece), {
    piece: 'block',
    dart: 'bust',
    into: 'under-bust',
    pivot: 'bust point',
    ...changes,
  });

describe('darts joined in one', () => {
  const pivot = at(120, 200);
  test('add up their angles about the pivot', () => {
    const before = twoDarts();
    const after = only(join().pattern);
    const sum = angleAt(before, 'bust', pivot) + angleAt(before, 'under-bust', pivot);
    expect(angleAt(after, 'under-bust', pivot)).toBeCloseTo(sum, 9);
    // Hand-worked: 2 atan(15 / 180) + 2 atan(20 / 300).
    expect(sum).toBeCloseTo(deg(2 * Math.atan(15 / 180) + 2 * Math.atan(20 / 300)), 9);
    expect(dartsOf(after).map(d => d.name)).toEqual(['under-bust']);
    expectClosed(after);
  });
  test('keep the lengths of both edges, and the point as far back as it was', () => {
    const after = only(join().pattern);
    expectUntouched(twoDarts(), after);
    expect(distance(dartsOf(after)[0]!.apex, pivot)).toBeCloseTo(40, 9);
    expect(toldDid(join())).toBe(
      'The bust dart of the block (9.5°) was closed into the under bust dart, which takes in 89.7 mm now; it was 40 mm.',
    );
  });
  test('lose to the area what the legs drawn to the pivot take, and win what the point set back leaves', () => {
    const before = twoDarts();
    const after = only(join().pattern);
    const reach = Math.hypot(20, 300);
    const mouth = 2 * reach * Math.sin((angleAt(after, 'under-bust', pivot) * Math.PI) / 360);
    // Base times height over 2: the bust's wedge is 30 mm nearer the pivot, the other 40 mm; then 40 mm come back.
    const lost = (30 * 30) / 2 + (40 * 40) / 2;
    expect(areaOf(after)).toBeCloseTo(areaOf(before) - lost + (mouth * 40) / 2, 6);
  });
  test('can be closed the other way round', () => {
    const after = only(join(twoDarts(), { dart: 'under-bust', into: 'bust' }).pattern);
    expect(dartsOf(after).map(d => d.name)).toEqual(['bust']);
    expectUntouched(twoDarts(), after);
    expect(lengthOf(after, 'waist')).toBeCloseTo(260, 9);
  });
  test('are refused where they are one, or where one does not point to the pivot', () => {
    expect(() => join(twoDarts(), { into: 'bust' })).toThrow(refusal('dart-into-itself', /to stay/));
    const off = { ...twoDarts(), marks: [{ kind: 'point', name: 'bust point', at: at(20, 30) }] };
    expect(() => join(off)).toThrow(refusal('pivot-out-of-reach'));
    expect(() => join(twoDarts(), { pointBack: 400 })).toThrow(refusal('point-back-too-long', /less than/));
    expect(() => join(twoDarts(), { pivot: 'apex' })).toThrow(refusal('unknown-mark'));
  });
  test('a leg is drawn on where the mouth lies askew to the pivot', () => {
    const askew = { ...twoDarts(), marks: [{ kind: 'point', name: 'bust point', at: at(112, 200) }] };
    const done = join(askew);
    validatePattern(done.pattern);
    expect(done.findings.map(f => f.code)).toContain('dart-end-redrawn');
  });
});
