import { at, type Point, type Segment } from '@paperhinge/geometry';
import { intersectSegments, pointAt } from '@paperhinge/geometry/curves';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runsOn } from '../../../packages/geometry/src/curve/runs-on.js';

const level: Segment = [at(0, 0), at(100, 0)];
const from = (...rest: Point[]): Segment => [at(100, 0), ...rest] as unknown as Segment;

describe('whether a segment plainly runs on from another', () => {
  test('straight on, round a square corner and along a bend it does', () => {
    expect(runsOn(level, from(at(200, 0)))).toBe(true);
    expect(runsOn(level, from(at(100, 80)))).toBe(true);
    expect(runsOn(level, from(at(130, 0), at(160, 30), at(160, 60)))).toBe(true);
  });
  test('back on itself, from elsewhere, or by way of a loop it does not', () => {
    expect(runsOn(level, from(at(0, 1)))).toBe(false);
    expect(runsOn(level, [at(100, 0.001), at(200, 0)])).toBe(false);
    expect(runsOn(from(at(200, 0)), level)).toBe(false);
    // Back over the line and on: its ends lie ahead, its belly does not.
    expect(runsOn(level, from(at(160, 60), at(-60, 60), at(120, -40)))).toBe(false);
  });
  test('out and back to where they began it does not, however they cross on the way', () => {
    const back = from(at(-40, 60), at(140, -60), at(0, 0));
    expect(runsOn(level, back)).toBe(false);
    expect(runsOn(back, level)).toBe(false);
    expect(runsOn(level, from(at(60, 40), at(30, 40), at(0, 0)))).toBe(false);
  });
  test('a leg that leads back by a hair less than square to the mean of the chords is too much', () => {
    expect(runsOn(level, from(at(100.1, 30), at(100, 60), at(100, 90)))).toBe(true);
    expect(runsOn(level, from(at(60, -60), at(140, 20), at(200, 0)))).toBe(false);
  });
  test('of what is hardly longer than a coincidence nothing is said', () => {
    expect(runsOn(level, from(at(100 + 1.9e-5, 0)))).toBe(false);
    expect(runsOn(level, from(at(100 + 2.1e-5, 0)))).toBe(true);
  });
  test('two that run on come near each other nowhere but at their joint', () => {
    const place = fc
      .integer({ min: -60, max: 60 })
      .chain(x => fc.integer({ min: -60, max: 60 }).map(y => at(x, y)));
    const legs = fc.array(place, { minLength: 3, maxLength: 3 });
    const next = ({ x, y }: Point, by: Point): Point => at(x + by.x, y + by.y);
    let plain = 0;
    fc.assert(
      fc.property(legs, legs, (first, second) => {
        const walk = [at(0, 0)];
        for (const by of [...first, ...second]) walk.push(next(walk.at(-1)!, by));
        const a = walk.slice(0, 4) as unknown as Segment,
          b = walk.slice(3) as unknown as Segment;
        if (!runsOn(a, b)) return;
        plain++;
        const joint = walk[3]!;
        for (const { point } of intersectSegments(a, b))
          expect(Math.hypot(point.x - joint.x, point.y - joint.y)).toBeLessThan(1e-6);
        for (let i = 0; i < 10; i++)
          for (let k = 1; k <= 10; k++) {
            const p = pointAt(a, i / 10),
              q = pointAt(b, k / 10);
            const way = Math.hypot(joint.x - p.x, joint.y - p.y) + Math.hypot(q.x - joint.x, q.y - joint.y);
            expect(Math.hypot(q.x - p.x, q.y - p.y)).toBeGreaterThan(0.099 * way);
          }
      }),
      { numRuns: 3000 },
    );
    expect(plain).toBeGreaterThan(50);
  });
});
