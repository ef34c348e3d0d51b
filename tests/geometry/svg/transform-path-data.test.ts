import { drawPathData, transformPathData } from '@paperhinge/geometry/svg';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curvesOf, measureCurves } from '../../corpus/path-reference.js';

const identity = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

describe('path data carried by a map', () => {
  test.each([
    ['M1 2h3v4H0V0z', 'M1 2L4 2L4 6L0 6L0 0Z'],
    ['m1 2 3 4 5-6', 'M1 2L4 6L9 0'],
    ['M0 0c1 2 3 4 5 6s7 8 9 10', 'M0 0C1 2 3 4 5 6C7 8 12 14 14 16'],
    ['M0 0q1 2 4 0t4 0', 'M0 0Q1 2 4 0Q7 -2 8 0'],
    ['M0 0a5 5 0 01 4 2', 'M0 0A5 5 0 0 1 4 2'],
    ['M0 0a0 5 0 01 4 2', 'M0 0L4 2'],
    ['M3 3a5 5 0 01 0 0l1 1', 'M3 3L4 4'],
    ['M1 1l1 0zl0 1', 'M1 1L2 1ZL1 2'],
    ['', ''],
  ])('%s becomes %s when nothing is moved', (before, after) => {
    expect(transformPathData(before, identity)).toEqual({ data: after });
  });

  test('a circle under a stretch is an ellipse, and a mirror image turns the other way', () => {
    expect(transformPathData('M0 0A5 5 0 0 1 4 2', { ...identity, a: 2 }).data).toBe('M0 0A10 5 0 0 1 8 2');
    expect(transformPathData('M0 0A5 5 0 0 1 4 2', { ...identity, a: -1 }).data).toMatch(
      /^M0 0A5 5 \S+ 0 0 -4 2$/,
    );
  });

  test('a map that squeezes everything flat leaves the arc’s extent', () => {
    const { data } = transformPathData('M-5 0A5 5 0 0 1 5 0', { ...identity, a: 0 });
    expect(data).toMatch(/^M0 0C/);
    expect(measureCurves(curvesOf(data)).box[1]).toBeCloseTo(-5, 8);
  });

  test('damaged data is written up to the fault, which is named', () => {
    expect(transformPathData('M0 0L5 5L1e400 3', identity)).toEqual({
      data: 'M0 0L5 5',
      fault: { index: 14, reason: 'number-too-large' },
    });
    expect(transformPathData('L1 1', identity)).toMatchObject({ data: '', fault: { index: 0 } });
  });

  test('numbers beyond what toFixed can write get no exponent', () => {
    expect(transformPathData('M1e30 -1e25', identity).data).toBe(
      'M1000000000000000019884624838656 -10000000000000000905969664',
    );
  });

  const coordinate = fc.integer({ min: -4000, max: 4000 }).map(n => n / 100);
  const flag = fc.integer({ min: 0, max: 1 });
  const radius = fc.integer({ min: 1, max: 3000 }).map(n => n / 100);
  const command = fc.oneof(
    fc.tuple(coordinate, coordinate).map(n => `l${n.join(' ')}`),
    fc.tuple(coordinate, coordinate, coordinate, coordinate).map(n => `q${n.join(' ')}`),
    fc
      .tuple(radius, radius, coordinate, flag, flag, coordinate, coordinate)
      .map(([rx, ry, ...n]) => `a${rx} ${ry} ${n.join(' ')}`),
    fc.tuple(radius, flag, coordinate, coordinate).map(([r, sweep, x, y]) => {
      // Half a circle, in numbers that hit the radius exactly or nearly.
      const size = Math.hypot(x, y) || 1;
      return `a${r} ${r} 0 0 ${sweep} ${((2 * r * x) / size).toFixed(3)} ${((2 * r * y) / size).toFixed(3)}`;
    }),
    fc.constant('z'),
  );
  const factor = fc.integer({ min: -300, max: 300 }).map(n => n / 100);

  test('draws what an independent reader draws of the data and then maps', () => {
    fc.assert(
      fc.property(
        fc.array(command, { minLength: 1, maxLength: 6 }),
        fc.tuple(factor, factor, factor, factor, coordinate, coordinate),
        (commands, [a, b, c, d, e, f]) => {
          const before = `M1 2${commands.join('')}`;
          const wanted = measureCurves(curvesOf(before, [a, b, c, d, e, f]));
          const got = measureCurves(curvesOf(transformPathData(before, { a, b, c, d, e, f }).data));
          // What dense sampling can tell apart, where a curve squeezed nearly flat turns back.
          const near = 1e-5 * (1 + wanted.length);
          expect(Math.abs(got.length - wanted.length)).toBeLessThan(20 * near);
          if (wanted.length > 0)
            wanted.box.forEach((side, i) => {
              expect(Math.abs(got.box[i]! - side)).toBeLessThan(near);
            });
        },
      ),
      { numRuns: 300 },
    );
  });
});

test('a pen of one’s own gets shorthands as what they stand for and arcs as arcs', () => {
  const drawn: unknown[][] = [];
  const note =
    (name: string) =>
    (...values: unknown[]): void => {
      drawn.push([name, ...values]);
    };
  const fault = drawPathData('m1 1h2s3 3 4 4t1 1a1 2 3 01.5 0z', {
    moveTo: note('move'),
    lineTo: note('line'),
    cubicTo: note('cubic'),
    quadraticTo: note('quadratic'),
    arcTo: note('arc'),
    close: note('close'),
  });
  expect(fault).toBeUndefined();
  expect(drawn).toEqual([
    ['move', 1, 1],
    ['line', 3, 1],
    ['cubic', 3, 1, 6, 4, 7, 5],
    ['quadratic', 7, 5, 8, 6],
    ['arc', { rx: 1, ry: 2, turn: 3, large: false, sweep: true, x: 8.5, y: 6 }],
    ['close'],
  ]);
});
