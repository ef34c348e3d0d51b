import { cuttingLine, type Point, pathLength } from '@paperhinge/geometry';
import { signedArea } from '@paperhinge/geometry/regions';
import { expect, test } from 'vitest';
import { at, cornersOf, edge, pieceOf, polygon, rectangle, straightEdge } from './pieces.js';

const radians = Math.PI / 180;
const apart = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);
const nearest = (points: readonly Point[], p: Point): number => Math.min(...points.map(q => apart(p, q)));
const sameCorners = (found: readonly Point[], wanted: readonly Point[]): void => {
  expect(found).toHaveLength(wanted.length);
  for (const p of wanted) expect(nearest(found, p)).toBeLessThan(1e-9);
};

/** A wedge with its corner at the origin: edge a (allowance a) runs into it, edge b leaves it, interior angle phi. */
const wedge = (phi: number, a: number, b: number, size = 400) =>
  polygon([at(0, 0), at(size * Math.cos(phi), size * Math.sin(phi)), at(size, 0)].reverse(), i => ({
    allowance: [0, a, b][i]!,
    start: 'mitre',
    end: 'mitre',
  }));

// check-values §10 [derived]: 100 × 60 by 10 → 120 × 80; equilateral side 60, d 5 → side 60 + 10√3.
test('a rectangle grows by its allowance on every side', () => {
  const { path } = cuttingLine(polygon(rectangle(100, 60)));
  sameCorners(cornersOf(path), [at(-10, -10), at(110, -10), at(110, 70), at(-10, 70)]);
  expect(pathLength(path)).toBeCloseTo(400, 9);
  expect(signedArea(path)).toBeCloseTo(120 * 80, 8);
});
test('an equilateral triangle of 60 by 5 has sides of 60 + 10√3', () => {
  const { path } = cuttingLine(
    polygon([at(0, 0), at(60, 0), at(30, 30 * Math.sqrt(3))], () => ({
      allowance: 5,
      start: 'mitre',
      end: 'mitre',
    })),
  );
  expect(pathLength(path)).toBeCloseTo(3 * (60 + 10 * Math.sqrt(3)), 9);
});

// check-values §10 [derived]: closed convex polygon, mitred: P + 2d Σtan(θ/2), A + P d + d² Σtan(θ/2).
test('a mitred convex polygon has the perimeter and area of the formula', () => {
  const corners = [at(0, 0), at(180, -20), at(240, 90), at(150, 210), at(-30, 160)];
  const d = 15.875;
  const { path } = cuttingLine(polygon(corners, () => ({ allowance: d, start: 'mitre', end: 'mitre' })));
  const n = corners.length;
  const side = (i: number) =>
    at(corners[(i + 1) % n]!.x - corners[i % n]!.x, corners[(i + 1) % n]!.y - corners[i % n]!.y);
  const turns = corners.map((_, i) => {
    const u = side(i),
      v = side(i + 1);
    return Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  });
  const tangents = turns.reduce((s, t) => s + Math.tan(t / 2), 0);
  const perimeter = corners.reduce((s, _, i) => s + Math.hypot(side(i).x, side(i).y), 0);
  const area = corners.reduce(
    (s, p, i) => s + (p.x * corners[(i + 1) % n]!.y - p.y * corners[(i + 1) % n]!.x) / 2,
    0,
  );
  expect(pathLength(path)).toBeCloseTo(perimeter + 2 * d * tangents, 8);
  expect(signedArea(path)).toBeCloseTo(area + perimeter * d + d * d * tangents, 6);
});

// trade-notes §1: √(a² + b² + 2ab cos φ) / sin φ from the corner.
test.each([
  [90, 10, 10],
  [90, 10, 25],
  [60, 7, 15],
  [60, 15.875, 0],
  [120, 10, 15],
  [75, 25, 6.35],
  [140, 12, 10],
])('at %d° the tip of allowances %d and %d lies where the formula says', (degrees, a, b) => {
  const phi = degrees * radians;
  const corners = cornersOf(cuttingLine(wedge(phi, a, b)).path);
  const tip = Math.sqrt(a * a + b * b + 2 * a * b * Math.cos(phi)) / Math.sin(phi);
  const found = Math.min(...corners.map(p => Math.abs(Math.hypot(p.x, p.y) - tip)));
  expect(found).toBeLessThan(1e-9);
});

