import { cuttingLine, type Piece, type Point } from '@paperhinge/geometry';
import { containsPoint, selfCrossings } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceTo, edgesOf, evaluated, sampled, sampledWithin } from './independent.js';
import { arc, at, edge, pieceOf, straightEdge } from './pieces.js';

interface Notch {
  readonly radius: number;
  readonly degrees: number;
  readonly wide: number;
  readonly narrow: number;
  /** Of the side after the bend, if another than before it. */
  readonly after?: number;
  /** By how much the sides lean more than the bend's ends. */
  readonly cornered?: number;
}

/** A rounded notch in the top of a piece: a bend with an allowance of its own between two straight sides with theirs. */
function notched({ radius, degrees, wide, narrow, after = narrow, cornered = 0 }: Notch): Piece {
  const half = degrees / 2,
    lean = ((half + cornered) * Math.PI) / 180;
  const bend = arc(at(200, 120 - radius), radius, 90 + half, 90 - half);
  const [first, last] = [bend[0]![0], bend.at(-1)![3]];
  const up = (from: Point, sense: number) =>
    at(from.x + sense * 90 * Math.cos(lean), from.y - 90 * Math.sin(lean));
  const [left, right] = [up(first, -1), up(last, 1)];
  const allowance = narrow;
  return pieceOf([
    straightEdge('left side', left, first, { allowance }),
    edge('bend', bend, { allowance: wide }),
    straightEdge('right side', last, right, { allowance: after }),
    straightEdge('right top', right, at(right.x + 60, right.y), { allowance }),
    straightEdge('right', at(right.x + 60, right.y), at(right.x + 60, 300), { allowance }),
    straightEdge('foot', at(right.x + 60, 300), at(left.x - 60, 300), { allowance }),
    straightEdge('left', at(left.x - 60, 300), at(left.x - 60, left.y), { allowance }),
    straightEdge('left top', at(left.x - 60, left.y), left, { allowance }),
  ]);
}

function expectCovered(piece: Piece, radius: number): void {
  const { path, findings } = cuttingLine(piece);
  expect(findings.filter(f => f.severity === 'fault')).toEqual([]);
  expect(selfCrossings(path)).toEqual([]);
  const edges = edgesOf(piece);
  // Nowhere is the line nearer to an edge than its allowance, where that edge is the nearest.
  for (const { point } of sampled(path, 8)) {
    const near = edges.map(e => ({ e, ...distanceTo(e.path, point) }));
    const nearest = near.reduce((a, b) => (b.distance < a.distance ? b : a));
    const { name, allowance } = nearest.e;
    const least = name === 'bend' ? Math.min(allowance, radius) : allowance;
    if (!nearest.atEnd) expect(nearest.distance).toBeGreaterThan(least - 0.01);
  }
  // All that lies square to an edge within its allowance is within the line; of the bend as far as its centre, beyond
  // which hangs no more than a point.
  for (const { name, path: own, allowance } of edges)
    for (const { point, tangent } of sampled(own, 5))
      for (const share of [0.3, 0.7, 0.99]) {
        const by = share * (name === 'bend' ? Math.min(allowance, radius) : allowance);
        const out = at(point.x + by * tangent.y, point.y - by * tangent.x);
        if (distanceTo(path, out).distance > 0.01) expect(containsPoint(path, out)).toBe(true);
      }
}

/**
 * Nothing is cut beyond what is asked for: a hair within the line lies the piece, or ground square to an edge within
 * its allowance, or the tip of an outer corner: the quadrilateral of the corner, both lines square to it, and their
 * crossing.
 */
function expectNoMore(piece: Piece): void {
  const edges = edgesOf(piece);
  const { path } = cuttingLine(piece);
  const whole = { segments: edges.flatMap(e => e.path.segments) };
  const tips = edges.map((before, i) => {
    const after = edges[(i + 1) % edges.length]!;
    const arriving = evaluated(before.path.segments.at(-1)!, 1),
      leaving = evaluated(after.path.segments[0]!, 0);
    const [u, v, p] = [arriving.tangent, leaving.tangent, leaving.point];
    const sin = u.x * v.y - u.y * v.x,
      cos = u.x * v.x + u.y * v.y;
    const [a, b] = [before.allowance, after.allowance];
    const along = sin > 1e-6 ? (b - a * cos) / sin : 0;
    const first = at(p.x + a * u.y, p.y - a * u.x),
      second = at(p.x + b * v.y, p.y - b * v.x);
    return [p, first, at(first.x + along * u.x, first.y + along * u.y), second] as const;
  });
  const isInTip = (q: Point): boolean =>
    tips.some(([p, first, tip, second]) => isWithin(q, [p, first, tip]) || isWithin(q, [p, tip, second]));
  for (const { point, tangent } of sampledWithin(path, 6)) {
    const within = at(point.x - 0.02 * tangent.y, point.y + 0.02 * tangent.x);
    const isAsked = edges.some(e => {
      const { distance, atEnd } = distanceTo(e.path, within);
      return !atEnd && distance < e.allowance + 0.01;
    });
    expect([within, isAsked || isInTip(within) || containsPoint(whole, within)]).toEqual([within, true]);
  }
}

