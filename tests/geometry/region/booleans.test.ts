import { at, type Path, type Point, polyline, type Segment } from '@paperhinge/geometry';
import { reversedPath } from '@paperhinge/geometry/paths';
import { distance, lerp } from '@paperhinge/geometry/plane';
import { difference, intersection, selfCrossings, signedArea, union } from '@paperhinge/geometry/regions';

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaByClipper, chordsOf, type Operation, perimeter, windingRound } from './judge.js';
import needles from './needles.json' with { type: 'json' };
import { anyCase, type Case, disc, rectangle } from './shapes.js';

const operations = { union, intersection, difference };
const covers: Readonly<Record<Operation, (inA: boolean, inB: boolean) => boolean>> = {
  union: (inA, inB) => inA || inB,
  intersection: (inA, inB) => inA && inB,
  difference: (inA, inB) => inA && !inB,
};

/** Cases in a run of the tests; `PAPERHINGE_RUNS=5000` judges as many. */
const runs = Number(process.env.PAPERHINGE_RUNS ?? 300);
const places = 40;

/** What the judge has against an answer; nothing if it is right. */
function faultIn({ a, b }: Case, operation: Operation, seed: number): string | undefined {
  const result = operations[operation](a, b);
  const ringsA = a.map(chordsOf),
    ringsB = b.map(chordsOf),
    rings = result.map(chordsOf);
  const round = [...ringsA, ...ringsB].reduce((sum, ring) => sum + perimeter(ring), 0);
  const area = result.reduce((sum, path) => sum + signedArea(path), 0),
    wanted = areaByClipper(ringsA, ringsB, operation);
  if (!(Math.abs(area - wanted) <= 0.001 * round + 1e-6)) return `area ${area}, not ${wanted}`;
  const all = [...ringsA, ...ringsB].flat();
  const low = { x: Math.min(...all.map(p => p.x)), y: Math.min(...all.map(p => p.y)) },
    high = { x: Math.max(...all.map(p => p.x)), y: Math.max(...all.map(p => p.y)) };
  let state = seed;
  const random = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  for (let i = 0; i < places; i++) {
    const p = { x: low.x + (high.x - low.x) * random(), y: low.y + (high.y - low.y) * random() };
    const inA = windingRound(ringsA, p, 0.01),
      inB = windingRound(ringsB, p, 0.01),
      found = windingRound(rings, p, 0.01);
    if (inA === undefined || inB === undefined || found === undefined) continue;
    const covered = covers[operation](inA !== 0, inB !== 0);
    // Outer paths clockwise, holes anticlockwise: covered ground is wound round once, other ground not at all.
    if (found !== (covered ? 1 : 0)) return `(${p.x}, ${p.y}) is wound round ${found} times`;
  }
  return undefined;
}

const areaOf = (paths: readonly Path[]): number => paths.reduce((sum, path) => sum + signedArea(path), 0);
const square = rectangle(0, 0, 10, 10);