test('a tip further out than 2.5 × the larger allowance is cut by the line square to the bisector there', () => {
  const phi = 30 * radians;
  const corners = cornersOf(cuttingLine(wedge(phi, 10, 10)).path);
  const bisector = at(-Math.cos(phi / 2), -Math.sin(phi / 2));
  const reach = corners.map(p => p.x * bisector.x + p.y * bisector.y);
  const tips = reach.filter(r => r > 20);
  expect(tips).toHaveLength(2);
  for (const r of tips) expect(r).toBeCloseTo(25, 9);
});
test('a tip just within the limit keeps its point', () => {
  // a / sin(φ/2) = 2.49 a
  const phi = 2 * Math.asin(1 / 2.49);
  const corners = cornersOf(cuttingLine(wedge(phi, 10, 10)).path);
  expect(Math.max(...corners.map(p => -p.x * Math.cos(phi / 2) - p.y * Math.sin(phi / 2)))).toBeCloseTo(
    24.9,
    9,
  );
});

test('where a flat corner joins two allowances, the wider ends square to its edge and is nowhere cut into', () => {
  // 170°: the parallels cross 87 mm away, over the wider edge; the narrower runs on to the wider's square end.
  const bend = at(100, 0),
    end = at(200, 100 * Math.tan(10 * radians));
  const { path } = cuttingLine(
    pieceOf([
      straightEdge('narrow', at(0, 0), bend, { allowance: 7 }),
      straightEdge('wide', bend, end, { allowance: 25 }),
      straightEdge('right', end, at(200, 150), { kind: 'raw' }),
      straightEdge('foot', at(200, 150), at(0, 150), { kind: 'raw' }),
      straightEdge('left', at(0, 150), at(0, 0), { kind: 'raw' }),
    ]),
  );
  const out = at(Math.sin(10 * radians), -Math.cos(10 * radians));
  const corners = cornersOf(path);
  expect(nearest(corners, at(bend.x + 25 * out.x, bend.y + 25 * out.y))).toBeLessThan(1e-9);
  const knee = 7 / Math.cos(10 * radians);
  expect(nearest(corners, at(bend.x + knee * out.x, bend.y + knee * out.y))).toBeLessThan(1e-9);
});
test('where a smooth line changes its allowance there is a clean step square to it', () => {
  const { path } = cuttingLine(
    pieceOf([
      straightEdge('a', at(0, 0), at(100, 0), { allowance: 10 }),
      straightEdge('b', at(100, 0), at(200, 0), { allowance: 25 }),
      straightEdge('c', at(200, 0), at(200, 80), { kind: 'raw' }),
      straightEdge('d', at(200, 80), at(0, 80), { kind: 'raw' }),
      straightEdge('e', at(0, 80), at(0, 0), { kind: 'raw' }),
    ]),
  );
  sameCorners(cornersOf(path), [
    at(0, -10),
    at(100, -10),
    at(100, -25),
    at(200, -25),
    at(200, 80),
    at(0, 80),
  ]);
});

test('a fold has no allowance, and the hem is run to its line and stays on it', () => {
  // The hem meets the fold at 80°: its cutting line is run on to x = 0.
  const lean = Math.tan(10 * radians);
  const { path, stretches } = cuttingLine(
    pieceOf([
      straightEdge('top', at(0, 0), at(100, 0)),
      straightEdge('side', at(100, 0), at(100, 200 - 100 * lean)),
      straightEdge('hem', at(100, 200 - 100 * lean), at(0, 200), { kind: 'hem', allowance: 30 }),
      straightEdge('centre front', at(0, 200), at(0, 0), { kind: 'fold' }),
    ]),
  );
  const corners = cornersOf(path);
  expect(nearest(corners, at(0, 200 + 30 / Math.cos(10 * radians)))).toBeLessThan(1e-9);
  expect(nearest(corners, at(0, -10))).toBeLessThan(1e-9);
  expect(Math.min(...corners.map(p => p.x))).toBeGreaterThan(-1e-9);
  expect(stretches.some(s => s.of === 'centre front' && s.shape === 'parallel')).toBe(true);
});
test('an edge that meets the fold at more than a right angle is cut on the fold line', () => {
  const { path } = cuttingLine(
    pieceOf([
      straightEdge('top', at(0, 0), at(100, -30)),
      straightEdge('side', at(100, -30), at(100, 100)),
      straightEdge('hem', at(100, 100), at(0, 100), { kind: 'hem', allowance: 30 }),
      straightEdge('centre', at(0, 100), at(0, 0), { kind: 'fold' }),
    ]),
  );
  const corners = cornersOf(path);
  expect(Math.min(...corners.map(p => p.x))).toBeGreaterThan(-1e-9);
  expect(nearest(corners, at(0, -10 / Math.cos(Math.atan(0.3))))).toBeLessThan(1e-9);
});

