import { type Path, type Point, pathLength, polyline } from '@paperhinge/geometry';
import { type OffsetLoop, offsetOutline } from '@paperhinge/geometry/cutting-line';
import { reversedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { anyPiece } from './any-piece.js';
import { distanceTo, edgesOf, largestGap, polylineCrossings, sampled, sampledWithin } from './independent.js';
import { arc, at, cornersOf, rectangle } from './pieces.js';

const ringOf = (...points: readonly { x: number; y: number }[]): Path => polyline(...points, points[0]!);
const areas = (loops: readonly OffsetLoop[]): readonly number[] => loops.map(l => signedArea(l.path));
const codes = (findings: readonly { code: string }[]): readonly string[] => findings.map(f => f.code);

describe('a rectangle', () => {
  const outline = ringOf(...rectangle(100, 60));
  test('grows and shrinks by the distance, its corners square', () => {
    expect(areas(offsetOutline(outline, 10).loops)).toEqual([120 * 80]);
    const { loops, findings } = offsetOutline(outline, -10);
    expect(cornersOf(loops[0]!.path)).toHaveLength(4);
    expect(areas(loops)).toEqual([80 * 40]);
    expect(findings).toEqual([]);
  });
  test('keeps the names of its sides, in their order', () => {
    for (const by of [10, -10]) {
      const names = offsetOutline(outline, by).loops[0]!.stretches.map(s => s.of);
      const distinct = names.filter((name, i) => name !== names[i - 1]);
      expect(distinct.slice(0, 4)).toEqual(['1', '2', '3', '4']);
    }
  });
  test('drawn the other way round comes back the other way round', () => {
    expect(areas(offsetOutline(reversedPath(outline), 10).loops)).toEqual([-120 * 80]);
    expect(areas(offsetOutline(reversedPath(outline), -10).loops)).toEqual([-80 * 40]);
  });
  test('moved in by half its height or more there is nothing left of it', () => {
    for (const by of [-30, -31]) {
      const { loops, findings } = offsetOutline(outline, by);
      expect(loops).toEqual([]);
      expect(codes(findings)).toEqual(['parallel-vanished']);
    }
  });
  test('each side moves by its own distance, those of none not at all', () => {
    const { loops } = offsetOutline(outline, name => (name === '1' ? -20 : name === '2' ? -5 : 0));
    expect(areas(loops)).toEqual([95 * 40]);
  });
  test('any one of its sides moves out or in alone', () => {
    for (const [i, [out, inner]] of [
      [7000, 5000],
      [6600, 5400],
      [7000, 5000],
      [6600, 5400],
    ].entries()) {
      const alone = (by: number) =>
        areas(offsetOutline(outline, name => (name === `${i + 1}` ? by : 0)).loops);
      expect(alone(10)).toEqual([out]);
      expect(alone(-10)).toEqual([inner]);
    }
  });
  test('sides that do not move are not told for what the others take of them', () => {
    const { loops, findings } = offsetOutline(outline, name => (name === '1' ? -10 : name === '3' ? -20 : 0));
    expect(areas(loops)).toEqual([100 * 30]);
    expect(findings).toEqual([]);
  });
  test('is told which of its sides has no distance, or no place', () => {
    const [first, ...rest] = outline.segments.map((segment, i) => ({
      name: 'abcd'[i]!,
      path: { segments: [segment] },
    }));
    const nowhere = { ...first!, path: { segments: [[at(0, 0), at(Number.NaN, 0)] as const] } };
    expect(refusalOf(() => offsetOutline([...rest, nowhere], 5)).where).toEqual({ edge: 'a' });
    const unsaid = () => offsetOutline([first!, ...rest], name => (name === 'c' ? Number.NaN : 5));
    expect(refusalOf(unsaid).where).toEqual({ edge: 'c' });
  });
  test('moved by nothing it is itself', () => {
    expect(offsetOutline(outline, 0).loops[0]!.path).toEqual(outline);
  });
  test('is not moved both ways at once', () => {
    expect(() => offsetOutline(outline, name => (name === '1' ? 5 : -5))).toThrow(
      expect.objectContaining({ code: 'offset-both-ways' }),
    );
  });
});

// check-values §10 [derived]: closed and convex, A − P d + π d² for a circle.
test('in a slot each wall is told for what the other side takes of it, but for one that does not move', () => {
  // 20 mm wide and 60 deep: the left wall goes beyond the right one by 10.
  const slot = [
    ['top left', at(0, 0), at(40, 0)],
    ['left wall', at(40, 0), at(40, 60)],
    ['floor', at(40, 60), at(60, 60)],
    ['right wall', at(60, 60), at(60, 0)],
    ['top right', at(60, 0), at(100, 0)],
    ['right', at(100, 0), at(100, 100)],
    ['foot', at(100, 100), at(0, 100)],
    ['left', at(0, 100), at(0, 0)],
  ] as const;
  const outline = slot.map(([name, from, to]) => ({ name, path: polyline(from, to) }));
  const lost = (left: number, right: number) =>
    offsetOutline(outline, name =>
      name === 'left wall' ? left : name === 'right wall' ? right : 5,
    ).findings.map(({ code, where, figures }) => [code, where.edge, figures!.lostMm]);
  expect(lost(30, 0)).toEqual([
    ['parallel-trimmed', 'left wall', expect.closeTo(60, 9)],
    ['parallel-trimmed', 'floor', expect.closeTo(20, 9)],
    ['parallel-trimmed', 'top right', expect.closeTo(10, 9)],
  ]);
  // The right wall's line begins where the floor's crosses it.
  expect(lost(30, 5)).toEqual([
    ['parallel-trimmed', 'left wall', expect.closeTo(60, 9)],
    ['parallel-trimmed', 'floor', expect.closeTo(15, 9)],
    ['parallel-trimmed', 'right wall', expect.closeTo(55, 9)],
    ['parallel-trimmed', 'top right', expect.closeTo(10, 9)],
  ]);
  expect(lost(15, 0)).toEqual([]);
});

test('a triangle shrinks about its centre, and past it to nothing, though a smaller one stands there', () => {
  // Of equal sides of 100: its inner circle has a radius of 100 / (2 √3).
  const radius = 100 / (2 * Math.sqrt(3));
  const triangle = ringOf(at(0, 3 * radius), at(50, 0), at(100, 3 * radius));
  for (const by of [10, 20, 28.5])
    expect(areas(offsetOutline(triangle, -by).loops)).toEqual([
      expect.closeTo(150 * radius * (1 - by / radius) ** 2, 6),
    ]);
  for (const by of [29, 35, 43]) {
    expect(offsetOutline(triangle, -by).loops).toEqual([]);
    expect(codes(offsetOutline(triangle, -by).findings)).toEqual(['parallel-vanished']);
  }
});

test('a circle shrinks to a circle, and past its centre to nothing', () => {
  const circle: Path = { segments: arc(at(0, 0), 80, 0, 360) };
  const { loops, findings } = offsetOutline([{ name: 'rim', path: circle }], -15);
  expect(findings).toEqual([]);
  expect(loops[0]!.stretches.map(s => s.of)).toEqual(['rim']);
  for (const { point } of sampled(loops[0]!.path, 20))
    expect(Math.abs(Math.hypot(point.x, point.y) - 65)).toBeLessThan(0.005);
  expect(offsetOutline([{ name: 'rim', path: circle }], -81).loops).toEqual([]);
});

test('an inner corner is mitred when moved in, and past the limit cut square, never nearer than the distance', () => {
  const notched = (half: number): Path =>
    ringOf(at(0, 0), at(150 - half, 0), at(150, 75), at(150 + half, 0), at(300, 0), at(300, 300), at(0, 300));
  const tip = (half: number) =>
    Math.max(
      ...cornersOf(offsetOutline(notched(half), -20).loops[0]!.path)
        .filter(p => p.y < 250)
        .map(p => p.y),
    );
  // d / sin of half the angle between the sides, below the corner.
  expect(tip(75)).toBeCloseTo(75 + 20 * Math.SQRT2, 9);
  expect(tip(10)).toBeCloseTo(75 + 2.5 * 20, 9);
});

test('a narrow waist parts the inside in two, each closed and clockwise', () => {
  const bow = ringOf(at(0, 0), at(100, 0), at(110, 60), at(120, 0), at(220, 0), at(220, 80), at(0, 80));
  const { loops, findings } = offsetOutline(bow, -15);
  expect(loops).toHaveLength(2);
  for (const area of areas(loops)) expect(area).toBeGreaterThan(1000);
  expect(codes(findings)).toContain('parallel-in-parts');
  expect(codes(findings)).toContain('parallel-trimmed');
});

test('of several parts the largest comes first, wherever the outline is begun', () => {
  // Rooms of 100 by 80 and 160 by 80, a wall of 10 between them with a door of 20: moved in by 15, 70 by 50 and 130 by 50.
  const rooms = [
    at(0, 0),
    at(100, 0),
    at(100, 30),
    at(110, 30),
    at(110, 0),
    at(270, 0),
    at(270, 80),
    at(110, 80),
    at(110, 50),
    at(100, 50),
    at(100, 80),
    at(0, 80),
  ];
  for (const first of [0, 3, 6, 9])
    expect(areas(offsetOutline(ringOf(...rooms.slice(first), ...rooms.slice(0, first)), -15).loops)).toEqual([
      expect.closeTo(130 * 50, 6),
      expect.closeTo(70 * 50, 6),
    ]);
});

test('a gap that closes at its mouth stays as a hole, the other way round', () => {
  const ring = ringOf(
    at(0, 0),
    at(95, 0),
    at(95, 20),
    at(50, 20),
    at(50, 150),
    at(150, 150),
    at(150, 20),
    at(105, 20),
    at(105, 0),
    at(200, 0),
    at(200, 200),
    at(0, 200),
  );
  const { loops } = offsetOutline(ring, 10);
  expect(areas(loops).map(a => Math.round(a))).toEqual([220 * 220, -80 * 110]);
});

test('a bend tighter than the distance comes to a point where its sides cross, and is said so', () => {
  const outline = [
    { name: 'top', path: { segments: [[at(0, 0), at(100, 0)] as const] } },
    { name: 'right', path: { segments: arc(at(100, 20), 20, -90, 90) } },
    { name: 'foot', path: { segments: [[at(100, 40), at(0, 90)] as const] } },
    { name: 'left', path: { segments: [[at(0, 90), at(0, 0)] as const] } },
  ];
  const { loops, findings } = offsetOutline(outline, -24);
  expect(polylineCrossings(loops[0]!.path)).toEqual([]);
  expect(findings.filter(f => f.code === 'parallel-trimmed').map(f => f.where.edge)).toContain('right');
  for (const { point } of sampled(loops[0]!.path, 20))
    for (const { path } of outline) expect(distanceTo(path, point).distance).toBeGreaterThan(23.994);
});

describe('over random plausible pieces', () => {
  const by = fc.constantFrom(3, 7, 15.875, 25, 40);
  test('every loop is closed and simple, on the true parallels, and nowhere nearer', () => {
    fc.assert(
      fc.property(anyPiece(), by, fc.boolean(), (piece, distance, isInward) => {
        const whole = outlinePath(piece.outline);
        const { loops } = offsetOutline(edgesOf(piece), isInward ? -distance : distance);
        for (const { path, stretches } of loops) {
          expect(largestGap(path)).toBeLessThan(1e-6);
          expect(polylineCrossings(path, 20)).toEqual([]);
          expect(stretches.flatMap(s => s.path.segments)).toEqual(path.segments);
          for (const stretch of stretches)
            for (const { point } of sampled(stretch.path, 5)) {
              const far = distanceTo(whole, point).distance;
              expect(far).toBeGreaterThan(distance - 0.01);
              if (stretch.shape === 'parallel') expect(far).toBeLessThan(distance + 0.01);
            }
        }
      }),
      { numRuns: 80 },
    );
  });
  test('every place at the distance, square to the outline and clear of the rest of it, is on a loop', () => {
    fc.assert(
      fc.property(anyPiece(), by, (piece, distance) => {
        const whole = outlinePath(piece.outline);
        const { loops } = offsetOutline(edgesOf(piece), -distance);
        const found: Path = { segments: loops.flatMap(l => l.path.segments) };
        for (const { point, tangent } of sampledWithin(whole, 15)) {
          const p = at(point.x - distance * tangent.y, point.y + distance * tangent.x);
          if (distanceTo(whole, p).distance < distance - 1e-4) continue;
          expect(found.segments.length).toBeGreaterThan(0);
          // A mitre may reach over it; then no loop is nearer to the outline than it.
          const mitred = isPastACorner(piece, p, distance);
          if (!mitred) expect(distanceTo(found, p).distance).toBeLessThan(0.01);
        }
      }),
      { numRuns: 60 },
    );
  });
  test('outwards it is the whole outline that grows', () => {
    fc.assert(
      fc.property(anyPiece(), by, (piece, distance) => {
        const outline = outlinePath(piece.outline);
        const { loops } = offsetOutline(edgesOf(piece), distance);
        const grown = signedArea(loops[0]!.path) - signedArea(outline);
        expect(grown).toBeGreaterThan(0);
        expect(pathLength(loops[0]!.path)).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });
});

/** Whether a place lies within a mitre's reach of a corner of the outline. */
const isPastACorner = (
  piece: Parameters<typeof edgesOf>[0],
  p: { x: number; y: number },
  by: number,
): boolean =>
  edgesOf(piece).some(e => {
    const [c] = e.path.segments[0]!;
    return Math.hypot(p.x - c.x, p.y - c.y) < 2.7 * by && Math.hypot(p.x - c.x, p.y - c.y) > by + 1e-3;
  });

describe('an outline of micrometres', () => {
  // Closed form: a rectangle a by b, moved out by d, is (a + 2d)(b + 2d).
  test.each([1e-2, 1e-3, 1e-4, 1e-5])('of %d mm is moved outwards like any other', size => {
    const { loops, findings } = offsetOutline(ringOf(...rectangle(2 * size, size)), 10);
    expect(areas(loops)).toEqual([expect.closeTo((2 * size + 20) * (size + 20), 6)]);
    expect(findings).toEqual([]);
    const curved: Path = {
      segments: [
        [at(0, 0), at(size, -size), at(2 * size, -size), at(3 * size, 0)],
        [at(3 * size, 0), at(2 * size, size), at(size, size), at(0, 0)],
      ],
    };
    expect(offsetOutline(curved, 10).loops).toHaveLength(1);
  });
  test.each([1, 1e-1, 1e-2, 1e-3, 1e-4])('of %d mm and of any shape is gone once moved in', size => {
    const place = fc.tuple(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(place, { minLength: 8, maxLength: 8 }), places => {
        const [a, b, c, d, e, f, g, h] = places.map(([x, y]) => at(x * size, y * size)) as Point[];
        const outline: Path = {
          segments: [
            [a!, b!, c!, d!],
            [d!, e!],
            [e!, f!, g!, h!],
            [h!, a!],
          ],
        };
        fc.pre(Math.max(...places.map(([x]) => x)) - Math.min(...places.map(([x]) => x)) > 0.1);
        // Half the way across is less than this: nothing within is so far from all sides.
        const { loops, findings } = offsetOutline(outline, -0.51 * size - 1);
        expect(loops).toEqual([]);
        expect(codes(findings)).toEqual(['parallel-vanished']);
      }),
      { numRuns: 20 },
    );
  });
  test('smaller than can be told from a point is refused', () => {
    for (const size of [1e-6, 1e-7, 0])
      expect(() => offsetOutline(ringOf(...rectangle(2 * size, size)), 10)).toThrow(
        expect.objectContaining({ code: 'edge-without-length' }),
      );
  });
});
