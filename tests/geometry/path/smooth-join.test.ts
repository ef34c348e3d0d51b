import { at, pathOf, polyline } from '@paperhinge/geometry';
import { type Cubic, curvatureAt, splitAt } from '@paperhinge/geometry/curves';
import { endTangent, pathEnd, pathStart, smoothJoin, startTangent } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const coordinate = fc.double({ min: -25, max: 25, noNaN: true });

describe('joining two lines', () => {
  test('in one tangent: ends and directions run on', () => {
    const join = smoothJoin(polyline(at(0, 0), at(50, 0)), polyline(at(100, 40), at(100, 90)));
    expect(pathStart(join)).toEqual(at(50, 0));
    expect(pathEnd(join)).toEqual(at(100, 40));
    expect(distance(startTangent(join), at(1, 0))).toBeLessThan(1e-12);
    expect(distance(endTangent(join), at(0, 1))).toBeLessThan(1e-12);
  });

  // The middle third of a cubic has the curvatures of its neighbours: it must come back.
  test('in one curvature: what was cut out of a curve comes back', () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, (p, q, r) => {
        const curve: Cubic = [at(0, 0), at(100, 40 + p), at(200, 40 + q), at(300, r)];
        const [first, rest] = splitAt(curve, 1 / 3);
        const [middle, last] = splitAt(rest, 1 / 2);
        const join = smoothJoin(pathOf(first), pathOf(last), 'curvature').segments[0]!;
        for (const [found, wanted] of [
          [curvatureAt(join, 0), curvatureAt(first, 1)],
          [curvatureAt(join, 1), curvatureAt(last, 0)],
        ] as const)
          expect(Math.abs(found - wanted)).toBeLessThan(1e-9);
        for (const [i, point] of join.entries()) expect(distance(point, middle[i]!)).toBeLessThan(0.5);
      }),
      { examples: [[0, 0, 0]] },
    );
  });

  test('in one curvature: straight on straight in line is a straight curve', () => {
    const join = smoothJoin(polyline(at(0, 0), at(10, 0)), polyline(at(40, 0), at(50, 0)), 'curvature');
    for (const { y } of join.segments[0]!) expect(y).toBe(0);
  });

  test('lines that no single curve joins in one curvature are refused with a remedy', () => {
    // Two straight lines turned the same way: zero curvature at both ends needs both handles to reach their crossing.
    expect(() =>
      smoothJoin(polyline(at(0, 0), at(10, 0)), polyline(at(60, 30), at(90, 30)), 'curvature'),
    ).toThrow(expect.objectContaining({ code: 'no-curvature-join' }));
  });

  test.each(['tangent', 'curvature'] as const)(
    'a single point, and ends that meet already, are refused (%s)',
    how => {
      const run = polyline(at(0, 0), at(10, 0));
      for (const point of [pathOf([at(5, 5), at(5, 5)]), pathOf([at(5, 5), at(5, 5), at(5, 5), at(5, 5)])]) {
        expect(() => smoothJoin(point, run, how)).toThrow(expect.objectContaining({ code: 'no-direction' }));
        expect(() => smoothJoin(run, point, how)).toThrow(expect.objectContaining({ code: 'no-direction' }));
      }
      expect(() => smoothJoin(run, polyline(at(10, 0), at(20, 9)), how)).toThrow(
        expect.objectContaining({ code: 'ends-meet' }),
      );
    },
  );
});