test('at an inner corner the parallels are trimmed where they cross, and the snip leads to the corner', () => {
  const { path, snips } = cuttingLine(
    polygon([at(0, 0), at(60, 0), at(60, 40), at(140, 40), at(140, 120), at(0, 120)], i => ({
      allowance: i === 2 ? 15 : 10,
    })),
  );
  expect(nearest(cornersOf(path), at(70, 25))).toBeLessThan(1e-9);
  expect(snips).toHaveLength(1);
  expect(snips[0]!.segments).toEqual([[expect.anything(), at(60, 40)]]);
  expect(apart(snips[0]!.segments[0]![0], at(70, 25))).toBeLessThan(1e-9);
});
test('a corner within one edge is trimmed or mitred like one between two', () => {
  const { path, snips } = cuttingLine(
    pieceOf([
      edge(
        'neck',
        [
          [at(0, 0), at(50, 80)],
          [at(50, 80), at(100, 0)],
        ],
        { allowance: 8 },
      ),
      straightEdge('right', at(100, 0), at(140, 200)),
      straightEdge('foot', at(140, 200), at(-40, 200)),
      straightEdge('left', at(-40, 200), at(0, 0)),
    ]),
  );
  // Half the V's angle is atan(50/80): the parallels cross 8 / sin of it above its point.
  const crossing = at(50, 80 - 8 / Math.sin(Math.atan(50 / 80)));
  expect(nearest(cornersOf(path), crossing)).toBeLessThan(1e-9);
  expect(snips).toHaveLength(1);
});

test('a rounding corner in a smooth line makes neither tip nor snip', () => {
  const { path, snips } = cuttingLine(
    pieceOf([
      straightEdge('a', at(0, 0), at(50, 0.00001)),
      straightEdge('b', at(50, 0.00001), at(100, 0)),
      straightEdge('c', at(100, 0), at(100, 60)),
      straightEdge('d', at(100, 60), at(0, 60)),
      straightEdge('e', at(0, 60), at(0, 0)),
    ]),
  );
  expect(path.segments.filter(s => s.every(p => p.y < -5 && p.x > 1 && p.x < 99))).toHaveLength(0);
  expect(snips).toHaveLength(0);
});
test('a bend that a thousandth of a millimetre hides leaves no crumbs on either side', () => {
  for (const lift of [2e-3, -2e-3]) {
    // The parallels of 10 mm end less than 1e-3 mm apart, the edges turn by 8e-5 rad.
    const { path, snips } = cuttingLine(
      polygon([at(0, 0), at(50, lift), at(100, 0), at(100, 60), at(0, 60)], () => ({
        allowance: 10,
        start: 'mitre',
      })),
    );
    expect(path.segments.filter(([p, q]) => Math.hypot(q!.x - p.x, q!.y - p.y) < 1)).toEqual([]);
    expect(snips).toEqual([]);
  }
});
test('with no allowance anywhere the cutting line is the stitching line, bit for bit', () => {
  const curve = [at(0, 0), at(30, -40), at(70, 40), at(100, 0)] as const;
  const piece = pieceOf([
    edge('top', [curve], { allowance: 0 }),
    straightEdge('right', at(100, 0), at(100, 100), { kind: 'raw' }),
    straightEdge('foot', at(100, 100), at(0, 100), { allowance: 0, kind: 'hem' }),
    straightEdge('left', at(0, 100), at(0, 0), { kind: 'fold' }),
  ]);
  expect(cuttingLine(piece).path.segments).toEqual(
    piece.outline.parts.flatMap(p => (p.type === 'edge' ? p.path.segments : [])),
  );
});
test('an allowance on a raw edge or a fold counts for nothing', () => {
  const raw = polygon(rectangle(100, 60), () => ({ kind: 'raw' }));
  const marked = {
    ...raw,
    outline: { parts: raw.outline.parts.map(p => ({ ...p, allowance: 12 })) },
  } as typeof raw;
  expect(pathLength(cuttingLine(marked).path)).toBeCloseTo(320, 9);
});
test('every part of the cutting line says which edge it belongs to, in order and without a gap', () => {
  const { stretches, path } = cuttingLine(polygon(rectangle(100, 60), i => ({ allowance: 5 + i })));
  expect(stretches.flatMap(s => s.path.segments)).toEqual(path.segments);
  expect(new Set(stretches.map(s => s.of))).toEqual(new Set(['e0', 'e1', 'e2', 'e3']));
  const parallels = stretches.filter(s => s.shape === 'parallel').map(s => [s.of, pathLength(s.path)]);
  expect(Object.fromEntries(parallels)).toEqual({ e0: 100, e1: 60, e2: 100, e3: 60 });
});
test('a piece of 5 mm with an allowance of 25 is cut as a square of 55', () => {
  const { path } = cuttingLine(polygon(rectangle(5, 5), () => ({ allowance: 25 })));
  expect(pathLength(path)).toBeCloseTo(220, 9);
});
