import { at, line } from '@paperhinge/geometry';
import { boundsOf, type Cubic, nearestOnSegment, pointAt, quadratic } from '@paperhinge/geometry/curves';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyCubic, anyPoint } from '../../support/ugly-curves.js';

// bezierjs projection.test.js [read]; [derived]
test('the point nearest to (80, 20) on the parabola (0,0)(100,0)(100,100) is (75, 25)', () => {
  const near = nearestOnSegment(quadratic(at(0, 0), at(100, 0), at(100, 100)), at(80, 20));
  expect(near.t).toBeCloseTo(0.5, 12);
  expect(distance(near.point, at(75, 25))).toBeLessThan(1e-9);
  expect(near.distance).toBeCloseTo(7.071067811865, 11);
});
test('no sampled point is nearer than the nearest', () => {
  fc.assert(
    fc.property(anyCubic, anyPoint, (curve, p) => {
      const near = nearestOnSegment(curve, p);
      for (let i = 0; i <= 64; i++)
        expect(near.distance).toBeLessThanOrEqual(
          distance(pointAt(curve, i / 64), p) + 1e-9 * Math.max(1, near.distance),
        );
      expect(distance(near.point, p)).toBe(near.distance);
    }),
  );
});
test('a point of the curve is its own nearest', () => {
  fc.assert(
    fc.property(anyCubic, fc.double({ min: 0, max: 1, noNaN: true }), (curve, t) => {
      expect(nearestOnSegment(curve, pointAt(curve, t)).distance).toBeLessThan(1e-9 * size(curve));
    }),
  );
});
test('beyond an end of a line the end is nearest', () => {
  const near = nearestOnSegment(line(at(0, 0), at(10, 0)), at(14, 3));
  expect(near).toEqual({ t: 1, point: at(10, 0), distance: 5 });
});
test('a box holds every point and touches the curve on all sides', () => {
  fc.assert(
    fc.property(anyCubic, curve => {
      const { min, max } = boundsOf(curve);
      const slack = 1e-9 * size(curve);
      for (let i = 0; i <= 64; i++) {
        const p = pointAt(curve, i / 64);
        expect(p.x).toBeGreaterThanOrEqual(min.x - slack);
        expect(p.x).toBeLessThanOrEqual(max.x + slack);
        expect(p.y).toBeGreaterThanOrEqual(min.y - slack);
        expect(p.y).toBeLessThanOrEqual(max.y + slack);
      }
    }),
  );
});
// bezierjs cubic.test.js [read]: bbox y max 0.75
test('the arch (0,0)(0,1)(1,1)(1,0) is 0.75 high', () => {
  expect(boundsOf([at(0, 0), at(0, 1), at(1, 1), at(1, 0)])).toEqual({ min: at(0, 0), max: at(1, 0.75) });
});

const size = (curve: Cubic): number =>
  Math.max(1, ...curve.flatMap(p => [Math.abs(p.x), Math.abs(p.y)])) / 100 + 1;