const isWithin = (q: Point, [a, b, c]: readonly [Point, Point, Point]): boolean => {
  const side = (s: Point, t: Point): number => (t.x - s.x) * (q.y - s.y) - (t.y - s.y) * (q.x - s.x);
  const sides = [side(a, b), side(b, c), side(c, a)];
  return sides.every(s => s >= -0.01) || sides.every(s => s <= 0.01);
};

describe('a bend tighter than its allowance between narrower neighbours', () => {
  test.each<Notch>([
    { radius: 5, degrees: 60, wide: 15, narrow: 7 },
    { radius: 5, degrees: 90, wide: 15, narrow: 7 },
    { radius: 5, degrees: 120, wide: 15, narrow: 5 },
    { radius: 3, degrees: 150, wide: 15, narrow: 5 },
    { radius: 12, degrees: 40, wide: 15, narrow: 7 },
    { radius: 5, degrees: 30, wide: 15, narrow: 10 },
    { radius: 10, degrees: 90, wide: 15, narrow: 14 },
    { radius: 8, degrees: 70, wide: 12, narrow: 0 },
  ])('takes nothing away from them: $radius mm, $degrees°, $wide between $narrow', notch => {
    const piece = notched(notch);
    expectCovered(piece, notch.radius);
    const told = cuttingLine(piece).findings.filter(f => f.code === 'allowance-too-wide');
    expect(told.map(f => f.where.edge)).toEqual(['bend']);
    // Closed form: the whole arc turns back on itself.
    const length = (notch.radius * notch.degrees * Math.PI) / 180;
    expect(told[0]!.figures!.lostMm).toBeCloseTo(length, 3);
  });

  test('a bend beside neighbours as wide, or with room for its allowance, is like any other', () => {
    // Alike allowances of twice the radius: the parallels of the sides, which lean by 45°, cross as far beyond the centre
    // of the bend as they would before it, so that each side loses a radius, and the bend all.
    const alike = cuttingLine(notched({ radius: 5, degrees: 90, wide: 10, narrow: 10 }));
    expect(alike.findings.map(f => [f.code, f.where.edge, f.figures!.lostMm])).toEqual([
      ['allowance-too-wide', 'left side', expect.closeTo(5, 3)],
      ['allowance-too-wide', 'bend', expect.closeTo((5 * Math.PI) / 2, 3)],
      ['allowance-too-wide', 'right side', expect.closeTo(5, 3)],
    ]);
    const roomy = cuttingLine(notched({ radius: 20, degrees: 90, wide: 15, narrow: 7 }));
    expect(roomy.findings).toEqual([]);
    const bend = roomy.stretches.filter(s => s.of === 'bend' && s.shape === 'parallel');
    // Its parallel is an arc of 5, but for what the narrower sides leave of it.
    for (const { point } of bend.flatMap(s => sampled(s.path, 4)))
      expect(Math.abs(Math.hypot(point.x - 200, point.y - 100) - 5)).toBeLessThan(0.006);
    expect(bend.length).toBeGreaterThan(0);
  });
  test('nor from one that is narrower alone', () => {
    for (const [narrow, after] of [
      [7, 15],
      [15, 7],
    ] as const) {
      const notch = { radius: 5, degrees: 90, wide: 15, narrow, after };
      expectCovered(notched(notch), notch.radius);
      // The bend alone loses, all of it; neither side does.
      expect(cuttingLine(notched(notch)).findings.map(f => [f.where.edge, f.figures!.lostMm])).toEqual([
        ['bend', expect.closeTo((5 * Math.PI) / 2, 3)],
      ]);
    }
  });
  describe('round, in a straight edge that it meets at right angles', () => {
    const scooped = (radius: number, wide: number, [left, right]: readonly [number, number]): Piece =>
      pieceOf([
        straightEdge('left side', at(0, 100), at(200 - radius, 100), { allowance: left }),
        edge('bend', arc(at(200, 100), radius, 180, 0), { allowance: wide }),
        straightEdge('right side', at(200 + radius, 100), at(400, 100), { allowance: right }),
        straightEdge('right', at(400, 100), at(400, 300), { allowance: 10 }),
        straightEdge('foot', at(400, 300), at(0, 300), { allowance: 10 }),
        straightEdge('left', at(0, 300), at(0, 100), { allowance: 10 }),
      ]);
    test.each([
      [8, 24, [9, 6]],
      [8, 20, [7, 7]],
      [5, 15, [6, 15]],
      [10, 24, [3, 5]],
    ] as const)('it takes nothing away from either: radius %d, %d mm between %j', (radius, wide, sides) => {
      const piece = scooped(radius, wide, sides);
      expectCovered(piece, radius);
      // Closed form: beyond its centre the parallel is an arc of what the allowance is wider than the radius.
      const { path, findings } = cuttingLine(piece);
      const top = at(200, 100 - Math.max(wide - radius, ...sides));
      expect(distanceTo(path, top).distance).toBeLessThan(0.005);
      expect(findings.map(f => [f.code, f.where.edge, f.figures!.lostMm])).toEqual([
        ['allowance-too-wide', 'bend', expect.closeTo(radius * Math.PI, 3)],
      ]);
    });
    test('a deep one loses each of its sides once, however often they are covered', () => {
      // Walls 8 mm apart and 40 mm deep, each within the other's allowance: with the round floor, all of it.
      const deep = pieceOf([
        straightEdge('left side', at(0, 100), at(196, 100), { allowance: 6 }),
        edge(
          'slot',
          [[at(196, 100), at(196, 140)], ...arc(at(200, 140), 4, 180, 0), [at(204, 140), at(204, 100)]],
          {
            allowance: 12,
          },
        ),
        straightEdge('right side', at(204, 100), at(400, 100), { allowance: 6 }),
        straightEdge('right', at(400, 100), at(400, 300), { allowance: 10 }),
        straightEdge('foot', at(400, 300), at(0, 300), { allowance: 10 }),
        straightEdge('left', at(0, 300), at(0, 100), { allowance: 10 }),
      ]);
      expect(cuttingLine(deep).findings.map(f => [f.where.edge, f.figures!.lostMm])).toEqual([
        ['slot', expect.closeTo(80 + 4 * Math.PI, 2)],
      ]);
    });
  });
  test('is snipped to at its corners', () => {
    const piece = notched({ radius: 5, degrees: 60, wide: 15, narrow: 7, cornered: 25 });
    const [, bend] = edgesOf(piece);
    const ends = [bend!.path.segments[0]![0], bend!.path.segments.at(-1)!.at(-1)];
    expect(cuttingLine(piece).snips.map(s => s.segments[0]![1])).toEqual(ends);
  });
  test('whatever its size, turn and allowances', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        number(2, 14),
        number(20, 150),
        number(15, 25),
        number(0, 14),
        (radius, degrees, wide, narrow) => {
          expectCovered(notched({ radius, degrees, wide, narrow }), radius);
        },
      ),
      { numRuns: 15 },
    );
  });
  test.each<Notch>([
    { radius: 13, degrees: 57, wide: 19.3, narrow: 10, after: 1.3, cornered: 23 },
    { radius: 17, degrees: 124, wide: 27, narrow: 1.5, after: 1.5, cornered: 23 },
    { radius: 5, degrees: 38, wide: 9, narrow: 0, after: 0.4, cornered: 27 },
    { radius: 9.5, degrees: 76, wide: 13, narrow: 0, after: 0, cornered: 29 },
  ])('nothing more is cut than is asked for where its sides lean away from it: %j', notch => {
    expectNoMore(notched(notch));
  });
});

