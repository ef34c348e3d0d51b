import { type Path, type Point, polyline } from '@paperhinge/geometry';
import { offsetOutline } from '@paperhinge/geometry/cutting-line';
import { signedArea } from '@paperhinge/geometry/regions';
import { expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { sampled } from './independent.js';
import { arc, at, cornersOf } from './pieces.js';

// Where an outline, moved, is all but gone, or all but nothing to begin with.

const ringOf = (...points: readonly Point[]): Path => polyline(...points, points[0]!);
const areas = (outline: Path, by: number): readonly number[] =>
  offsetOutline(outline, by).loops.map(loop => signedArea(loop.path));

test('an L moved in is a thin L just before half the width of its arms, and nothing just after', () => {
  const ell = ringOf(at(0, 0), at(100, 0), at(100, 20), at(20, 20), at(20, 90), at(0, 90));
  // Of five outer corners and an inner one: A − P d + 4 d².
  for (const d of [5, 9.99, 9.997, 9.999])
    expect(areas(ell, -d)).toEqual([expect.closeTo(3400 - 380 * d + 4 * d * d, 6)]);
  for (const d of [10.001, 10.003, 10.02, 15]) {
    const { loops, findings } = offsetOutline(ell, -d);
    expect([loops, findings.map(f => f.code)]).toEqual([[], ['parallel-vanished']]);
  }
});

test('a circle moved in is gone just past its centre, however little is asked beyond', () => {
  const circle: Path = { segments: arc(at(0, 0), 50, 0, 360) };
  expect(areas(circle, -49)).toEqual([expect.closeTo(Math.PI, 1)]);
  for (const d of [50.001, 50.004, 50.02, 55, 70, 99]) expect(areas(circle, -d)).toEqual([]);
});

test('of no parts at all there is no outline', () => {
  expect(refusalOf(() => offsetOutline([], 5)).code).toBe('edge-without-length');
});

test('a ring of steps none of which can be told from a point is no outline', () => {
  const steps = 40;
  const radius = (steps * 0.9e-6) / (2 * Math.PI);
  const angles = Array.from({ length: steps }, (_, i) => (i / steps) * 2 * Math.PI);
  const ring = ringOf(...angles.map(a => at(radius * Math.cos(a), radius * Math.sin(a))));
  expect(refusalOf(() => offsetOutline(ring, 5)).code).toBe('edge-without-length');
});

test('a rim of micrometres, moved out, is the rim of the distance', () => {
  const rim: Path = { segments: arc(at(0, 0), 0.02, 0, 360) };
  for (const { point } of offsetOutline(rim, 10).loops.flatMap(loop => sampled(loop.path, 5))) {
    expect(Math.hypot(point.x, point.y)).toBeGreaterThan(10);
    expect(Math.hypot(point.x, point.y)).toBeLessThan(10.03);
  }
});

test.each([false, true])(
  'in two parts, a side that moves less than the one it runs into keeps its line: mirrored, %s',
  isMirrored => {
    // A bow whose left top dips to its middle: there the line that moves less begins nearer to the other half.
    const corners = [
      at(0, 0),
      at(50, 1),
      at(100, 0),
      at(110, 60),
      at(120, 0),
      at(220, 0),
      at(220, 80),
      at(0, 80),
    ];
    const names = ['less', 'more', 'in', 'out', 'top', 'right', 'foot', 'left'];
    const sides = corners.map((p, i) => ({ name: names[i]!, ends: [p, corners[(i + 1) % 8]!] as const }));
    const parts = isMirrored
      ? sides
          .map(({ name, ends: [p, q] }) => ({ name, path: polyline(at(-q.x, q.y), at(-p.x, p.y)) }))
          .reverse()
      : sides.map(({ name, ends }) => ({ name, path: polyline(...ends) }));
    const { loops } = offsetOutline(parts, name => (name === 'less' ? -5 : -15));
    expect(loops).toHaveLength(2);
    // 5 mm square to a side that falls by 1 in 50, where it meets the line 15 mm in from the left.
    const top = Math.min(...loops.flatMap(loop => cornersOf(loop.path)).map(p => p.y));
    expect(top).toBeCloseTo(15 / 50 + 5 * Math.hypot(1, 1 / 50), 6);
  },
);
