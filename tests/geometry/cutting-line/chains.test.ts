import { line, type Point, type Segment } from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';
import { pathWithoutLoops } from '@paperhinge/geometry/cutting-line';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closedUp, keptBetween, overlaps } from '../../../packages/geometry/src/cutting-line/assemble.js';
import { isWithin } from '../../../packages/geometry/src/cutting-line/boundaries.js';
import { leavingCircle } from '../../../packages/geometry/src/cutting-line/circle-crossings.js';
import { firstOnRay } from '../../../packages/geometry/src/cutting-line/line-crossings.js';
import {
  type Strand,
  straight,
  strandsBetween,
  strandsReversed,
  stretchesOf,
} from '../../../packages/geometry/src/cutting-line/strand.js';
import { evaluated } from './independent.js';
import { at } from './pieces.js';

/** Straight strands through points, all of one name. */
const chain = (...points: readonly (readonly [number, number])[]): readonly Strand[] =>
  points.slice(1).map(([x, y], i) => ({
    segment: line(at(...points[i]!), at(x, y)),
    of: 'e',
    shape: 'parallel' as const,
  }));
const rounded = ({ x, y }: Point): readonly number[] => [x, y].map(v => Math.round(v * 1e9) / 1e9 + 0);
const ends = (strands: readonly Strand[]): readonly (readonly number[])[] =>
  strands.map(({ segment }) => [...rounded(segment[0]), ...rounded(segment.at(-1)!)]);

describe('closing up', () => {
  test('ends less than a thousandth apart meet half way, wider ones at the end of the first', () => {
    const open = chain([0, 0], [100, 0], [100, 50], [0, 50], [0, 0]).map((strand, i): Strand => {
      const [p, q] = strand.segment as readonly [Point, Point];
      // The second starts 0.0008 mm to the side, the third 0.004 mm off, the others where they should.
      if (i === 1) return { ...strand, segment: line(at(p.x + 0.0008, p.y), q) };
      return i === 2 ? { ...strand, segment: line(at(p.x, p.y + 0.004), q) } : strand;
    });
    expect(ends(closedUp(open))).toEqual([
      [0, 0, 100.0004, 0],
      [100.0004, 0, 100, 50],
      [100, 50, 0, 50],
      [0, 50, 0, 0],
    ]);
  });
  test('off along one axis alone is off', () => {
    const across = chain([0, 0], [100, 0], [100.5, 50], [0, 0]).map((strand, i) =>
      i === 1 ? { ...strand, segment: line(at(100.0006, 0), strand.segment.at(-1)!) } : strand,
    );
    expect(ends(closedUp(across))[0]).toEqual([0, 0, 100.0003, 0]);
    expect(ends(closedUp(across))[1]).toEqual([100.0003, 0, 100.5, 50]);
    const down = chain([0, 0], [100, 0], [100.5, 50], [0, 0]).map((strand, i) =>
      i === 1 ? { ...strand, segment: line(at(100, 0.0006), strand.segment.at(-1)!) } : strand,
    );
    expect(ends(closedUp(down))[0]).toEqual([0, 0, 100, 0.0003]);
  });
  test('handles move with the ends of a curve; what fits already is left as it is', () => {
    const curve: Cubic = [at(0, 0), at(30, 40), at(70, 40), at(100, 0)];
    const strands: readonly Strand[] = [
      { segment: curve, of: 'e', shape: 'parallel' },
      { segment: line(at(100.0006, 0.0002), at(0, 0)), of: 'e', shape: 'parallel' },
    ];
    const [moved] = closedUp(strands);
    expect(moved!.segment.map(rounded)).toEqual([
      [0, 0],
      [30, 40],
      [70.0003, 40.0001],
      [100.0003, 0.0001],
    ]);
    const fitting = chain([0, 0], [100, 0], [0, 50], [0, 0]);
    expect(closedUp(fitting)).toEqual(fitting);
  });
});

