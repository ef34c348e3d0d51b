import { at, type Path, polyline } from '@paperhinge/geometry';
import { arcBetween, offsetSegment, quadratic } from '@paperhinge/geometry/curves';
import { fairCurve, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { distance, rotation } from '@paperhinge/geometry/plane';
import {
  centroid,
  clearance,
  containsPoint,
  difference,
  intersection,
  selfCrossings,
  signedArea,
  union,
} from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const rectangle = (x: number, y: number, w: number, h: number): Path =>
  polyline(at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h), at(x, y));
const disc = (x: number, y: number, r: number): Path => ({
  segments: arcBetween(at(x, y), at(r, 0), at(r, 0), true),
});
const angle = fc.double({ min: 0, max: 6, noNaN: true });

describe('area and centre of gravity', () => {
  test('a clockwise square is positive, an anticlockwise one negative', () => {
    expect(signedArea(rectangle(3, 4, 10, 20))).toBe(200);
    expect(signedArea(reversedPath(rectangle(3, 4, 10, 20)))).toBe(-200);
  });
  // Sector of the k quarter, r = 1: 0.785 618 083 164 [derived]
  test('the k quarter surrounds 0.785618083164', () => {
    const k = 0.552284749830793;
    const sector: Path = {
      segments: [
        [at(0, 0), at(1, 0)],
        [at(1, 0), at(1, k), at(k, 1), at(0, 1)],
        [at(0, 1), at(0, 0)],
      ],
    };
    expect(signedArea(sector)).toBeCloseTo(0.785618083164, 12);
  });
  // A parabola and its chord surround two thirds of the box (Archimedes); the centre lies at two fifths of the height.
  test('a parabolic scoop surrounds two thirds of its box', () => {
    const scoop: Path = { segments: [quadratic(at(0, 0), at(50, 50), at(100, 0)), [at(100, 0), at(0, 0)]] };
    expect(Math.abs(signedArea(scoop))).toBeCloseTo((2 / 3) * 100 * 25, 9);
    expect(distance(centroid(scoop), at(50, 10))).toBeLessThan(1e-9);
  });
  test('both move with the path and far from the origin lose nothing', () => {
    fc.assert(
      fc.property(angle, a => {
        const map = rotation(a, at(5e4, -3e4));
        const moved = transformedPath(disc(10, 20, 30), map);
        expect(signedArea(moved)).toBeCloseTo(signedArea(disc(10, 20, 30)), 5);
        expect(
          distance(centroid(moved), transformedPath(polyline(at(10, 20), at(11, 20)), map).segments[0]![0]),
        ).toBeLessThan(1e-8);
      }),
    );
  });
});

describe('containment', () => {
  const drop: Path = {
    segments: [
      ...fairCurve({ point: at(0, 0), direction: at(1, -0.3) }, { point: at(0, 60), direction: at(-1, -0.3) })
        .segments,
      [at(0, 60), at(0, 0)],
    ],
  };
  test('points within, without and on the outline are told apart', () => {
    expect(containsPoint(drop, at(5, 30))).toBe(true);
    expect(containsPoint(drop, at(-1e-5, 30))).toBe(false);
    expect(containsPoint(drop, at(0, 30))).toBe(true);
    expect(containsPoint(drop, at(0, 0))).toBe(true);
    expect(containsPoint(drop, at(0, 61))).toBe(false);
  });
  test('rays through corners, level edges and highest points are counted right', () => {
    const star = polyline(
      at(0, 0),
      at(10, 0),
      at(10, 10),
      at(20, 10),
      at(20, 0),
      at(30, 0),
      at(30, 20),
      at(15, 15),
      at(0, 20),
      at(0, 0),
    );
    for (const y of [0, 10, 15, 20]) {
      expect(containsPoint(star, at(-5, y))).toBe(false);
      expect(containsPoint(star, at(35, y))).toBe(false);
    }
    expect(containsPoint(star, at(5, 10))).toBe(true);
    expect(containsPoint(star, at(15, 5))).toBe(false);
    expect(containsPoint(star, at(25, 10))).toBe(true);
  });
  test('a disc holds exactly what lies within its radius', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -60, max: 60, noNaN: true }),
        (x, y) => {
          const r = Math.hypot(x, y);
          if (Math.abs(r - 50) < 0.01) return;
          expect(containsPoint(disc(0, 0, 50), at(x, y))).toBe(r < 50);
        },
      ),
    );
  });
});

