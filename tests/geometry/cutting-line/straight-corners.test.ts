import { cuttingLine, type Point } from '@paperhinge/geometry';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at, cornersOf, pieceOf, polygon, straightEdge } from './pieces.js';

// One corner between two straight edges of 400 mm, of any turn and any allowances, against the rules of trade-notes §1
// worked out here from line equations alone.

const far = 400;
const radians = Math.PI / 180;
const along = (p: Point, u: Point, by: number): Point => at(p.x + u.x * by, p.y + u.y * by);
/** Outside of an edge that runs along u, clockwise round its piece. */
const outOf = (u: Point): Point => at(u.y, -u.x);
const dot = (p: Point, q: Point): number => p.x * q.x + p.y * q.y;

/** An edge that comes along the x axis to (0, 0), and one that leaves turned by so many degrees; the rest is raw. */
function cornered(turn: number, a: number, b: number) {
  const v = at(Math.cos(turn * radians), Math.sin(turn * radians));
  const start = at(-far, 0),
    corner = at(0, 0),
    end = along(corner, v, far);
  const round = [at(end.x, -900), at(900, -900), at(900, 900), at(-far, 900)];
  const side = turn < 0 ? round : [along(end, outOf(v), -far), at(-far, far * 2)];
  const ring = [...(turn > 80 ? [at(-far, far * 3)] : side)];
  const piece = pieceOf([
    straightEdge('a', start, corner, { allowance: a }),
    straightEdge('b', corner, end, { allowance: b }),
    ...[end, ...ring].map((p, i) => straightEdge(`raw${i}`, p, ring[i] ?? start, { kind: 'raw' })),
  ]);
  return { piece, v };
}

/** The crossing of the two parallels' lines. */
function crossing(v: Point, a: number, b: number): Point {
  // (x, −a) with dot((x, −a), out of v) = b.
  const n = outOf(v);
  return at((b + a * n.y) / n.x, -a);
}

/** The corners of the line between the two parallels, each with whose it is, by the rule for an outer corner. */
function outerCorners(v: Point, a: number, b: number): readonly Point[] {
  const tip = crossing(v, a, b);
  const endA = at(0, -a),
    startB = along(at(0, 0), outOf(v), b);
  // Where the tip lies over one of the edges, the wider ends square to it and the narrower runs on to that.
  if (dot(tip, v) > 0 && b > a) {
    const t = a / v.x; // the first parallel's line, at y = −a, on the square end of b
    return [along(at(0, 0), outOf(v), t), startB];
  }
  if (tip.x < 0 && a > b) return [endA, at(0, -b / v.x)];
  const bisector = at(1 - v.x, -v.y);
  const size = Math.hypot(bisector.x, bisector.y);
  const out = at(bisector.x / size, bisector.y / size);
  const limit = 2.5 * Math.max(a, b);
  if (dot(tip, out) <= limit) return [tip];
  return [at((limit + a * out.y) / out.x, -a), along(startB, v, (limit - dot(startB, out)) / dot(v, out))];
}

const allowance = fc.constantFrom(3, 6.35, 7, 10, 15, 15.875, 25);
const nearest = (points: readonly Point[], p: Point): number =>
  Math.min(...points.map(q => Math.hypot(p.x - q.x, p.y - q.y)));
/** Corners of a line within reach of the origin. */
const nearOrigin = (piece: ReturnType<typeof pieceOf>): readonly Point[] => {
  const { segments } = cuttingLine(piece).path;
  return segments
    .filter((s, i) => {
      const [p, q] = segments.at(i - 1)!,
        [, r] = s;
      const [u, w] = [at(q!.x - p!.x, q!.y - p!.y), at(r!.x - q!.x, r!.y - q!.y)];
      return Math.abs(u.x * w.y - u.y * w.x) > 1e-9 * Math.hypot(u.x, u.y) * Math.hypot(w.x, w.y);
    })
    .map(s => s[0])
    .filter(p => Math.hypot(p.x, p.y) < 150);
};

const snipsToCorner = (piece: ReturnType<typeof pieceOf>) =>
  cuttingLine(piece).snips.filter(({ segments: [s] }) => s![1]!.x === 0 && s![1]!.y === 0);