describe('a part of a chain', () => {
  const three = chain([0, 0], [10, 0], [10, 20], [40, 20]);
  test('runs from place to place, whole strands as they are', () => {
    expect(ends(strandsBetween(three, 0.5, 2.5))).toEqual([
      [5, 0, 10, 0],
      [10, 0, 10, 20],
      [10, 20, 25, 20],
    ]);
    expect(strandsBetween(three, 0, 3)).toEqual(three);
    expect(strandsBetween(three, 0, 3)[1]).toBe(three[1]);
    expect(ends(strandsBetween(three, 1.25, 1.75))).toEqual([[10, 5, 10, 15]]);
  });
  test('leaves out crumbs, but keeps a loop whose ends meet', () => {
    expect(strandsBetween(three, 1 - 1e-9, 2)).toEqual([three[1]]);
    expect(strandsBetween(three, 1.6, 1.6)).toEqual([]);
    expect(strandsBetween(three, 1.6, 1.4)).toEqual([]);
    expect(ends(strandsBetween(three, 2, 3))).toEqual([[10, 20, 40, 20]]);
    const loop: Strand = {
      segment: [at(0, 0), at(80, 60), at(-80, 60), at(0, 0)],
      of: 'e',
      shape: 'parallel',
    };
    expect(strandsBetween([loop], 1e-12, 1)).toHaveLength(1);
  });
  test('reversed it runs the other way', () => {
    expect(ends(strandsReversed(three))).toEqual([
      [40, 20, 10, 20],
      [10, 20, 10, 0],
      [10, 0, 0, 0],
    ]);
  });
  test('a straight between two points is none where they are one', () => {
    expect(ends(straight(at(1, 2), at(3, 4), 'e'))).toEqual([[1, 2, 3, 4]]);
    expect(straight(at(1, 2), at(3, 4), 'e')[0]).toMatchObject({ of: 'e', shape: 'corner' });
    expect(straight(at(1, 2), at(3, 4), 'd', 'dart')[0]).toMatchObject({ of: 'd', shape: 'dart' });
    expect(straight(at(1, 2), at(1 + 5e-7, 2), 'e')).toEqual([]);
  });
  test('neighbours of one name and one shape are one stretch', () => {
    const named = three.map(
      (s, i): Strand => ({ ...s, of: 'aab'[i]!, shape: i === 0 ? 'corner' : 'parallel' }),
    );
    expect(stretchesOf(named).map(s => [s.of, s.shape, s.path.segments.length])).toEqual([
      ['a', 'corner', 1],
      ['a', 'parallel', 1],
      ['b', 'parallel', 1],
    ]);
    expect(stretchesOf(three).map(s => s.path.segments.length)).toEqual([3]);
  });
  test('what two joints leave of a chain, and whether they want more of it than there is', () => {
    const joint = (before: number, after: number) => ({ before, after, bridge: [] });
    const long = chain([0, 0], [60, 0], [100, 0]);
    expect(keptBetween(long, undefined, undefined)).toEqual(long);
    // The joint before cuts its start; the one after its end, counted from there.
    expect(ends(keptBetween(long, joint(9, 0.5), joint(0.75, 9)))).toEqual([
      [30, 0, 60, 0],
      [60, 0, 70, 0],
    ]);
    expect(ends(keptBetween(long, joint(9, 1.5), undefined))).toEqual([[80, 0, 100, 0]]);
    expect(ends(keptBetween(long, undefined, joint(1.5, 9)))).toEqual([[0, 0, 30, 0]]);
    expect(overlaps(long, joint(9, 1.2), joint(0.7, 9))).toBe(false);
    expect(overlaps(long, joint(9, 1.2), joint(0.9, 9))).toBe(true);
    expect(overlaps(long, joint(9, 2), undefined)).toBe(false);
    expect(overlaps(long, undefined, joint(2.1, 9))).toBe(true);
  });
});

test('a place lies within what a shortcut leaves out, also where that runs over the start of the chain', () => {
  const by: readonly Point[] = [];
  for (const [place, from, to, expected] of [
    [3, 2.5, 4.5, true],
    [2.5, 2.5, 4.5, true],
    [4.5, 2.5, 4.5, true],
    [2, 2.5, 4.5, false],
    [5, 2.5, 4.5, false],
    [9, 8.5, 11.5, true],
    [1, 8.5, 11.5, true],
    [0, 8.5, 11.5, true],
    [2, 8.5, 11.5, false],
    [8, 8.5, 11.5, false],
  ] as const)
    expect(isWithin(place, { from, to, by }, 10)).toBe(expected);
});

