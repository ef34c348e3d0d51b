import { at, type Path, type Point, pathLength, polyline } from '@paperhinge/geometry';
import { arcBetween, tangentAt } from '@paperhinge/geometry/curves';
import {
  curveOfLength,
  endTangent,
  fairCurve,
  fitCurve,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  simplifyPath,
  startTangent,
} from '@paperhinge/geometry/paths';
import { distance, unit } from '@paperhinge/geometry/plane';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const farthest = (points: readonly Point[], path: Path): number =>
  Math.max(...points.map(p => nearestOnPath(path, p).distance));
const kinks = (path: Path): number =>
  Math.max(
    0,
    ...path.segments.slice(1).map((s, i) => distance(tangentAt(s, 0), tangentAt(path.segments[i]!, 1))),
  );
const circlePoints = (n: number, r: number, sweep: number): readonly Point[] =>
  Array.from({ length: n + 1 }, (_, i) => at(r * Math.cos((sweep * i) / n), r * Math.sin((sweep * i) / n)));
const direction = fc.double({ min: -1.2, max: 1.2, noNaN: true }).map(a => at(Math.cos(a), Math.sin(a)));

describe('fair curves', () => {
  // Hobby's rule comes within 0.03 % of a circle on a quarter turn, as the k quarter does. [derived]
  test('a quarter turn between square ends is all but a circle', () => {
    const quarter = fairCurve(
      { point: at(0, 0), direction: at(1, 0) },
      { point: at(100, 100), direction: at(0, 1) },
    );
    for (let i = 0; i <= 16; i++)
      expect(
        Math.abs(distance(pointAlong(quarter, (pathLength(quarter) * i) / 16), at(0, 100)) - 100),
      ).toBeLessThan(0.03);
  });
  test('ends, end directions and points between are kept, in one smooth chain', () => {
    fc.assert(
      fc.property(
        direction,
        direction,
        fc.array(fc.double({ min: -25, max: 25, noNaN: true }), { maxLength: 5 }),
        (u, v, heights) => {
          const through = heights.map((h, i) => at(((i + 1) * 300) / (heights.length + 1), h));
          const path = fairCurve(
            { point: at(0, 0), direction: u },
            { point: at(300, 0), direction: v },
            0.05,
            through,
          );
          expect(pathStart(path)).toEqual(at(0, 0));
          expect(pathEnd(path)).toEqual(at(300, 0));
          expect(distance(startTangent(path), unit(u))).toBeLessThan(1e-9);
          expect(distance(endTangent(path), unit(v))).toBeLessThan(1e-9);
          expect(kinks(path)).toBeLessThan(1e-6);
          if (through.length > 0) expect(farthest(through, path)).toBeLessThan(0.06);
          expect(path.segments.length).toBeLessThanOrEqual(3 * (heights.length + 1));
        },
      ),
    );
  });
  test('an end direction of no length is refused', () => {
    expect(() =>
      fairCurve({ point: at(0, 0), direction: at(0, 0) }, { point: at(1, 1), direction: at(0, 1) }),
    ).toThrow(expect.objectContaining({ code: 'no-direction' }));
  });
});

describe('fitting points', () => {
  // Two handles keep 0.0011 mm on an eighth of a circle of 100 mm, 0.027 on a quarter. [derived]
  test('four hundred points on four rad of a circle are passed within the tolerance by a handful of cubics', () => {
    const points = circlePoints(400, 100, 4);
    const path = fitCurve(points, undefined, undefined, 0.005);
    expect(farthest(points, path)).toBeLessThan(0.0055);
    expect(path.segments.length).toBeLessThanOrEqual(5);
    expect(kinks(path)).toBeLessThan(1e-6);
  });
  test('given end directions are kept', () => {
    const path = fitCurve(circlePoints(20, 50, 1), at(0, 1), at(-Math.sin(1), Math.cos(1)), 0.001);
    expect(distance(startTangent(path), at(0, 1))).toBeLessThan(1e-9);
  });
  test('two points give a line, one is refused', () => {
    expect(fitCurve([at(0, 0), at(5, 0)]).segments).toEqual([[at(0, 0), at(5, 0)]]);
    expect(() => fitCurve([at(0, 0), at(0, 0)])).toThrow(expect.objectContaining({ code: 'too-few-points' }));
  });
});

