import { at, type Segment } from '@paperhinge/geometry';
import { type Cubic, derivativeAt, pointAt, secondDerivativeAt } from '@paperhinge/geometry/curves';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bendBounds,
  type Controls,
  controlsOf,
  difference,
  leastAlong,
  legsOf,
  longest,
  slantBound,
  squareBounds,
} from '../../../packages/geometry/src/curve/pair-bounds.js';
import { powerForm } from '../../../packages/geometry/src/curve/power-form.js';

// Every bound against the Bernstein coefficients of the very polynomial, found here from its values alone.

const number = fc.double({ min: -50, max: 50, noNaN: true });
const point = fc.tuple(number, number).map(([x, y]) => at(x, y));
const cubic = fc.tuple(point, point, point, point).map((points): Cubic => points);

const controls = (c: Cubic): Controls => controlsOf(powerForm(c), 0, 1);
const apart = (a: Cubic, b: Cubic): Cubic =>
  a.map((p, i) => at(p.x - b[i]!.x, p.y - b[i]!.y)) as unknown as Cubic;
const dot = (p: { x: number; y: number }, q: { x: number; y: number }): number => p.x * q.x + p.y * q.y;

const binomial = (n: number, k: number): number => (k === 0 ? 1 : (binomial(n - 1, k - 1) * n) / k);
const basis = (n: number, k: number, t: number): number => binomial(n, k) * t ** k * (1 - t) ** (n - k);

/** The Bernstein coefficients of degree n of a polynomial given by its values: one linear system, by elimination. */
function coefficients(value: (t: number) => number, n: number): readonly number[] {
  const rows = Array.from({ length: n + 1 }, (_, i) => {
    const t = i / n;
    return [...Array.from({ length: n + 1 }, (_unused, k) => basis(n, k, t)), value(t)];
  });
  for (let i = 0; i <= n; i++) {
    const pivot = rows.slice(i).reduce((best, row) => (Math.abs(row[i]!) > Math.abs(best[i]!) ? row : best));
    rows.splice(rows.indexOf(pivot), 1);
    rows.splice(i, 0, pivot);
    for (const [k, row] of rows.entries())
      if (k !== i) {
        const share = row[i]! / pivot[i]!;
        for (let c = i; c <= n + 1; c++) row[c]! -= share * pivot[c]!;
      }
  }
  return rows.map((row, i) => row[n + 1]! / row[i]!);
}
const near = (found: number, wanted: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThan(1e-6 * Math.max(1, Math.abs(wanted)));

describe('bounds of a pair of cubics', () => {
  test('control points of a piece are those of the piece cut out', () => {
    fc.assert(
      fc.property(cubic, fc.double({ min: 0, max: 0.6, noNaN: true }), (curve, from) => {
        const to = from + 0.3;
        const { x0, y0, x1, y1, x2, y2, x3, y3 } = controlsOf(powerForm(curve), from, to);
        const piece: Segment = [at(x0, y0), at(x1, y1), at(x2, y2), at(x3, y3)];
        for (const k of [0, 0.3, 0.7, 1]) {
          const [p, q] = [pointAt(piece, k), pointAt(curve, from + 0.3 * k)];
          near(p.x, q.x);
          near(p.y, q.y);
        }
      }),
    );
  });
  test('a difference, its legs and their length', () => {
    const d = difference(
      controls([at(1, 2), at(3, 5), at(8, 13), at(21, 34)]),
      controls([at(0, 1), at(1, 1), at(2, 3), at(5, 8)]),
    );
    expect(Object.values(d)).toEqual([1, 1, 2, 4, 6, 10, 16, 26].map(value => expect.closeTo(value, 9)));
    expect(Object.values(legsOf(d))).toEqual([1, 3, 4, 6, 10, 16].map(value => expect.closeTo(value, 9)));
    expect(longest(legsOf(d))).toBeCloseTo(Math.hypot(1, 3) + Math.hypot(4, 6) + Math.hypot(10, 16), 9);
  });
  test('the square of the difference', () => {
    fc.assert(
      fc.property(cubic, cubic, (f, c) => {
        const d = apart(f, c);
        const wanted = coefficients(t => dot(pointAt(d, t), pointAt(d, t)), 6);
        const { least, most } = squareBounds(difference(controls(f), controls(c)));
        near(least, Math.min(...wanted));
        near(most, Math.max(...wanted));
      }),
    );
  });
  test('the slant of the difference to the curve', () => {
    fc.assert(
      fc.property(cubic, cubic, (f, c) => {
        const d = apart(f, c);
        const wanted = coefficients(t => dot(pointAt(d, t), derivativeAt(c, t)), 5);
        near(
          slantBound(difference(controls(f), controls(c)), legsOf(controls(c))),
          Math.max(...wanted.map(Math.abs)),
        );
      }),
    );
  });
  test('the bend of the square of the distance', () => {
    fc.assert(
      fc.property(cubic, cubic, fc.double({ min: 0, max: 9, noNaN: true }), (f, c, size) => {
        const d = apart(f, c);
        const wanted = coefficients(t => {
          const speed = derivativeAt(c, t);
          return dot(speed, speed) - dot(pointAt(d, t), secondDerivativeAt(c, t));
        }, 4);
        const turns = [0, 1].map(t => secondDerivativeAt(c, t)).map(({ x, y }) => Math.hypot(x, y));
        const spread = size * Math.max(...turns);
        const { least, most } = bendBounds(difference(controls(f), controls(c)), legsOf(controls(c)), size);
        near(least, Math.min(...wanted) - spread);
        near(most, Math.max(...wanted) + spread);
      }),
    );
  });
  test('how far two pieces run along each other', () => {
    fc.assert(
      fc.property(cubic, cubic, fc.constantFrom(1, -1), (f, c, sense) => {
        const legs = (curve: Cubic) =>
          [1, 2, 3].map(i => at(curve[i]!.x - curve[i - 1]!.x, curve[i]!.y - curve[i - 1]!.y));
        const products = legs(f).flatMap(u => legs(c).map(v => sense * dot(u, v)));
        near(leastAlong(sense, legsOf(controls(f)), legsOf(controls(c))), Math.min(...products));
      }),
    );
  });
});
