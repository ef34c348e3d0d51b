import { at, line, type Point, pathOf, type Segment } from '@paperhinge/geometry';
import {
  type Cubic,
  derivativeAt,
  endOf,
  nearestOnSegment,
  offsetSegment,
  pointAt,
  segmentLength,
  startOf,
  tangentAt,
} from '@paperhinge/geometry/curves';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { offsetPath } from '@paperhinge/geometry/paths';
import { add, distance, leftOf, scale } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { anyCubic, garmentCubic } from '../../support/ugly-curves.js';

const sum = (segments: readonly Segment[]): number =>
  segments.reduce((total, s) => total + segmentLength(s), 0);
const parallelPoint = (curve: Segment, t: number, d: number): Point =>
  add(pointAt(curve, t), scale(leftOf(tangentAt(curve, t)), d));
const distances = fc.constantFrom(6.35, -6.35, 15.875, -15.875, 25, -25);

describe('closed forms', () => {
  // Pythagorean-hodograph cubic, length 400, turning a quarter; offsets by Steiner: 400 ± 7.5 π. [derived]
  const curve: Cubic = [at(0, 0), at(-100, 0), at(-200, 100), at(-200, 300)];
  test('the parallels of a curve that turns a quarter are longer and shorter by a quarter of their circle', () => {
    expect(Math.abs(sum(offsetSegment(curve, -15)) - 423.561944902)).toBeLessThan(0.01);
    expect(Math.abs(sum(offsetSegment(curve, 15)) - 376.438055098)).toBeLessThan(0.01);
  });
  test('the band between curve and parallel has the area 6000 ± 176.71', () => {
    const band = (d: number): number => {
      const outer = offsetSegment(curve, d);
      const back = [...outer]
        .reverse()
        .map((s): Segment => (s.length === 2 ? [s[1], s[0]] : [s[3], s[2], s[1], s[0]]));
      return Math.abs(
        signedArea({
          segments: [
            curve,
            line(endOf(curve), endOf(outer.at(-1)!)),
            ...back,
            line(startOf(outer[0]!), startOf(curve)),
          ],
        }),
      );
    };
    expect(band(-15)).toBeCloseTo(6176.714587, 0);
    expect(band(15)).toBeCloseTo(5823.285413, 0);
  });
  test('a tighter tolerance gives a truer length', () => {
    for (const tolerance of [1e-2, 1e-4, 1e-6])
      expect(Math.abs(sum(offsetSegment(curve, -15, tolerance)) - (400 + 7.5 * Math.PI))).toBeLessThan(
        tolerance * 2,
      );
  });
  test('left of travel is outside a clockwise outline', () => {
    expect(offsetSegment(line(at(0, 0), at(10, 0)), 2)).toEqual([line(at(0, -2), at(10, -2))]);
  });
});

describe('every parallel', () => {
  test('is a chain without gaps between the true end points', () => {
    fc.assert(
      fc.property(anyCubic, distances, (curve, d) => {
        const parts = offsetSegment(curve, d);
        // A handle of less than a coincidence gives no direction to hold the ends against.
        if (segmentLength(curve) < 0.1 || hasSpeck(curve)) return;
        const slack = tolerances.fitTolerance / 2;
        expect(distance(startOf(parts[0]!), parallelPoint(curve, 0, d))).toBeLessThan(slack);
        expect(distance(endOf(parts.at(-1)!), parallelPoint(curve, 1, d))).toBeLessThan(slack);
        for (let i = 1; i < parts.length; i++)
          expect(distance(endOf(parts[i - 1]!), startOf(parts[i]!))).toBeLessThan(
            tolerances.coincidenceTolerance,
          );
      }),
      { numRuns: 150 },
    );
  });
  test('comes within the tolerance of every point of the true one', () => {
    fc.assert(
      fc.property(anyCubic, distances, (curve, d) => {
        if (segmentLength(curve) < 0.1) return;
        const parts = offsetSegment(curve, d);
        for (let i = 1; i < 64; i++) {
          const t = (i + 0.37) / 65,
            { x, y } = derivativeAt(curve, t);
          // Where the curve all but halts its direction is not known to the tolerance.
          if (Math.hypot(x, y) < 1e-3 * segmentLength(curve)) continue;
          const p = parallelPoint(curve, t, d);
          const near = Math.min(...parts.map(s => nearestOnSegment(s, p).distance));
          expect(near).toBeLessThan(tolerances.fitTolerance + 1e-9 * segmentLength(curve));
        }
      }),
      { numRuns: 150 },
    );
  });
  test('of a curve as garments have it is nowhere off, and of few cubics', () => {
    fc.assert(
      fc.property(garmentCubic, distances, (curve, d) => {
        const parts = offsetSegment(curve, d);
        expect(parts.length).toBeLessThan(13);
        // Dense samples of the true parallel by their own distance to the curve: where that is |d|, parts must be so too.
        for (const part of parts)
          for (let i = 0; i <= 16; i++) {
            const p = pointAt(part, i / 16);
            const off = nearestOnSegment(curve, p).distance - Math.abs(d);
            expect(off).toBeLessThan(tolerances.fitTolerance);
          }
      }),
    );
  });
});

