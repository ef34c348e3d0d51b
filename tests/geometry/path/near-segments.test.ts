import { at, type Path, type Point, polyline } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { forEachNearPair, forEachNearPairWithin } from '../../../packages/geometry/src/path/near-segments.js';

const rows = (n: number): readonly Point[] => Array.from({ length: n }, (_, i) => at((i % 2) * 90, i / 20));
const turned = (points: readonly Point[], angle: number): Path => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return polyline(...points.map(({ x, y }) => at(c * x - s * y, s * x + c * y)));
};
function visits(run: (visit: () => boolean) => void): number {
  let count = 0;
  run(() => {
    count++;
    return false;
  });
  return count;
}

describe('segments that come near each other', () => {
  test.each([0, 0.3, 0.7, Math.PI / 2])(
    'of six thousand long rows turned by %d rad, only neighbours are held against each other',
    angle => {
      const zigzag = turned(rows(6_000), angle);
      expect(visits(visit => forEachNearPairWithin(zigzag, visit))).toBeLessThan(3 * 6_000);
    },
  );

  test('of two paths side by side, those alone that touch', () => {
    const here = turned(rows(6_000), 0),
      there = turned(
        rows(6_000).map(({ x, y }) => at(x + 90, y)),
        0,
      );
    expect(visits(visit => forEachNearPair(here, there, visit))).toBeLessThan(4 * 6_000);
  });

  test('no more are told once the answer was true', () => {
    let told = 0;
    forEachNearPairWithin(turned(rows(100), 0), () => ++told === 3);
    expect(told).toBe(3);
  });

  test('a path of nothing is near nothing', () => {
    expect(visits(visit => forEachNearPairWithin({ segments: [] }, visit))).toBe(0);
    expect(visits(visit => forEachNearPair({ segments: [] }, turned(rows(9), 0), visit))).toBe(0);
  });
});