describe('two bends of one edge tighter than its allowance, a short straight between them', () => {
  /** A notch with a flat floor: the sides lean by half of what both bends turn. */
  const flatFloored = (
    radius: number,
    degrees: number,
    floor: number,
    wide: number,
    narrow: number,
  ): Piece => {
    const lean = (degrees * Math.PI) / 180;
    const [left, right] = [at(200 - floor / 2, 120), at(200 + floor / 2, 120)];
    const into = arc(at(left.x, 120 - radius), radius, 90 + degrees, 90);
    const out = arc(at(right.x, 120 - radius), radius, 90, 90 - degrees);
    const [first, last] = [into[0]![0], out.at(-1)![3]];
    const up = (from: Point, sense: number) =>
      at(from.x + sense * 90 * Math.cos(lean), from.y - 90 * Math.sin(lean));
    const [topLeft, topRight] = [up(first, -1), up(last, 1)];
    return pieceOf([
      straightEdge('left side', topLeft, first, { allowance: narrow }),
      edge('bend', [...into, [left, right], ...out], { allowance: wide }),
      straightEdge('right side', last, topRight, { allowance: narrow }),
      straightEdge('right top', topRight, at(topRight.x + 60, topRight.y), { allowance: 7 }),
      straightEdge('right', at(topRight.x + 60, topRight.y), at(topRight.x + 60, 300), { allowance: 7 }),
      straightEdge('foot', at(topRight.x + 60, 300), at(topLeft.x - 60, 300), { allowance: 7 }),
      straightEdge('left', at(topLeft.x - 60, 300), at(topLeft.x - 60, topLeft.y), { allowance: 7 }),
      straightEdge('left top', at(topLeft.x - 60, topLeft.y), topLeft, { allowance: 7 }),
    ]);
  };
  test.each([
    [3, 60, 4, 16, 10],
    [3, 45, 2, 16, 7],
    [4, 50, 2, 14, 10],
    [5, 30, 3, 15, 5],
  ])(
    'take nothing away from its neighbours: %d mm, %d°, %d mm apart, %d between %d',
    (radius, degrees, floor, wide, narrow) => {
      const piece = flatFloored(radius, degrees, floor, wide, narrow);
      expectCovered(piece, radius);
      // Closed form: both arcs turn back on themselves, the straight between them does not.
      const told = cuttingLine(piece).findings.map(f => [f.code, f.where.edge, f.figures!.lostMm]);
      const length = (2 * radius * degrees * Math.PI) / 180;
      expect(told).toEqual([['allowance-too-wide', 'bend', expect.closeTo(length, 2)]]);
    },
  );
});
