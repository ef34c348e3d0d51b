import { at, line } from '@paperhinge/geometry';
import {
  type Cubic,
  lengthBetween,
  parameterAtLength,
  pointAt,
  quadratic,
  segmentLength,
} from '@paperhinge/geometry/curves';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { referenceLength } from '../../support/reference-length.js';
import { anyCubic } from '../../support/ugly-curves.js';

const apart = (a: number, b: number): number => Math.abs(a - b);
const bound = 1e-9;

describe('closed forms', () => {
  // Neile's parabola y² = x³, the first curve rectified (1657), from its cusp. [derived]
  test('a cusped curve has its closed-form length', () => {
    const neile: Cubic = [at(0, 0), at(0, 0), at(100, 0), at(300, 300)];
    expect(apart(segmentLength(neile), (300 * (13 * Math.sqrt(13) - 8)) / 27)).toBeLessThan(bound);
  });
  test.each<[string, Cubic, number]>([
    // Pomax/bezierjs test/general/cubic.test.js [read]; speed 3(1 − 2t + 2t²) [derived]
    ['(0,0)(0,1)(1,1)(1,0)', [at(0, 0), at(0, 1), at(1, 1), at(1, 0)], 2],
    // Same file [read]; length [derived]
    ['(0,0)(1,¼)(0,1)(1,0)', [at(0, 0), at(1, 0.25), at(0, 1), at(1, 0)], 1.49432898201853],
    // linebender/kurbo cubicbez.rs true_arclen [read]; √5/2 + asinh(2)/4 [derived]
    [
      'the parabola y = x² on 0..1',
      quadratic(at(0, 0), at(0.5, 0), at(1, 1)),
      Math.sqrt(5) / 2 + Math.asinh(2) / 4,
    ],
    // bezierjs projection.test.js [read]; 100(1 + asinh(1)/√2) [derived]
    [
      '(0,0)(100,0)(100,100)',
      quadratic(at(0, 0), at(100, 0), at(100, 100)),
      100 * (1 + Math.asinh(1) / Math.SQRT2),
    ],
    // bezierjs extrema.test.js [read]; length [derived]
    [
      '(330,592)(330,557)(315,522)(315,485)',
      [at(330, 592), at(330, 557), at(315, 522), at(315, 485)],
      108.2546647127997,
    ],
    // Quarter circle of radius 1 by k = 4(√2 − 1)/3 [derived]
    [
      'the k quarter',
      [at(1, 0), at(1, 0.552284749830793), at(0.552284749830793, 1), at(0, 1)],
      1.571016698073856,
    ],
    // Neckline-like and armhole-like [derived]
    ['a neckline', [at(0, 0), at(0, 50), at(30, 80), at(80, 80)], 128.290302356959],
    ['a deeper neckline', [at(0, 0), at(0, 70), at(40, 90), at(75, 90)], 132.746025145587],
    ['an armhole', [at(0, 0), at(60, 10), at(120, 60), at(150, 200)], 265.928780895492],
    // Pythagorean hodograph [derived]
    ['a Pythagorean-hodograph cubic', [at(0, 0), at(-100, 0), at(-200, 100), at(-200, 300)], 400],
    // Parabolic scoop, span 100, depth 25: ½√(s² + 16h²) + (s²/8h) asinh(4h/s) [derived]
    ['a scoop', quadratic(at(0, 0), at(50, 50), at(100, 0)), 114.779357469632],
  ])('%s', (_, curve, length) => {
    expect(apart(segmentLength(curve), length)).toBeLessThan(bound);
  });
  // On a line, speed is a quadratic: the length is that of the stretches between its zeros. [derived]
  test('a curve that doubles back on a line is as long as its stretches', () => {
    const curve: Cubic = [at(0, 0), at(300, 0), at(-100, 0), at(200, 0)];
    const turns = [0.5 - Math.sqrt(1 / 28), 0.5 + Math.sqrt(1 / 28)].map(t => pointAt(curve, t).x);
    expect(apart(segmentLength(curve), turns[0]! + (turns[0]! - turns[1]!) + (200 - turns[1]!))).toBeLessThan(
      bound,
    );
  });
});

// These two broke earlier drafts, the first by 4e-4 mm where two rules agreed by chance.
const examples: [Cubic][] = [
  [[at(0, 0), at(300, 0), at(-100, 0), at(200, 1e-3)]],
  [[at(0, 0), at(300, 300), at(0, 300.1), at(300, 0)]],
];

test('any curve agrees with an independent quadrature', () => {
  fc.assert(
    fc.property(anyCubic, curve => {
      const size = Math.max(...curve.flatMap(p => [Math.abs(p.x), Math.abs(p.y)]));
      expect(apart(segmentLength(curve), referenceLength(curve))).toBeLessThan(
        bound * Math.max(1, size / 1000),
      );
    }),
    { examples, numRuns: 200 },
  );
});
test('two parts are as long as the whole', () => {
  fc.assert(
    fc.property(anyCubic, fc.double({ min: 0, max: 1, noNaN: true }), (curve, t) => {
      const sum = lengthBetween(curve, 0, t) + lengthBetween(curve, t, 1);
      expect(apart(sum, segmentLength(curve))).toBeLessThan(3 * bound);
    }),
  );
});
test('the parameter at a length cuts off that length', () => {
  fc.assert(
    fc.property(anyCubic, fc.double({ min: 0, max: 1, noNaN: true }), (curve, share) => {
      const length = segmentLength(curve) * share;
      const size = Math.max(1, segmentLength(curve) / 1000);
      expect(apart(lengthBetween(curve, 0, parameterAtLength(curve, length)), length)).toBeLessThan(
        bound * size,
      );
    }),
    { numRuns: 300 },
  );
});
test('a length beyond the ends gives the ends', () => {
  const curve: Cubic = [at(0, 0), at(0, 50), at(30, 80), at(80, 80)];
  expect(parameterAtLength(curve, -1)).toBe(0);
  expect(parameterAtLength(curve, 1000)).toBe(1);
  expect(parameterAtLength(line(at(0, 0), at(10, 0)), 20)).toBe(1);
  expect(parameterAtLength(line(at(0, 0), at(10, 0)), 2.5)).toBe(0.25);
});
test('a curve that is one point has no length', () => {
  expect(segmentLength([at(3, 4), at(3, 4), at(3, 4), at(3, 4)])).toBe(0);
  expect(parameterAtLength([at(3, 4), at(3, 4), at(3, 4), at(3, 4)], 1)).toBe(1);
});
