import { readShapes } from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePathData } from '../../../packages/geometry/src/svg/path-data.js';
import { inMillimetres, shapeOf } from './in-millimetres.js';

/** Where each segment of the only stroke ends. */
const ends = (d: string) =>
  parsePathData(d).subpaths.flatMap(s =>
    s.segments.map(segment => segment.at(-1)!).map(({ x, y }) => [x, y]),
  );
const controls = (d: string) =>
  parsePathData(d).subpaths.flatMap(s => s.segments.map(g => g.map(({ x, y }) => [x, y])));

// SVG 2, chapter 9 (grammar and error rule). [read]
describe('the grammar', () => {
  test('a number is the longest match', () => {
    expect(ends('M 100-200L1 1')).toEqual([[1, 1]]);
    expect(parsePathData('M 100-200L1 1').subpaths[0]!.start).toEqual({ x: 100, y: -200 });
    expect(parsePathData('M 0.6.5L1 1').subpaths[0]!.start).toEqual({ x: 0.6, y: 0.5 });
    expect(ends('M0 0L1e1.5-2E-1+3')).toEqual([
      [10, 0.5],
      [-0.2, 3],
    ]);
  });

  test('arc flags are single digits that need no separator', () => {
    const packed = controls('M0 0a1,1 0 01.5.5');
    expect(packed).toEqual(controls('M0 0 a 1 1 0 0 1 .5 .5'));
    expect(packed.at(-1)!.at(-1)).toEqual([0.5, 0.5]);
  });

  test('further pairs after M are lines, after m relative ones', () => {
    expect(ends('M1 1 2 2 3 3')).toEqual([
      [2, 2],
      [3, 3],
    ]);
    expect(ends('m1 1 2 2 3 3')).toEqual([
      [3, 3],
      [6, 6],
    ]);
  });

  test('H, V and Z stay lines', () => {
    expect(controls('M1 1H5V7Z').every(segment => segment.length === 2)).toBe(true);
    expect(ends('M1 1h5v7z')).toEqual([
      [6, 1],
      [6, 8],
      [1, 1],
    ]);
  });

  test('after Z drawing goes on from the start of the stroke', () => {
    const { subpaths } = parsePathData('M1 1h5v5z l-1 0');
    expect(subpaths.map(s => s.closed)).toEqual([true, false]);
    expect(subpaths[1]!.segments[0]).toEqual([
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ]);
  });

  test('S and T reflect the last control point, and take the current point after other commands', () => {
    expect(controls('M100 200 C100 100 250 100 250 200 S400 300 400 200')[1]![1]).toEqual([250, 300]);
    expect(controls('M0 0 L10 0 S20 10 30 0')[1]![1]).toEqual([10, 0]);
    expect(controls('M0 0 Q5 5 10 0 S20 10 30 0')[1]![1]).toEqual([10, 0]);
    // The second curve of "T" reflects the control point of the first, also through several T.
    expect(controls('M0 0 Q5 6 10 0 T20 0 T30 0')[2]![1]![1]).toBeCloseTo(4, 12);
  });

  test.each([
    ['M0,0 L10', 'L10 lacks its y'],
    ['M0 0 L1 1,', 'a comma with nothing behind it'],
    ['M0 0 L1 1 X 4 4', 'no such command'],
    ['M0 0 C1 1 2 2', 'a cubic short of a point'],
    ['M0 0 A1 1 0 2 1 5 5', 'a flag that is 2'],
    ['M0 0 L1,,1', 'two commas'],
    ['M0 0 L1e400 0', 'a number beyond all numbers'],
    ['L1 1', 'no M at the start'],
    ['M0 0 z 5', 'a number after z'],
  ])('%s: %s is a fault, and all before it stands', d => {
    const { fault } = parsePathData(d);
    expect(fault).toBeDefined();
    expect(fault!.index).toBeGreaterThanOrEqual(0);
    expect(fault!.index).toBeLessThanOrEqual(d.length);
  });

  test('damaged data is drawn up to the fault, with a finding that gives line and column', () => {
    const source = inMillimetres('\n<path id="bad" d="M0 0 L10 0\nL20 x"/>');
    const { shapes, findings } = readShapes(source, { file: 'a.svg' });
    expect(shapes[0]!.lengthMm).toBe(10);
    expect(findings).toMatchObject([
      { code: 'path-data-broken', where: { file: 'a.svg', line: 3, column: 5 } },
    ]);
  });

  test('any text is parsed or found faulty, and never gives a coordinate that is no number', () => {
    const piece = fc.constantFrom(
      'M',
      'm',
      'L',
      'c',
      'S',
      'q',
      'T',
      'a',
      'A',
      'z',
      ' ',
      ',',
      '1',
      '-2',
      '.5',
      '1e9',
      '0',
      'e',
      '\n',
      'é',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), pieces => {
        const { subpaths } = parsePathData(pieces.join(''));
        for (const { segments } of subpaths)
          for (const segment of segments)
            for (const p of segment) expect(Number.isFinite(p.x) && Number.isFinite(p.y)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test('numbers are read to the last bit', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, min: -1e5, max: 1e5 }),
        fc.integer({ min: 0, max: 12 }),
        (n, digits) => {
          for (const text of [String(n), n.toFixed(digits)])
            expect(parsePathData(`M0 0L${text} 0`).subpaths[0]!.segments[0]![1]!.x + 0).toBe(
              Number(text) + 0,
            );
        },
      ),
    );
  });
});