describe('where a chain meets a line', () => {
  const curve: Cubic = [at(0, -30), at(40, 50), at(60, 50), at(100, -30)];
  /** The parameter at which one segment first comes to a line, be it behind or ahead of the place it is drawn from. */
  const first = (segment: Segment, on: Point, direction = at(1, 0)): number | undefined =>
    firstOnRay([{ segment, of: 'e', shape: 'parallel' }], on, direction, -1e4)?.place;
  test('a straight segment once, touched ends included', () => {
    expect(first(line(at(0, -30), at(0, 10)), at(50, 0))).toBeCloseTo(0.75, 12);
    expect(first(line(at(0, 0), at(0, 10)), at(50, 0))).toBeCloseTo(0, 9);
    expect(first(line(at(0, -10), at(0, 0)), at(50, 0))).toBeCloseTo(1, 9);
    expect(first(line(at(0, 1), at(0, 10)), at(50, 0))).toBeUndefined();
  });
  test('a curve where it first comes to it', () => {
    expect(evaluated(curve, first(curve, at(7, 0))!).point.y).toBeCloseTo(0, 9);
    expect(first(curve, at(7, 0))).toBeLessThan(0.5);
    expect(first(curve, at(0, 60))).toBeUndefined();
    expect(first(curve, at(0, -40))).toBeUndefined();
    // The top of the arch, at 30, is touched.
    expect(Math.abs(first(curve, at(0, 30))! - 0.5)).toBeLessThan(1e-3);
  });
  test('a curve of any shape, on a line of any lean', () => {
    const number = fc.integer({ min: -1000, max: 1000 }).map(k => k / 10);
    const point = fc.tuple(number, number).map(([x, y]) => at(x, y));
    fc.assert(
      fc.property(
        fc.tuple(point, point, point, point),
        point,
        fc.double({ min: 0, max: 3, noNaN: true }),
        (segment, on, angle) => {
          const direction = at(Math.cos(angle), Math.sin(angle));
          const off = (t: number) => {
            const { x, y } = evaluated(segment, t).point;
            return direction.x * (y - on.y) - direction.y * (x - on.x);
          };
          const t = first(segment, on, direction);
          if (t !== undefined) expect(Math.abs(off(t))).toBeLessThan(1e-7);
          // Before it, or all along, the curve lies on one side.
          const sides = Array.from({ length: 200 }, (_, i) => off(((t ?? 1) * i) / 200)).filter(
            d => Math.abs(d) > 1e-7,
          );
          expect(new Set(sides.map(Math.sign)).size).toBeLessThanOrEqual(1);
        },
      ),
      { numRuns: 100 },
    );
  });
  test('the first along the chain that lies on the ray, no nearer than asked', () => {
    const zigzag = chain([-20, -10], [-20, 10], [30, 10], [30, -10], [60, -10], [60, 10]);
    expect(firstOnRay(zigzag, at(0, 0), at(1, 0))).toMatchObject({
      place: 2.5,
      along: 30,
      point: at(30, 0),
    });
    expect(firstOnRay(zigzag, at(0, 0), at(-1, 0))).toMatchObject({ place: 0.5, along: 20 });
    expect(firstOnRay(zigzag, at(0, 0), at(1, 0), 40)).toMatchObject({ place: 4.5, along: 60 });
    expect(firstOnRay(zigzag, at(0, 0), at(1, 0), -20)).toMatchObject({ place: 0.5, along: -20 });
    expect(firstOnRay(zigzag, at(0, 0), at(1, 0), 61)).toBeUndefined();
  });
});

