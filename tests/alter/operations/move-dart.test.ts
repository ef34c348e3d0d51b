import { moveDart } from '@paperhinge/alter/darts';
import { at, type Dart, line, type Piece } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, distance, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { describe, expect, test } from 'vitest';
import { toldDid } from '../../support/told.js';
import {
  angleOf,
  areaOf,
  begunAt,
  block,
  dart,
  depth,
  edge,
  expectClosed,
  expectUntouched,
  lengthOf,
  mirrorImage,
  mouth,
  only,
  patternOf,
  refusal,
} from '../hinge/pieces.js';

const move = (piece: Piece, changes: Partial<Parameters<typeof moveDart>[1]> = {}) =>
  moveDart(patternOf(piece), {
    piece: 'block',
    dart: 'bust',
    to: { edge: 'hem' },
    pivot: 'bust point',
    pointBack: 20,
    ...changes,
  });

// The bust point lies 25 mm beyond the apex on the dart's axis, so the redrawn legs are equal.
const pivot = at(75, 200);
const redrawnLeg = Math.hypot(depth + 25, mouth / 2);
const turn = 2 * Math.asin(mouth / 2 / redrawnLeg);
const slash = Math.hypot((100 + depth) / 2 - 75, 400);
const mouthOf = ({ legs }: Dart) => [pathStart(legs[0]), pathEnd(legs[1])] as const;

describe('moving a dart about the bust point', () => {
  test('opens it as wide as 2 R sin of half its angle at the pivot', () => {
    const after = only(move(block()).pattern);
    const [a, b] = mouthOf(dartsOf(after)[0]!);
    expect(Math.abs(distance(a, b) - 2 * slash * Math.sin(turn / 2))).toBeLessThan(1e-9);
    expect(distance(a, pivot)).toBeCloseTo(slash, 9);
    expect(distance(b, pivot)).toBeCloseTo(slash, 9);
  });
  test('keeps the sum of the angles about the pivot', () => {
    const [a, b] = mouthOf(dartsOf(only(move(block()).pattern))[0]!);
    expect(2 * Math.asin(distance(a, b) / 2 / distance(a, pivot))).toBeCloseTo(turn, 11);
  });
  test('sets the stitched point back along the new axis, legs straight from the mouth to it', () => {
    const [moved] = dartsOf(only(move(block()).pattern));
    const [a, b] = mouthOf(moved!);
    const axis = unit(subtract(scale(add(a, b), 0.5), pivot));
    expect(distance(moved!.apex, add(pivot, scale(axis, 20)))).toBeLessThan(1e-9);
    expect(moved!.legs.map(l => l.segments.length)).toEqual([1, 1]);
    expect(distance(a, moved!.apex)).toBeCloseTo(distance(b, moved!.apex), 9);
  });
  test('keeps its name, and the edge it opens in stays one edge round it', () => {
    const after = only(move(block()).pattern);
    expect(after.outline.parts.map(p => p.name)).toEqual([
      'top',
      'side-upper',
      'side-lower',
      'hem',
      'bust',
      'hem',
      'centre',
    ]);
    expectUntouched(block(), after);
    expectClosed(after);
  });
  test('changes the area by what the two redrawn points take and give', () => {
    const intake = 2 * slash * Math.sin(turn / 2);
    const expected = areaOf(block()) - (mouth * 25) / 2 + (intake * 20) / 2;
    expect(areaOf(only(move(block()).pattern))).toBeCloseTo(expected, 6);
  });
  test('says what it did', () => {
    expect(toldDid(move(block()))).toBe(
      `The bust dart of the block (${((turn * 180) / Math.PI).toFixed(1)}°) was moved to the hem, ` +
        `${((100 + depth) / 2).toFixed(1)} mm from its start, turning about the bust point mark; ` +
        `it is ${(2 * slash * Math.sin(turn / 2)).toFixed(1)} mm wide there, its point 20 mm back.`,
    );
  });
  test('there and back again gives the same piece', () => {
    const there = move(block()).pattern;
    const back = moveDart(there, {
      piece: 'block',
      dart: 'bust',
      to: { edge: 'side-upper', at: { share: 1 } },
      pivot: 'bust point',
      pointBack: 25,
    });
    const after = only(back.pattern);
    expect(after.outline.parts.map(p => p.name)).toEqual(block().outline.parts.map(p => p.name));
    for (const [i, part] of after.outline.parts.entries()) {
      const was = block().outline.parts[i]!;
      const start = (p: typeof part) => pathStart(pathsOfPart(p)[0]!);
      expect(distance(start(part), start(was))).toBeLessThan(1e-9);
    }
    expect(distance(dartsOf(after)[0]!.apex, at(100, 200))).toBeLessThan(1e-9);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()), 6);
  });
  test('does not care where the list of edges begins', () => {
    for (let k = 0; k < 6; k++) {
      const after = only(move(begunAt(block(), k)).pattern);
      expectClosed(after);
      expect(areaOf(after)).toBeCloseTo(areaOf(only(move(block()).pattern)), 6);
      expect(lengthOf(after, 'hem')).toBeCloseTo(lengthOf(block(), 'hem'), 9);
    }
  });
  test('does the same to the mirror image', () => {
    const straight = only(move(block(), { to: { edge: 'hem', at: { share: 0.3 } } }).pattern);
    const turned = only(move(mirrorImage(block()), { to: { edge: 'hem', at: { share: 0.7 } } }).pattern);
    expect(areaOf(turned)).toBeCloseTo(areaOf(straight), 6);
    expect(angleOf(turned, 'bust')).toBeCloseTo(angleOf(straight, 'bust'), 9);
  });
});