describe('self-crossings', () => {
  test('a simple outline has none, whatever its joints', () => {
    expect(selfCrossings(rectangle(0, 0, 10, 10))).toEqual([]);
    expect(selfCrossings(disc(0, 0, 50))).toEqual([]);
    const withSpeck = polyline(at(0, 0), at(10, 0), at(10, 0), at(10, 10), at(0, 0));
    expect(selfCrossings(withSpeck)).toEqual([]);
  });
  test('a bow tie crosses once, with both places along the path', () => {
    const [found, ...more] = selfCrossings(polyline(at(0, 0), at(10, 10), at(10, 0), at(0, 10), at(0, 0)));
    expect(more).toEqual([]);
    expect(found!.alongA).toBeCloseTo(Math.sqrt(50), 12);
    expect(found!.alongB).toBeCloseTo(Math.sqrt(50) * 3 + 10, 12);
    expect(found!.point).toEqual(at(5, 5));
  });
  test('a loop within one cubic, and an edge that runs back on itself, are found', () => {
    const loop: Path = {
      segments: [
        [at(0, 0), at(200, 150), at(-100, 150), at(100, 0)],
        [at(100, 0), at(0, 0)],
      ],
    };
    expect(selfCrossings(loop)).toHaveLength(1);
    const spike = selfCrossings(polyline(at(0, 0), at(10, 0), at(20, 0), at(10, 0), at(10, 10), at(0, 0)));
    expect(spike.length).toBeGreaterThan(0);
  });
  test('every crossing of a scribble is found, as holding each segment against each finds them', () => {
    const corner = fc.record({ x: fc.integer({ min: 0, max: 40 }), y: fc.integer({ min: 0, max: 40 }) });
    fc.assert(
      fc.property(fc.array(corner, { minLength: 4, maxLength: 30 }), corners => {
        const scribble = polyline(...corners, corners[0]!);
        const places = new Set<string>();
        const { segments } = scribble;
        segments.forEach((a, i) => {
          segments.slice(0, i).forEach((b, k) => {
            if (i - k === 1 || i - k === segments.length - 1) return;
            const [p, q] = [a[0], a[1]!],
              [r, s] = [b[0], b[1]!];
            const turn = (q.x - p.x) * (s.y - r.y) - (q.y - p.y) * (s.x - r.x);
            const t = ((r.x - p.x) * (s.y - r.y) - (r.y - p.y) * (s.x - r.x)) / turn;
            const u = ((r.x - p.x) * (q.y - p.y) - (r.y - p.y) * (q.x - p.x)) / turn;
            if (turn !== 0 && t > 1e-6 && t < 1 - 1e-6 && u > 1e-6 && u < 1 - 1e-6)
              places.add(`${(p.x + t * (q.x - p.x)).toFixed(6)} ${(p.y + t * (q.y - p.y)).toFixed(6)}`);
          });
        });
        const found = new Set(
          selfCrossings(scribble).map(({ point }) => `${point.x.toFixed(6)} ${point.y.toFixed(6)}`),
        );
        for (const place of places) expect(found).toContain(place);
      }),
    );
  });
  test('a ring of two thousand segments crosses itself nowhere', () => {
    const n = 2000;
    const ring = polyline(
      ...Array.from({ length: n + 1 }, (_, i) =>
        at(100 * Math.cos((2 * Math.PI * i) / n), 100 * Math.sin((2 * Math.PI * i) / n)),
      ),
    );
    expect(selfCrossings(ring)).toEqual([]);
  });
});

describe('union, intersection and difference', () => {
  const a = rectangle(0, 0, 10, 10),
    b = rectangle(5, 5, 10, 10);
  const area = (paths: readonly Path[]): number => paths.reduce((sum, p) => sum + signedArea(p), 0);
  test('two squares that overlap by a quarter', () => {
    expect(area(union([a], [b]))).toBeCloseTo(175, 9);
    expect(area(intersection([a], [b]))).toBeCloseTo(25, 9);
    expect(area(difference([a], [b]))).toBeCloseTo(75, 9);
  });
  test('a hole runs anticlockwise, so that areas add up', () => {
    const ring = difference([rectangle(0, 0, 30, 30)], [disc(15, 15, 10)]);
    expect(ring).toHaveLength(2);
    expect(area(ring)).toBeCloseTo(900 - signedArea(disc(15, 15, 10)), 6);
  });
  test('what has nothing in common gives nothing', () => {
    expect(intersection([a], [rectangle(20, 20, 5, 5)])).toEqual([]);
    expect(difference([a], [a])).toEqual([]);
  });
  test('union and intersection together hold what both hold', () => {
    fc.assert(
      fc.property(angle, fc.double({ min: -80, max: 80, noNaN: true }), (turn, x) => {
        const one = disc(0, 0, 50),
          other = transformedPath(rectangle(x, -20, 60, 40), rotation(turn));
        expect(area(union([one], [other])) + area(intersection([one], [other]))).toBeCloseTo(
          signedArea(one) + signedArea(other),
          3,
        );
      }),
      { numRuns: 50 },
    );
  });
});

describe('clearance', () => {
  test('between squares, discs and paths that meet', () => {
    expect(clearance(rectangle(0, 0, 10, 10), rectangle(13, 14, 5, 5))).toBeCloseTo(5, 9);
    expect(clearance(disc(0, 0, 10), disc(30, 40, 20))).toBeCloseTo(20, 3);
    expect(clearance(rectangle(0, 0, 10, 10), rectangle(5, 5, 10, 10))).toBe(0);
    expect(clearance(rectangle(0, 0, 10, 10), rectangle(10, 3, 10, 10))).toBe(0);
  });
  test('a parallel keeps its distance', () => {
    const neck = fairCurve(
      { point: at(0, 0), direction: at(0, 1) },
      { point: at(80, 80), direction: at(1, 0) },
    );
    const parallel: Path = { segments: offsetSegment(neck.segments[0]!, 7) };
    expect(Math.abs(clearance(neck, parallel) - 7)).toBeLessThan(0.005);
  });
});