test('an outer corner of any turn and allowances is mitred, cut or stepped by the rule', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 165, noNaN: true }), allowance, allowance, (turn, a, b) => {
      const { piece, v } = cornered(turn, a, b);
      const expected = outerCorners(v, a, b);
      const found = nearOrigin(piece);
      expect(found).toHaveLength(expected.length);
      for (const p of expected) expect(nearest(found, p)).toBeLessThan(1e-6);
      expect(snipsToCorner(piece)).toEqual([]);
      expect(cuttingLine(piece).findings).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test('a tip that is cut belongs to the wider allowance, of two alike to the edge before', () => {
  for (const [a, b, of] of [
    [10, 15, 'b'],
    [15, 10, 'a'],
    [10, 10, 'a'],
  ] as const) {
    const { stretches } = cuttingLine(cornered(150, a, b).piece);
    const { v } = cornered(150, a, b);
    const [first, second] = outerCorners(v, a, b);
    const cut = stretches.filter(s =>
      s.path.segments.some(([p, q]) => nearest([p], first!) < 1e-6 && nearest([q!], second!) < 1e-6),
    );
    expect(cut.map(s => [s.of, s.shape])).toEqual([[of, 'corner']]);
  }
});

describe('an inner corner', () => {
  test('of any turn is cut where the parallels cross, and snipped from there', () => {
    fc.assert(
      fc.property(fc.double({ min: 25, max: 150, noNaN: true }), allowance, allowance, (degrees, a, b) => {
        const { piece, v } = cornered(-degrees, a, b);
        const tip = crossing(v, a, b);
        // Both parallels come as far as the crossing: else the wider runs on, below.
        fc.pre(tip.x < -1e-3 && dot(tip, v) > 1e-3);
        fc.pre(Math.hypot(tip.x, tip.y) < 140);
        const { findings } = cuttingLine(piece),
          snips = snipsToCorner(piece);
        const found = nearOrigin(piece);
        expect(found).toHaveLength(1);
        expect(nearest(found, tip)).toBeLessThan(1e-6);
        expect(findings).toEqual([]);
        expect(snips).toHaveLength(1);
        expect(nearest([snips[0]!.segments[0]![0]], tip)).toBeLessThan(1e-6);
        expect(snips[0]!.segments[0]![1]).toEqual(at(0, 0));
      }),
      { numRuns: 200 },
    );
  });
  test.each([
    [30, 6.35, 25],
    [30, 25, 6.35],
    [40, 7, 15],
    [40, 15, 7],
    [15, 10, 15],
    [15, 15, 10],
  ])('of %d° with %d and %d: the wider runs on past the corner to the narrower', (degrees, a, b) => {
    const { piece, v } = cornered(-degrees, a, b);
    const tip = crossing(v, a, b);
    // It lies over the narrower edge, square to a place on it.
    expect(a < b ? tip.x < 0 && dot(tip, v) < 0 : tip.x > 0 && dot(tip, v) > 0).toBe(true);
    const found = nearOrigin(piece);
    expect(nearest(found, tip)).toBeLessThan(1e-6);
    expect(found).toHaveLength(1);
    expect(snipsToCorner(piece)).toHaveLength(degrees > 20 ? 1 : 0);
    expect(cuttingLine(piece).findings).toEqual([]);
  });
  test('flatter than 20 degrees is not snipped', () => {
    for (const [degrees, count] of [
      [19.9, 0],
      [20.1, 1],
    ] as const)
      expect(snipsToCorner(cornered(-degrees, 10, 10).piece)).toHaveLength(count);
  });
});

test('so flat that unlike allowances would run on past a mitre’s reach, the wider ends square to its edge', () => {
  // An inner corner of 5 degrees at (200, 0), from a level edge to one that rises.
  const turn = Math.PI / 36;
  const rising = (first: number, second: number) => {
    const corners = [at(0, 0), at(200, 0), at(400, -200 * Math.tan(turn)), at(400, 200), at(0, 200)];
    const piece = polygon(corners, i => ({ allowance: [first, second, 10, 10, 10][i]! }));
    return cornersOf(cuttingLine(piece).path).slice(0, 2);
  };
  const near = (points: readonly Point[]) =>
    points.map(({ x, y }) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) }));
  // 15 mm and more of difference over the sine of 5 degrees is 170 mm: up square from the corner instead.
  expect(rising(20, 5)).toEqual(near([at(200, -20), at(200, -5 / Math.cos(turn))]));
  expect(rising(5, 20)).toEqual(
    near([at(200 - 5 * Math.tan(turn), -5), at(200 - 20 * Math.sin(turn), -20 * Math.cos(turn))]),
  );
  // One millimetre of difference crosses within reach: the wider runs on.
  const on = (20 * Math.cos(turn) - 19) / Math.sin(turn);
  expect(rising(20, 19).slice(0, 1)).toEqual(near([at(200 + on, -20)]));
  expect(on).toBeLessThan(50);
});
test('an edge without an allowance beside one with: the line comes down square at the corner', () => {
  // The raw edges at the far ends do so too; here a seam of no allowance, at 90 degrees and flatter.
  for (const turn of [90, 60, 20]) {
    const { piece, v } = cornered(turn, 10, 0);
    const found = nearOrigin(piece);
    const foot = crossing(v, 10, 0);
    const expected = foot.x < -1e-9 ? [at(0, -10), at(0, 0)] : [foot];
    for (const p of expected) expect(nearest(found, p)).toBeLessThan(1e-6);
  }
});