describe('other ways to move it', () => {
  test('without a pivot it turns about its own drawn point', () => {
    const after = only(move(block(), { pivot: undefined, pointBack: 0 } as never).pattern);
    expect(dartsOf(after)[0]!.apex).toEqual(at(100, 200));
    expect(angleOf(after, 'bust')).toBeCloseTo(angleOf(block(), 'bust'), 9);
    expect(areaOf(after)).toBeCloseTo(areaOf(block()), 6);
  });
  test('to the corner of an edge it stands between two edges', () => {
    const after = only(move(block(), { to: { edge: 'hem', at: { share: 0 } } }).pattern);
    expect(after.outline.parts.map(p => p.name)).toEqual([
      'top',
      'side-upper',
      'side-lower',
      'bust',
      'hem',
      'centre',
    ]);
    expectClosed(after);
  });
  test('a wish to press it its own way ends with the old place, and that is said', () => {
    const parts = block().outline.parts.map(p =>
      p.type === 'dart' ? { ...p, pressed: 'start' as const } : p,
    );
    const { pattern, findings } = move({ ...block(), outline: { parts } });
    expect(dartsOf(only(pattern))[0]!.pressed).toBeUndefined();
    expect(findings.map(f => f.code)).toContain('pressing-by-default');
  });
  test('a pivot off its axis leaves a step at the old place, and that is said', () => {
    const piece = { ...block(), marks: [{ kind: 'point', name: 'bust point', at: at(75, 210) }] };
    const { pattern, findings } = move(piece);
    const x = 100 + depth;
    const step = Math.hypot(x - 75, 25) - Math.hypot(x - 75, 5);
    expect(findings.find(f => f.code === 'dart-step')!.figures!.stepMm).toBeCloseTo(step, 9);
    expectClosed(only(pattern));
  });
});

describe('what is refused', () => {
  test('a mark that is not there, with the one that was meant', () => {
    expect(() => move(block(), { pivot: 'bust piont' })).toThrow(refusal('unknown-mark', /bust point/));
  });
  test('a pivot outside the piece', () => {
    const piece = { ...block(), marks: [{ kind: 'point', name: 'bust point', at: at(-20, 200) }] };
    expect(() => move(piece)).toThrow(refusal('pivot-out-of-reach'));
  });
  test('a pivot that the dart turns its back on', () => {
    const piece = { ...block(), marks: [{ kind: 'point', name: 'bust point', at: at(150, 400) }] };
    expect(() => move(piece)).toThrow(refusal('pivot-out-of-reach'));
  });
  test('a point set back by more than the dart is deep', () => {
    expect(() => move(block(), { pointBack: 500 })).toThrow(
      refusal('point-back-too-long', /less than that depth/),
    );
  });
  test('a place to which the slash would run through another dart', () => {
    const x = 100 + depth;
    const second = [
      edge('hem', 'hem', line(at(x, 600), at(130, 600))),
      dart('waist', at(130, 600), at(110, 300), at(110, 600)),
      edge('hem', 'hem', line(at(110, 600), at(0, 600))),
    ];
    const parts = block().outline.parts.flatMap(p => (p.name === 'hem' ? second : [p]));
    const piece = { ...block(), outline: { parts } };
    expect(() => move(piece, { to: { edge: 'hem', at: { mm: x - 130 - 2 } } })).toThrow(
      refusal('slash-crosses-dart'),
    );
  });
  test('the very place it stands in', () => {
    expect(() => move(block(), { to: { edge: 'side-upper', at: { share: 1 } } })).toThrow(
      refusal('slash-crosses-dart'),
    );
  });
});
