import { at, type Path, type Point, polyline } from '@paperhinge/geometry';
import { selfCrossings } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isPlainlySimple } from '../../../packages/geometry/src/region/plainly-simple.js';

const ring = (...points: readonly Point[]): Path => polyline(...points, points[0]!);

test('a square and a lens are plainly simple or not told; a bow tie, a spike and a looped curve are not', () => {
  expect(isPlainlySimple(ring(at(0, 0), at(100, 0), at(100, 60), at(0, 60)))).toBe(true);
  expect(isPlainlySimple(ring(at(0, 0), at(100, 60), at(100, 0), at(0, 60)))).toBe(false);
  expect(isPlainlySimple(ring(at(0, 0), at(100, 0), at(100, 60), at(100, 0)))).toBe(false);
  const back: Path = {
    segments: [
      [at(0, 0), at(100, 0)],
      [at(100, 0), at(70, 40), at(30, 40), at(0, 0)],
    ],
  };
  expect(isPlainlySimple(back)).toBe(false);
  const looped: Path = {
    segments: [
      [at(0, 0), at(150, 100), at(-50, 100), at(100, 0)],
      [at(100, 0), at(100, -50)],
      [at(100, -50), at(0, 0)],
    ],
  };
  expect(isPlainlySimple(looped)).toBe(false);
});
test('what is plainly simple crosses itself nowhere', () => {
  // About a middle, each point in its own direction, its handles anywhere near.
  const reach = fc.integer({ min: 60, max: 150 });
  const shift = fc.integer({ min: -40, max: 40 });
  let plain = 0;
  fc.assert(
    fc.property(
      fc.array(reach, { minLength: 6, maxLength: 6 }),
      fc.tuple(shift, shift, shift, shift),
      (reaches, by) => {
        const corners = reaches.map((r, i) =>
          at(r * Math.cos((i * Math.PI) / 3), r * Math.sin((i * Math.PI) / 3)),
        );
        const [a, b, c, d, e, f] = corners as [Point, Point, Point, Point, Point, Point];
        const bent: Path['segments'][number] = [
          a,
          at(a.x + by[0], a.y + by[1]),
          at(b.x + by[2], b.y + by[3]),
          b,
        ];
        const path: Path = { segments: [bent, [b, c], [c, d], [d, e], [e, f], [f, a]] };
        if (!isPlainlySimple(path)) return;
        plain++;
        expect(selfCrossings(path)).toEqual([]);
      },
    ),
    { numRuns: 1000 },
  );
  expect(plain).toBeGreaterThan(40);
});