describe('a curve of a wanted length', () => {
  test('has that length, its ends and its end directions', () => {
    fc.assert(
      fc.property(direction, direction, fc.double({ min: 1.001, max: 1.4, noNaN: true }), (u, v, ratio) => {
        let path: Path;
        try {
          path = curveOfLength(at(0, 0), u, at(200, 0), v, 200 * ratio);
        } catch (error) {
          expect((error as { code: string }).code).toBe('length-too-long');
          return;
        }
        expect(Math.abs(pathLength(path) - 200 * ratio)).toBeLessThan(1e-8);
        expect(distance(startTangent(path), unit(u))).toBeLessThan(1e-6);
        expect(distance(endTangent(path), unit(v))).toBeLessThan(1e-6);
      }),
    );
  });
  test('shorter than the straight way is refused, exactly as long is the line', () => {
    expect(() => curveOfLength(at(0, 0), at(1, 1), at(100, 0), at(1, -1), 99)).toThrow(
      expect.objectContaining({ code: 'length-too-short' }),
    );
    expect(curveOfLength(at(0, 0), at(1, 1), at(100, 0), at(1, -1), 100).segments).toEqual([
      [at(0, 0), at(100, 0)],
    ]);
  });
});

describe('simplifying', () => {
  test('a circle of 720 chords becomes a few cubics within the tolerance', () => {
    const points = circlePoints(720, 100, 2 * Math.PI);
    const path = simplifyPath(polyline(...points), 0.02);
    expect(path.segments.length).toBeLessThanOrEqual(9);
    expect(farthest(points, path)).toBeLessThan(0.021);
  });
  test('arcs cut small are put together again', () => {
    const arcs: Path = { segments: arcBetween(at(0, 0), at(100, 0), at(0, 100), true) };
    expect(simplifyPath(arcs, 0.05).segments).toHaveLength(1);
  });
  test('corners stay where they are and straight runs become one line', () => {
    const square = polyline(at(0, 0), at(50, 0), at(100, 0), at(100, 40), at(100, 100));
    expect(simplifyPath(square, 0.01).segments).toEqual([
      [at(0, 0), at(100, 0)],
      [at(100, 0), at(100, 100)],
    ]);
    const bent = polyline(at(0, 0), at(100, 0), at(199, 14));
    expect(simplifyPath(bent, 0.01)).toEqual(bent);
  });
  test('ten thousand points on a circle become a few pieces, near all along', () => {
    const simple = simplifyPath(polyline(...circlePoints(10_000, 100, 5)), 0.005);
    expect(simple.segments.length).toBeLessThan(60);
    for (const { x, y } of circlePoints(500, 100, 5))
      expect(nearestOnPath(simple, at(x, y)).distance).toBeLessThan(0.02);
  });
});

describe('what is fitted is near all along, not at stations only', () => {
  const both = (a: Path, b: Path): number => {
    const far = (from: Path, to: Path): number =>
      Math.max(
        ...Array.from(
          { length: 801 },
          (_, i) => nearestOnPath(to, pointAlong(from, (pathLength(from) * i) / 800)).distance,
        ),
      );
    return Math.max(far(a, b), far(b, a));
  };
  // A bump of 0.3 mm on 10 mm of a line of 400: any sixteen even stations would step over it.
  test('a bump too short for any sampling stays in a simplified path', () => {
    const bump = (x: number): number =>
      x > 203 && x < 213 ? 0.15 * (1 - Math.cos((2 * Math.PI * (x - 203)) / 10)) : 0;
    const path = polyline(...Array.from({ length: 401 }, (_, x) => at(x, bump(x))));
    const simpler = simplifyPath(path, 0.02);
    expect(simpler.segments.length).toBeLessThan(20);
    expect(both(path, simpler)).toBeLessThan(0.0201);
  });
  test('any rows of short lines, simplified, and the same within the tolerance', () => {
    const step = fc.double({ min: -0.12, max: 0.12, noNaN: true });
    fc.assert(
      fc.property(fc.array(step, { minLength: 4, maxLength: 60 }), turns => {
        let heading = 0,
          p = at(0, 0);
        const points = [p];
        for (const turn of turns) {
          heading += turn;
          p = at(p.x + 4 * Math.cos(heading), p.y + 4 * Math.sin(heading));
          points.push(p);
        }
        const path = polyline(...points);
        const simpler = simplifyPath(path, 0.1);
        expect(simpler.segments.length).toBeLessThanOrEqual(path.segments.length);
        expect(both(path, simpler)).toBeLessThan(0.1001);
      }),
      { numRuns: 60 },
    );
  });
});