describe('hard cases', () => {
  test('a bend tighter than the allowance gives a parallel with two cusps, not a loop gone astray', () => {
    const curve: Cubic = [at(0, 0), at(0, 30), at(10, 30), at(10, 0)];
    const inside = offsetSegment(curve, 15);
    for (const part of inside)
      for (let i = 0; i <= 8; i++)
        expect(nearestOnSegment(curve, pointAt(part, i / 8)).distance).toBeLessThan(15.005);
  });
  test('a curve that doubles back on its line has straight parallels joined by half circles', () => {
    const parts = offsetSegment([at(0, 0), at(300, 0), at(-100, 0), at(200, 0)], 5);
    expect(parts.filter(s => s.length === 2)).toHaveLength(3);
    expect(parts.length).toBe(15);
  });
  test('from rest to rest, with both handles of no length, a curve is a line', () => {
    expect(offsetSegment([at(0, 0), at(0, 0), at(100, 0), at(100, 0)], 5)).toEqual([
      line(at(0, -5), at(100, -5)),
    ]);
  });
  test('a segment of no length has no parallel', () => {
    expect(offsetSegment(line(at(1, 1), at(1, 1)), 5)).toEqual([]);
    expect(offsetSegment([at(1, 1), at(1, 1), at(1, 1), at(1, 1)], 5)).toEqual([]);
  });
  test('a distance of 0 gives the segment itself', () => {
    const curve: Cubic = [at(0, 0), at(0, 30), at(10, 30), at(10, 0)];
    expect(offsetSegment(curve, 0)).toEqual([curve]);
  });
  test('a tolerance of 0 is refused with a remedy', () => {
    const refused = refusalOf(() => offsetSegment(line(at(0, 0), at(1, 0)), 1, 0));
    expect(refused).toMatchObject({
      code: 'tolerance-not-positive',
      remedy: expect.stringContaining('above 0'),
    });
  });
});

test('a path gives the parallel of each of its segments, numbered', () => {
  const parts = offsetPath(pathOf(line(at(0, 0), at(10, 0)), line(at(10, 0), at(10, 10))), 1);
  expect(parts).toEqual([
    { source: 0, segments: [line(at(0, -1), at(10, -1))] },
    { source: 1, segments: [line(at(11, 0), at(11, 10))] },
  ]);
});

function hasSpeck([p, q, r, s]: Cubic): boolean {
  const slight = (d: number): boolean => d > 0 && d < 10 * tolerances.coincidenceTolerance;
  return [distance(p, q), distance(p, r), distance(r, s), distance(q, s)].some(slight);
}

// Curves of a few micrometres that turn both ways once lost the part of their parallel that they turn back over.
test('a curve no larger than the tolerance still has its whole parallel', () => {
  const coordinate = fc.integer({ min: -20, max: 20 }).map(n => n / 20);
  const point = fc.tuple(coordinate, coordinate);
  fc.assert(
    fc.property(
      fc.tuple(point, point, point, point),
      fc.constantFrom(1e-4, 5e-4, 2e-3, 1e-2),
      distances,
      (points, size, d) => {
        const curve = points.map(([x, y]) => at(size * x, size * y)) as unknown as Cubic;
        fc.pre(curve.every((p, i) => curve.every((q, k) => k <= i || distance(p, q) > 2e-6)));
        const parts = offsetSegment(curve, d);
        for (let i = 0; i <= 40; i++) {
          const p = parallelPoint(curve, i / 40, d);
          expect(Math.min(...parts.map(s => nearestOnSegment(s, p).distance))).toBeLessThan(0.01);
        }
      },
    ),
    { numRuns: 150 },
  );
});
