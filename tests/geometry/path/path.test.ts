import { at, pathLength, pathOf, polyline } from '@paperhinge/geometry';
import {
  boundsOfPath,
  fairCurve,
  intersectPaths,
  locate,
  nearestOnPath,
  pointAlong,
  reversedPath,
  splitPath,
  subpath,
} from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const square = polyline(at(0, 0), at(10, 0), at(10, 10), at(0, 10), at(0, 0));
const wave = {
  segments: [
    ...fairCurve({ point: at(0, 0), direction: at(1, 1) }, { point: at(100, 0), direction: at(1, 1) })
      .segments,
    ...fairCurve({ point: at(100, 0), direction: at(1, 1) }, { point: at(200, 50), direction: at(1, 0) })
      .segments,
  ],
};
const share = fc.double({ min: 0, max: 1, noNaN: true });

test('the box of a path is the box of its segments', () => {
  expect(boundsOfPath(square)).toEqual({ min: at(0, 0), max: at(10, 10) });
});
test('the nearest point of a path comes with its segment and its length from the start', () => {
  const near = nearestOnPath(square, at(12, 4));
  expect(near).toMatchObject({ index: 1, point: at(10, 4), distance: 2 });
  expect(near.along).toBeCloseTo(14, 12);
});
test('a point at a length is found there again', () => {
  fc.assert(
    fc.property(share, k => {
      const along = pathLength(wave) * k;
      const near = nearestOnPath(wave, pointAlong(wave, along));
      expect(near.distance).toBeLessThan(1e-9);
      expect(Math.abs(near.along - along)).toBeLessThan(1e-6);
    }),
  );
});
test('parts cut at a length add up, and meet there', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), k => {
      const whole = pathLength(wave);
      const [a, b] = splitPath(wave, whole * k);
      expect(Math.abs(pathLength(a) - whole * k)).toBeLessThan(1e-9);
      expect(Math.abs(pathLength(a) + pathLength(b) - whole)).toBeLessThan(1e-9);
    }),
  );
  expect(pathLength(subpath(square, 5, 25))).toBeCloseTo(20, 12);
  expect(locate(square, 15)).toEqual({ index: 1, t: 0.5 });
});
test('paths that cross give each place once, in order along the first, joints too', () => {
  const through = polyline(at(-5, 5), at(5, 5), at(15, 5));
  expect(intersectPaths(through, square).map(m => [m.alongA, m.alongB])).toEqual([
    [5, 35],
    [15, 15],
  ]);
  const overCorners = polyline(at(-5, -5), at(10, 10), at(20, 20));
  expect(intersectPaths(overCorners, square).map(m => m.point)).toEqual([at(0, 0), at(10, 10)]);
  expect(intersectPaths(overCorners, square)[0]!.alongB).toBe(0);
});
test('a shared stretch of several segments is given by its ends', () => {
  const along = pathOf([at(-5, 0), at(4, 0)], [at(4, 0), at(15, 0)]);
  const meetings = intersectPaths(along, square);
  expect(meetings.every(m => m.overlap)).toBe(true);
  expect([meetings[0]!.point, meetings.at(-1)!.point]).toEqual([at(0, 0), at(10, 0)]);
});
test('a crossing is one place seen from both paths', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -30, max: 60, noNaN: true }),
      fc.double({ min: -60, max: 60, noNaN: true }),
      (y, z) => {
        const cut = polyline(at(-10, y), at(210, z));
        const there = intersectPaths(wave, cut),
          back = intersectPaths(cut, reversedPath(wave));
        expect(back.length).toBe(there.length);
        for (const m of there)
          expect(distance(pointAlong(wave, m.alongA), pointAlong(cut, m.alongB))).toBeLessThan(1e-7);
      },
    ),
  );
});

test('a part that ends within rounding of a joint has no segment of no length', () => {
  const long = pathLength(square);
  for (const joint of [10, 20, 30])
    for (const off of [-1e-10, -1e-13, 0, 1e-13, 1e-10])
      for (const part of [subpath(square, 0, joint + off), subpath(square, joint + off, long)])
        for (const segment of part.segments) expect(pathLength({ segments: [segment] })).toBeGreaterThan(1);
});
