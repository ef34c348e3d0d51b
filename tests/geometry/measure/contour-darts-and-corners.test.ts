import { at, checkPattern, measurePattern, type Pattern, polyline } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { beyondEase } from '../../../packages/geometry/src/measure/crossing-check.js';
import { isLeftToTrue } from '../../../packages/geometry/src/measure/left-to-true.js';
import { type Corner, patternOf, pieceOf, rectangle, side } from '../../support/polygon-piece.js';

describe('a double-pointed dart', () => {
  const told = (...corners: readonly Corner[]) => {
    const path = polyline(...corners.map(([x, y]) => at(x, y)));
    const front = rectangle('front', 200, 300, { lines: [{ kind: 'dart', name: 'waist', path }] });
    return checkPattern(patternOf([front])).filter(f => f.code === 'contour-dart-cut');
  };
  const ring: readonly Corner[] = [
    [100, 60],
    [110, 140],
    [100, 220],
    [90, 140],
  ];
  test('closed and within its piece is whole', () => {
    expect(told(...ring, [100, 60])).toEqual([]);
    // Closed to a pen line.
    expect(told(...ring, [100, 60.04])).toEqual([]);
  });
  test('that does not close, runs over the edge, or lies beside the piece was cut', () => {
    const cut = [
      told(...ring),
      told(...ring, [100, 60.06]),
      told([100, 60], [210, 140], [100, 220], [90, 140], [100, 60]),
      told([300, 60], [310, 140], [300, 220], [290, 140], [300, 60]),
    ];
    for (const findings of cut)
      expect(findings.map(f => [f.severity, f.where, f.about])).toEqual([
        ['warning', { piece: 'front' }, { dart: { piece: 'front', dart: 'waist' } }],
      ]);
  });
});

test('a corner is left to be trued where the pattern lists it, within what can be seen, on either of its edges', () => {
  const left = { leftToTrue: [{ piece: 'front', edge: 'hem', at: 40 }] };
  const place = (piece: string, edge: string, mm: number) => ({ piece, edge, at: mm });
  expect(isLeftToTrue(left, place('front', 'hem', 40.09))).toBe(true);
  expect(isLeftToTrue(left, place('front', 'hem', 39.91))).toBe(true);
  expect(isLeftToTrue(left, place('front', 'side', 300), place('front', 'hem', 40))).toBe(true);
  for (const other of [place('back', 'hem', 40), place('front', 'side', 40), place('front', 'hem', 40.2)])
    expect(isLeftToTrue(left, other)).toBe(false);
  expect(isLeftToTrue({}, place('front', 'hem', 40))).toBe(false);
  // Up to what is seen, and with it: a tenth of a millimetre.
  const atStart = { leftToTrue: [place('front', 'hem', 0)] };
  expect(isLeftToTrue(atStart, place('front', 'hem', 0.1))).toBe(true);
  expect(isLeftToTrue(atStart, place('front', 'hem', 0.101))).toBe(false);
});

test('a long slant between two corners is a step where an alteration left both, a kink where it left one', () => {
  // The top steps down by 15 mm over a slant of 30: longer than what is taken for a step when it is drawn so.
  const slant = Math.hypot(26, 15);
  const front = pieceOf('front', [
    side('top', [
      [0, 0],
      [80, 0],
      [106, 15],
      [200, 15],
    ]),
    side('right', [
      [200, 15],
      [200, 300],
    ]),
    side('hem', [
      [200, 300],
      [0, 300],
    ]),
    side('left', [
      [0, 300],
      [0, 0],
    ]),
  ]);
  const told = (...left: readonly number[]) => {
    const leftToTrue = left.map(mm => ({ piece: 'front', edge: 'top', at: mm }));
    return checkPattern({ ...patternOf([front]), leftToTrue })
      .filter(f => f.code.startsWith('edge-'))
      .map(f => [f.code, f.figures!.alongMm, f.figures!.stepMm ?? f.figures!.angleDeg]);
  };
  const turnDeg = (Math.atan2(15, 26) * 180) / Math.PI;
  expect(told()).toEqual([]);
  expect(told(80)).toEqual([['edge-kinked', 80, expect.closeTo(turnDeg, 9)]]);
  expect(told(80 + slant)).toEqual([
    ['edge-kinked', expect.closeTo(80 + slant, 9), expect.closeTo(turnDeg, 9)],
  ]);
  expect(told(80, 80 + slant)).toEqual([['edge-stepped', 80, expect.closeTo(15, 9)]]);
});

test('ease lies beyond none, or beyond all that is wanted, by more than can be sewn', () => {
  const beyond = (easeMm: number, wantedMm: number) => beyondEase(easeMm, { wantedMm, toleranceMm: 0.8 });
  for (const [ease, wanted, expected] of [
    [0.8, 0, 0],
    [1.2, 0, 1.2],
    [-1.2, 0, -1.2],
    [10, 12, 0],
    [15, 12, 3],
    [-2, 12, -2],
    [-10, -12, 0],
    [-15, -12, -3],
    [2, -12, 2],
  ] as const)
    expect(beyond(ease, wanted)).toBeCloseTo(expected, 9);
});

test('fastenings are measured where there are any', () => {
  const front = rectangle('front', 200, 300);
  const fastened = (fastenings: NonNullable<Pattern['fastenings']>) =>
    measurePattern({ ...patternOf([front]), fastenings });
  const along = { piece: 'front', edge: 'left', reversed: false };
  expect(fastened([{ name: 'zip', kind: 'zip', along }]).fastenings).toEqual({
    zip: { kind: 'zip', lengthMm: 300 },
  });
  expect(fastened([])).not.toHaveProperty('fastenings');
  expect(measurePattern(patternOf([front]))).not.toHaveProperty('fastenings');
});
