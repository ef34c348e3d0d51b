import { at } from '@paperhinge/geometry';
import {
  boundsOf,
  type Cubic,
  intersectSegments,
  nearestOnSegment,
  pointAt,
  segmentLength,
  selfCrossing,
} from '@paperhinge/geometry/curves';
import { distance } from '@paperhinge/geometry/plane';
import { signedArea } from '@paperhinge/geometry/regions';
import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import paperCore from 'paper/dist/paper-core.js';
import { describe, expect, test } from 'vitest';
import { anyPoint, garmentCubic } from '../support/ugly-curves.js';

// Independent libraries on curves that both can do; what they cannot is in the tests of the kernel itself.

const paper = paperCore as unknown as paper.PaperScope;
const asPaper = ([p, q, r, s]: Cubic): paper.Curve =>
  new paper.Curve(
    new paper.Point(p),
    new paper.Point(q.x - p.x, q.y - p.y),
    new paper.Point(r.x - s.x, r.y - s.y),
    new paper.Point(s),
  );
const asBezier = (curve: Cubic): Bezier => new Bezier(curve.map(p => ({ ...p })));
const wild: fc.Arbitrary<Cubic> = fc.tuple(anyPoint, anyPoint, anyPoint, anyPoint);

describe('bezier-js 6.1.4', () => {
  // 24 fixed nodes: only on curves that bend evenly is it an oracle.
  test.each<[string, Cubic]>([
    ['a neckline', [at(0, 0), at(0, 50), at(30, 80), at(80, 80)]],
    ['a deeper neckline', [at(0, 0), at(0, 70), at(40, 90), at(75, 90)]],
    ['an armhole', [at(0, 0), at(60, 10), at(120, 60), at(150, 200)]],
    ['a cap', [at(0, 150), at(70, 140), at(90, 10), at(180, 0)]],
    ['a hem', [at(0, 0), at(80, 15), at(170, 15), at(250, 0)]],
  ])('measures the same length: %s', (_, curve) => {
    expect(Math.abs(asBezier(curve).length() - segmentLength(curve))).toBeLessThan(1e-9);
  });
  test('draws the same boxes', () => {
    fc.assert(
      fc.property(wild, c => {
        const { x, y } = asBezier(c).bbox(),
          { min, max } = boundsOf(c);
        for (const [theirs, ours] of [
          [x.min, min.x],
          [x.max, max.x],
          [y.min, min.y],
          [y.max, max.y],
        ] as const)
          expect(Math.abs(theirs! - ours)).toBeLessThan(1e-9);
      }),
    );
  });
  // It looks along a table: never nearer than we are, and a little off.
  test('finds no nearer point', () => {
    fc.assert(
      fc.property(garmentCubic, anyPoint, (c, p) => {
        const theirs = asBezier(c).project({ ...p });
        expect(nearestOnSegment(c, p).distance).toBeLessThanOrEqual(
          distance(theirs as { x: number; y: number }, p) + 1e-9,
        );
      }),
    );
  });
});

describe('paper 0.12.20', () => {
  test('surrounds the same areas', () => {
    fc.assert(
      fc.property(wild, c => {
        const path = { segments: [c, [c[3], c[0]] as const] };
        const area = (paper.Curve as unknown as { getArea(v: number[]): number }).getArea(
          c.flatMap(p => [p.x, p.y]),
        );
        const chord = (c[3].x * c[0].y - c[3].y * c[0].x) / 2;
        expect(Math.abs(Math.abs(signedArea(path)) - Math.abs(area + chord))).toBeLessThan(1e-6);
      }),
    );
  });
  test('finds the same crossings of wild pairs', () => {
    fc.assert(
      fc.property(wild, wild, (a, b) => {
        const theirs = asPaper(a).getIntersections(asPaper(b)),
          ours = intersectSegments(a, b);
        // Ends that touch are told apart differently: compare where all crossings are well within.
        const inner = (t: number): boolean => t > 1e-3 && t < 1 - 1e-3;
        if (!ours.every(m => inner(m.ta) && inner(m.tb)) || !theirs.every(l => inner(l.time))) return;
        for (const l of theirs)
          expect(Math.min(...ours.map(m => distance(m.point, l.point)))).toBeLessThan(1e-5);
      }),
      { numRuns: 500 },
    );
  });
  test('finds the same loops', () => {
    fc.assert(
      fc.property(wild, c => {
        const found = selfCrossing(c);
        const theirs = asPaper(c).getIntersections(null as unknown as paper.Curve);
        if (found && found.t1 - found.t0 > 0.01 && found.t0 > 1e-3 && found.t1 < 1 - 1e-3) {
          expect(theirs).toHaveLength(1);
          expect(distance(pointAt(c, found.t1), theirs[0]!.point)).toBeLessThan(1e-5);
        }
        if (!found) expect(theirs.filter(l => l.time > 1e-3 && l.time < 1 - 1e-3)).toHaveLength(0);
      }),
      { numRuns: 500 },
    );
  });
});

test('the quarter circle of the k rule is off by 0.0273 % at most, and never inside', () => {
  // spencermortensen.com/articles/bezier-circle [read]; [derived]
  const k = 0.552284749830793;
  const quarter: Cubic = [at(1, 0), at(1, k), at(k, 1), at(0, 1)];
  const radii = Array.from({ length: 2001 }, (_, i) => distance(pointAt(quarter, i / 2000), at(0, 0)));
  expect(Math.max(...radii)).toBeCloseTo(1.00027253, 7);
  expect(Math.min(...radii)).toBeGreaterThan(1 - 1e-12);
});