describe('where a chain leaves a circle', () => {
  test('on a straight strand at the radius', () => {
    expect(leavingCircle(chain([0, 0], [3, 0], [3, 40]), at(0, 0), 5)).toBeCloseTo(1.1, 9);
    expect(leavingCircle(chain([10, 20], [10, 24]), at(10, 20), 5)).toBeUndefined();
  });
  test('on a curve of any shape: first at the radius, within before', () => {
    const number = fc.integer({ min: -600, max: 600 }).map(k => k / 10);
    const point = fc.tuple(number, number).map(([x, y]) => at(x, y));
    fc.assert(
      fc.property(point, point, point, point, (centre, q, r, s) => {
        const start = at(centre.x + 3, centre.y - 2);
        const segment: Cubic = [start, q, r, s];
        const away = (t: number) => {
          const { x, y } = evaluated(segment, t).point;
          return Math.hypot(x - centre.x, y - centre.y);
        };
        const left = leavingCircle([{ segment, of: 'e', shape: 'parallel' }], centre, 20);
        const last = left ?? 1;
        if (left !== undefined) expect(away(left)).toBeCloseTo(20, 6);
        for (let i = 0; i < 100; i++) expect(away((last * i) / 100)).toBeLessThan(20 + 1e-6);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a chain that passes a place twice', () => {
  const passed = (...points: readonly (readonly [number, number])[]) =>
    pathWithoutLoops({ segments: chain(...points).map(s => s.segment) }).segments.map(s =>
      [...s].map(rounded),
    );
  test('loses its loop', () => {
    expect(passed([0, 0], [70, 0], [70, -20], [40, -20], [40, 30])).toEqual([
      [
        [0, 0],
        [40, 0],
      ],
      [
        [40, 0],
        [40, 30],
      ],
    ]);
  });
  test('loses its loop where the way back goes through a joint', () => {
    expect(passed([0, 0], [40, 0], [70, 0], [70, -20], [40, -20], [40, 30])).toEqual([
      [
        [0, 0],
        [40, 0],
      ],
      [
        [40, 0],
        [40, 30],
      ],
    ]);
  });
  test('loses the loop of a curve that crosses itself', () => {
    // Mirrored in x = 0, up one side and down the other: it crosses itself on the middle line.
    const curve: Cubic = [at(-50, 0), at(150, 120), at(-150, 120), at(50, 0)];
    const { segments } = pathWithoutLoops({ segments: [curve] });
    expect(segments).toHaveLength(2);
    expect(segments.map(s => rounded(s[0])[0])).toEqual([-50, expect.closeTo(0, 9)]);
    // x = 50 (−1 + 12 t − 30 t² ... ) is 0 at the middle and at two more places, alike up both sides.
    expect(segments[0]!.at(-1)!.y).toBeCloseTo(segments[1]![0].y, 9);
    for (const segment of segments)
      for (let t = 0; t <= 1; t += 0.05)
        expect(Math.sign(evaluated(segment, t).point.x + (segment === segments[0] ? -1e-9 : 1e-9))).toBe(
          segment === segments[0] ? -1 : 1,
        );
  });
  test('loses the whole of nested loops, and each of several in a row', () => {
    // The inner loop lies within the outer.
    expect(
      passed([0, 0], [90, 0], [90, -40], [60, -40], [60, -20], [100, -20], [100, -60], [30, -60], [30, 20]),
    ).toEqual([
      [
        [0, 0],
        [30, 0],
      ],
      [
        [30, 0],
        [30, 20],
      ],
    ]);
    expect(
      passed([0, 0], [40, 0], [40, -10], [30, -10], [30, 10], [90, 10], [90, 0], [80, 0], [80, 40]),
    ).toEqual([
      [
        [0, 0],
        [30, 0],
      ],
      [
        [30, 0],
        [30, 10],
      ],
      [
        [30, 10],
        [80, 10],
      ],
      [
        [80, 10],
        [80, 40],
      ],
    ]);
  });
  test('keeps nothing of what a later crossing nearer its start closes', () => {
    // Its first side is crossed at 80, then at 30: from 30 it goes straight on to the end.
    expect(passed([0, 0], [100, 0], [100, 20], [80, 20], [80, -20], [30, -20], [30, 20], [0, 20])).toEqual([
      [
        [0, 0],
        [30, 0],
      ],
      [
        [30, 0],
        [30, 20],
      ],
      [
        [30, 20],
        [0, 20],
      ],
    ]);
  });
  test('without one is the same path', () => {
    const path = { segments: chain([0, 0], [70, 0], [70, -20]).map(s => s.segment) };
    expect(pathWithoutLoops(path)).toBe(path);
  });
});