describe('region booleans', () => {
  test('are right by area and at sampled places, whatever the shapes', () => {
    fc.assert(
      fc.property(anyCase, fc.integer({ min: 1, max: 1e6 }), (shapes, seed) => {
        for (const operation of ['union', 'intersection', 'difference'] as const)
          expect(faultIn(shapes, operation, seed), `${shapes.kind}, ${operation}`).toBeUndefined();
      }),
      { numRuns: runs },
    );
  });

  test('every path of an answer is simple', () => {
    fc.assert(
      fc.property(anyCase, ({ a, b }) => {
        for (const path of Object.values(operations).flatMap(operation => operation(a, b)))
          expect(selfCrossings(path).filter(({ point }) => !isCornerOf(path, point))).toEqual([]);
      }),
      { numRuns: runs / 3 },
    );
  });

  test('so is one that ends in a thorn, where two curves leave one corner and part by the cube of the way', () => {
    // As near to each other as 1e-13 mm over their first 3e-4 mm: there they cross as rounding will have it.
    const triangle = (right: number, top: Point): Path => {
      const [p, q, r] = [at(right, 0), at(-10, 17.320508075688775), at(-10, -17.320508075688775)] as const;
      const side = (from: Point, to: Point, end = to): Segment => [
        from,
        lerp(from, to, 1 / 3),
        lerp(from, to, 2 / 3),
        end,
      ];
      return { segments: [side(p, q, top), [top, lerp(q, r, 1 / 3), lerp(q, r, 2 / 3), r], side(r, p)] };
    };
    let found = 0;
    for (let i = 0; i < 100; i++) {
      const right = 20 + i / 7;
      const [one, other] = [
        triangle(right, at(-10, 17.320508075688775)),
        triangle(right, at(-i / 9, i / 11)),
      ];
      for (const path of [...difference([one], [other]), ...difference([other], [one])]) {
        found++;
        expect(selfCrossings(path).filter(({ point }) => !isCornerOf(path, point))).toEqual([]);
      }
    }
    expect(found).toBeGreaterThan(100);
  });

  // Found among hostile cases: needles that rounding left open, and a curve that turns back beside itself.
  test.each(needles.map((needle, i) => [i, needle] as const))('needle %d is answered', (i, sets) => {
    const [a, b] = sets.map(paths =>
      paths.map(
        (path): Path => ({
          segments: path.map(segment => segment.map(([x, y]) => at(x!, y!)) as unknown as Segment),
        }),
      ),
    );
    for (const operation of ['union', 'intersection', 'difference'] as const)
      expect(faultIn({ kind: 'needle', a: a!, b: b! }, operation, i + 1), operation).toBeUndefined();
  });

  test('two curves from one place to another and back are cut where they cross', () => {
    // The second crosses the chord of the first at its middle: two loops of one size, each way round.
    const eight: Path = {
      segments: [
        [at(0, 0), at(90, 0)],
        [at(90, 0), at(60, 40), at(30, -40), at(0, 0)],
      ],
    };
    const [one, two] = union([eight], []);
    expect(union([eight], [])).toHaveLength(2);
    expect(signedArea(one!)).toBeCloseTo(signedArea(two!), 9);
    expect(signedArea(one!)).toBeGreaterThan(100);
  });

  test('a loop 0.1 mm long and a thousandth of a millimetre wide is met', () => {
    const looped = polyline(
      at(0, 0),
      at(0.1, 0.001),
      at(0.1, 0),
      at(0, 0.001),
      at(-9, 9),
      at(-9, -9),
      at(0, 0),
    );
    expect(selfCrossings(looped)).toHaveLength(1);
  });

  test('squares that touch at a corner stay two', () => {
    const other = rectangle(10, 10, 10, 10);
    const both = union([square], [other]);
    expect(both).toHaveLength(2);
    expect(areaOf(both)).toBeCloseTo(200, 9);
    expect(intersection([square], [other])).toEqual([]);
    expect(areaOf(difference([square], [other]))).toBeCloseTo(100, 9);
  });

  test('squares that touch along an edge become one', () => {
    const other = rectangle(10, 0, 10, 10);
    const [whole, ...more] = union([square], [other]);
    expect(more).toEqual([]);
    expect(signedArea(whole!)).toBeCloseTo(200, 9);
    expect(intersection([square], [other])).toEqual([]);
  });

  test('a hole that touches the outline is cut out of it', () => {
    const rest = difference([square], [rectangle(0, 3, 4, 4)]);
    expect(areaOf(rest)).toBeCloseTo(84, 9);
    expect(rest).toHaveLength(1);
    const corner = difference([square], [polyline(at(0, 5), at(5, 2), at(5, 8), at(0, 5))]);
    expect(areaOf(corner)).toBeCloseTo(85, 9);
  });

  test('with itself a shape is itself, and nothing of it is left', () => {
    const shape = disc(3, 4, 20);
    expect(areaOf(union([shape], [shape]))).toBeCloseTo(signedArea(shape), 6);
    expect(areaOf(intersection([shape], [reversedPath(shape)]))).toBeCloseTo(signedArea(shape), 6);
    expect(difference([shape], [shape])).toEqual([]);
  });

  test('what does not meet comes back bit for bit', () => {
    const far = disc(100, 0, 5);
    expect(union([square], [far])).toEqual([square, far]);
    expect(difference([square], [far])).toEqual([square]);
  });

  test('halves cut along a curve, put together, are the whole', () => {
    const cut = { segments: [[at(5, -5), at(9, 3), at(1, 7), at(5, 15)] as const] };
    const left = {
      segments: [...cut.segments, [at(5, 15), at(-5, 15)], [at(-5, 15), at(-5, -5)], [at(-5, -5), at(5, -5)]],
    } as Path;
    const one = intersection([square], [left]),
      other = difference([square], [left]);
    expect(areaOf(one) + areaOf(other)).toBeCloseTo(100, 6);
    const whole = union(one, other);
    expect(whole).toHaveLength(1);
    expect(areaOf(whole)).toBeCloseTo(100, 6);
  });

  test('nothing and a spur surround nothing', () => {
    expect(union([], [])).toEqual([]);
    expect(union([polyline(at(0, 0), at(9, 9), at(0, 0))], [])).toEqual([]);
    expect(areaOf(difference([square], [polyline(at(5, 5), at(20, 5), at(5, 5))]))).toBeCloseTo(100, 9);
  });
});

/** Two loops of one path may touch where it has a corner. */
const isCornerOf = (path: Path, point: Point): boolean =>
  path.segments.some(([start]) => distance(start, point) <= 1e-5);