// Lengths ±1e-6, areas 1e-7 relative: SVG 2, figures of its own examples [read]; numbers in closed form [derived].
describe('the specification’s own examples', () => {
  test.each([
    ['M0 0 A1 1 0 0 1 2 0', Math.PI],
    ['M0 0 A1 1 0 0 1 10 0', 15.70796326795],
    ['M0 0 A25 25 -30 0 1 50 -25', 87.810184138],
    ['M0 0 A25 50 -30 0 1 50 -25', 135.217782965],
    ['M0 0 A25 75 -30 0 1 50 -25', 186.481818291],
    ['M0 0 A25 100 -30 0 1 50 -25', 239.370360986],
    ['M125 75 a100 50 0 0 0 100 50', 121.105602757],
    ['M125 75 a100 50 0 1 1 100 50', 363.316808271],
    ['M0 0 A60 40 30 0 1 80 20', 87.894919608],
    ['M0 0 A60 40 30 1 0 80 20', 229.413872178],
    ['M100 200 C100 100 250 100 250 200 S400 300 400 200', 2 * 237.873649448126],
    ['M200 300 Q400 50 600 300 T1000 300', 2 * 487.771093895524],
    ['M0 0 A-1 -1 0 0 1 2 0', Math.PI],
    ['M0 0 A0 5 0 0 1 3 4', 5],
  ])('%s has its length', (d, length) => {
    expect(Math.abs(shapeOf(d).lengthMm - length)).toBeLessThan(1e-6);
  });

  test.each([
    ['M300 200 h-150 a150 150 0 1 0 150 -150 z', 53014.376029, 1006.858347058],
    ['M275 175 v-150 a150 150 0 0 0 -150 150 z', 17671.458676, 535.619449019],
  ])('%s has its area and perimeter', (d, area, perimeter) => {
    const shape = shapeOf(d);
    expect(Math.abs(shape.areaMm2 / area - 1)).toBeLessThan(1e-7);
    expect(Math.abs(shape.lengthMm - perimeter)).toBeLessThan(1e-6);
    expect(shape.closed).toBe(true);
  });

  test('an arc from a point to itself is left out', () => {
    expect(ends('M5 5 A3 3 0 1 1 5 5 L6 6')).toEqual([[6, 6]]);
  });

  test('the four arcs between two points have the centres of the specification', () => {
    const middle = (large: number, sweep: number) => {
      const segments = controls(`M125 75 a100 50 0 ${large} ${sweep} 100 50`);
      return segments.map(s => s.at(-1)!);
    };
    const onEllipse = (points: number[][], cx: number, cy: number) =>
      Math.max(...points.map(([x, y]) => Math.abs(Math.hypot((x! - cx) / 100, (y! - cy) / 50) - 1)));
    expect(onEllipse(middle(0, 0), 225, 75)).toBeLessThan(1e-12);
    expect(onEllipse(middle(1, 1), 225, 75)).toBeLessThan(1e-12);
    expect(onEllipse(middle(0, 1), 125, 125)).toBeLessThan(1e-12);
    expect(onEllipse(middle(1, 0), 125, 125)).toBeLessThan(1e-12);
  });
});

describe('arcs as cubics', () => {
  test('none spans more than 7.5 degrees', () => {
    expect(controls('M0 0 A1 1 0 0 1 2 0')).toHaveLength(24);
    expect(controls('M1 0 A1 1 0 0 1 0 1')).toHaveLength(12);
  });

  // (2/27) sin⁶(δ/4)/cos²(δ/4) of the radius at δ = 7.5°: 9.2e-11 [derived].
  test('they keep within the bound stated of the circle, and never inside it', () => {
    const r = 400;
    for (const [p, q, s, t] of controls(`M${-r} 0 A${r} ${r} 0 0 1 ${r} 0`) as number[][][])
      for (let i = 0; i <= 20; i++) {
        const u = i / 20,
          v = 1 - u;
        const at = (k: number) =>
          v ** 3 * p![k]! + 3 * v * v * u * q![k]! + 3 * v * u * u * s![k]! + u ** 3 * t![k]!;
        const error = Math.hypot(at(0), at(1)) - r;
        expect(error).toBeGreaterThan(-1e-12 * r);
        expect(error).toBeLessThan(9.3e-11 * r);
      }
  });
});

// What grew with the square of its length would not end within a test's time.
test('a path of 80,000 segments is read', () => {
  const d = `M0 0${'l1 1.5c.1.2.3.4.5.6'.repeat(40_000)}`;
  const { subpaths, fault } = parsePathData(d);
  expect(fault).toBeUndefined();
  expect(subpaths[0]!.segments).toHaveLength(80_000);
});
