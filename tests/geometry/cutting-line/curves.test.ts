import { cuttingLine, type Piece, pathLength } from '@paperhinge/geometry';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { distanceTo, edgesOf, largestGap, polylineCrossings, sampled, sampledWithin } from './independent.js';
import { arc, at, edge, pieceOf, straightEdge } from './pieces.js';

/** The lens of a curve over its chord, the chord raw: only the curve is moved. */
const lens = (segments: Parameters<typeof edge>[1], allowance: number): Piece =>
  pieceOf([
    edge('curve', segments, { allowance }),
    straightEdge('chord', segments.at(-1)!.at(-1)!, segments[0]![0], { kind: 'raw' }),
  ]);
const parallelOf = (piece: Piece, of: string) => ({
  segments: cuttingLine(piece)
    .stretches.filter(s => s.of === of && s.shape === 'parallel')
    .flatMap(s => s.path.segments),
});

// check-values §10 [derived]: the Pythagorean-hodograph cubic of length 400; its offsets at ±15 are 400 ± 7.5π long.
test('the parallel of the Pythagorean-hodograph cubic has its closed-form length', () => {
  const ph = [at(0, 0), at(-100, 0), at(-200, 100), at(-200, 300)] as const;
  const clockwise = [...ph].reverse() as unknown as typeof ph;
  // Travelled from its end it runs up and to the right: its outside is the outer side of the bend.
  const outer = parallelOf(lens([clockwise], 15), 'curve');
  expect(Math.abs(pathLength(outer) - 423.561944902)).toBeLessThan(0.01);
});

// check-values §10 [derived]: length L + d Δθ; closed and convex, with round corners: A + P d + π d².
test('a circle grows by its allowance', () => {
  const circle = pieceOf([edge('rim', arc(at(0, 0), 80, 0, 360), { allowance: 15 })]);
  const { path, findings } = cuttingLine(circle);
  expect(findings).toEqual([]);
  expect(largestGap(path)).toBeLessThan(1e-6);
  expect(Math.abs(pathLength(path) - 2 * Math.PI * 95)).toBeLessThan(0.01);
  expect(Math.abs(signedArea(path) - Math.PI * 95 * 95)).toBeLessThan(1);
  expect(
    Math.max(...sampled(path, 20).map(s => Math.abs(Math.hypot(s.point.x, s.point.y) - 95))),
  ).toBeLessThan(0.005);
});

describe('an allowance wider than what a bend has room for', () => {
  test('a scallop tighter than the allowance is trimmed to a point, and said so', () => {
    // Three half-circle bites of radius 8 in the top edge, allowance 15.
    const bites = [0, 1, 2].flatMap(i => [
      [at(i * 40, 0), at(i * 40 + 12, 0)] as const,
      ...arc(at(i * 40 + 20, 0), 8, 180, 0),
      [at(i * 40 + 28, 0), at(i * 40 + 40, 0)] as const,
    ]);
    const piece = pieceOf([
      edge('top', bites, { allowance: 15 }),
      straightEdge('right', at(120, 0), at(120, 100), { allowance: 15 }),
      straightEdge('foot', at(120, 100), at(0, 100), { allowance: 15 }),
      straightEdge('left', at(0, 100), at(0, 0), { allowance: 15 }),
    ]);
    const { path, findings } = cuttingLine(piece);
    expect(polylineCrossings(path)).toEqual([]);
    expect(findings.map(f => [f.code, f.where.edge])).toEqual([['allowance-too-wide', 'top']]);
    expect(signedArea(path)).toBeCloseTo(150 * 130, 6);
  });
  test('a slot as wide as twice the allowance closes to a line, one wider stays open', () => {
    const slotted = (width: number) =>
      pieceOf(
        [
          at(0, 0),
          at(100 - width / 2, 0),
          at(100 - width / 2, 80),
          at(100 + width / 2, 80),
          at(100 + width / 2, 0),
          at(200, 0),
          at(200, 150),
          at(0, 150),
        ].map((p, i, all) => straightEdge(`e${i}`, p, all[(i + 1) % all.length]!, { allowance: 10 })),
      );
    const area = (width: number) => {
      const { path } = cuttingLine(slotted(width));
      expect(polylineCrossings(path)).toEqual([]);
      expect(largestGap(path)).toBeLessThan(1e-6);
      return signedArea(path);
    };
    const whole = 220 * 170;
    expect(area(30)).toBeCloseTo(whole - 10 * 80, 6);
    expect(area(20.5)).toBeCloseTo(whole - 0.5 * 80, 6);
    expect(area(20)).toBeCloseTo(whole, 6);
    expect(area(12)).toBeCloseTo(whole, 6);
    expect(cuttingLine(slotted(12)).findings.map(f => f.code)).toContain('allowance-too-wide');
    expect(cuttingLine(slotted(30)).findings).toEqual([]);
  });
  test('a keyhole that its mouth closes is cut over', () => {
    const hole = [
      [at(0, 0), at(95, 0)] as const,
      [at(95, 0), at(95, 20)] as const,
      ...arc(
        at(100, 60),
        Math.hypot(5, 40),
        -90 - (Math.atan(5 / 40) * 180) / Math.PI,
        -450 + (Math.atan(5 / 40) * 180) / Math.PI,
      ),
      [at(105, 20), at(105, 0)] as const,
      [at(105, 0), at(200, 0)] as const,
    ];
    const piece = pieceOf([
      edge('top', hole, { allowance: 10 }),
      straightEdge('right', at(200, 0), at(200, 200)),
      straightEdge('foot', at(200, 200), at(0, 200)),
      straightEdge('left', at(0, 200), at(0, 0)),
    ]);
    const { path, findings } = cuttingLine(piece);
    expect(signedArea(path)).toBeCloseTo(220 * 220, 6);
    expect(findings.map(f => f.code)).toEqual(['allowance-too-wide']);
  });
});

/** Outlines that offsets of others fail on; after the kinds listed in peers.md C. */
const hostile: Readonly<Record<string, (allowance: number) => Piece>> = {
  'a V notch of 7.6°': d =>
    pieceOf([
      edge(
        'top',
        [
          [at(0, 0), at(98, 0)],
          [at(98, 0), at(100, 15)],
          [at(100, 15), at(102, 0)],
          [at(102, 0), at(200, 0)],
        ],
        { allowance: d },
      ),
      straightEdge('right', at(200, 0), at(200, 90), { allowance: d }),
      straightEdge('foot', at(200, 90), at(0, 90), { allowance: d }),
      straightEdge('left', at(0, 90), at(0, 0), { allowance: d }),
    ]),
  'an hourglass': d =>
    pieceOf([
      straightEdge('top', at(0, 0), at(160, 0), { allowance: d }),
      edge('right', [[at(160, 0), at(60, 90), at(60, 110), at(160, 200)]], { allowance: d }),
      straightEdge('foot', at(160, 200), at(0, 200), { allowance: d }),
      edge('left', [[at(0, 200), at(100, 110), at(100, 90), at(0, 0)]], { allowance: d }),
    ]),
  'a near-cusp': d =>
    pieceOf([
      edge('top', [[at(0, 0), at(150, -90), at(48, -90), at(200, 0)]], { allowance: d }),
      straightEdge('right', at(200, 0), at(200, 120), { allowance: d }),
      straightEdge('foot', at(200, 120), at(0, 120), { allowance: d }),
      straightEdge('left', at(0, 120), at(0, 0), { allowance: d }),
    ]),
  'a near-cusp inwards': d =>
    pieceOf([
      edge('top', [[at(0, 0), at(150, 90), at(48, 90), at(200, 0)]], { allowance: d }),
      straightEdge('right', at(200, 0), at(200, 180), { allowance: d }),
      straightEdge('foot', at(200, 180), at(0, 180), { allowance: d }),
      straightEdge('left', at(0, 180), at(0, 0), { allowance: d }),
    ]),
  'a crotch curve': d =>
    pieceOf([
      straightEdge('waist', at(60, 0), at(260, 10), { allowance: d }),
      edge('side', [[at(260, 10), at(290, 120), at(280, 300), at(260, 600)]], { allowance: d }),
      straightEdge('hem', at(260, 600), at(40, 600), { allowance: d }),
      edge('inseam', [[at(40, 600), at(30, 450), at(0, 330), at(-20, 270)]], { allowance: d }),
      edge(
        'crotch',
        [
          [at(-20, 270), at(25, 272), at(48, 245), at(52, 190)],
          [at(52, 190), at(55, 120), at(57, 60), at(60, 0)],
        ],
        {
          allowance: d,
        },
      ),
    ]),
  'a tight crotch': d =>
    pieceOf([
      straightEdge('waist', at(60, 0), at(260, 10), { allowance: d }),
      straightEdge('side', at(260, 10), at(260, 400), { allowance: d }),
      straightEdge('hem', at(260, 400), at(-20, 400), { allowance: d }),
      straightEdge('inseam', at(-20, 400), at(-40, 200), { allowance: d }),
      edge(
        'crotch',
        [
          [at(-40, 200), at(40, 196), at(54, 196), at(56, 170)],
          [at(56, 170), at(58, 120), at(59, 60), at(60, 0)],
        ],
        {
          allowance: d,
        },
      ),
    ]),
  'a facing': d =>
    pieceOf([
      edge('outer', arc(at(0, 0), 150, 180, 360), { allowance: d }),
      straightEdge('right end', at(150, 0), at(95, 0), { allowance: d }),
      edge('inner', arc(at(0, 0), 95, 360, 180), { allowance: d }),
      straightEdge('left end', at(-95, 0), at(-150, 0), { allowance: d }),
    ]),
  scallops: d =>
    pieceOf([
      edge(
        'top',
        [0, 1, 2, 3].flatMap(i => arc(at(i * 50 + 25, 0), 25, 180, 360)),
        { allowance: d },
      ),
      straightEdge('right', at(200, 0), at(200, 90), { allowance: d }),
      straightEdge('foot', at(200, 90), at(0, 90), { allowance: d }),
      straightEdge('left', at(0, 90), at(0, 0), { allowance: d }),
    ]),
  'scallops inwards': d =>
    pieceOf([
      edge(
        'top',
        [0, 1, 2, 3].flatMap(i => arc(at(i * 50 + 25, 0), 25, 180, 0)),
        { allowance: d },
      ),
      straightEdge('right', at(200, 0), at(200, 90), { allowance: d }),
      straightEdge('foot', at(200, 90), at(0, 90), { allowance: d }),
      straightEdge('left', at(0, 90), at(0, 0), { allowance: d }),
    ]),
  'a spike': d =>
    pieceOf([
      straightEdge('one', at(0, 0), at(300, 8), { allowance: d }),
      straightEdge('two', at(300, 8), at(0, 30), { allowance: d }),
      straightEdge('three', at(0, 30), at(0, 0), { allowance: d }),
    ]),
  'edges shorter than the allowance': d =>
    pieceOf(
      [
        at(0, 0),
        at(100, 0),
        at(103, 1),
        at(104, 3),
        at(104.5, 3.2),
        at(105, 90),
        at(40, 92),
        at(39.5, 89),
        at(38, 91),
        at(0, 90),
      ].map((p, i, all) => straightEdge(`e${i}`, p, all[(i + 1) % all.length]!, { allowance: d })),
    ),
};

describe.each(Object.entries(hostile))('%s', (_, build) => {
  test.each([6.35, 15.875, 25])(
    'by %d mm is a simple closed line on the true parallel, nowhere nearer',
    d => {
      const piece = build(d);
      const { path, stretches, findings } = cuttingLine(piece);
      expect(findings.filter(f => f.severity === 'fault')).toEqual([]);
      expect(largestGap(path)).toBeLessThan(1e-6);
      expect(polylineCrossings(path, 40)).toEqual([]);
      const edges = edgesOf(piece);
      const whole = edges.map(e => e.path);
      let nearest = Number.POSITIVE_INFINITY;
      for (const stretch of stretches)
        for (const { point } of sampled(stretch.path, Math.ceil(60 / stretch.path.segments.length))) {
          const d0 = Math.min(...whole.map(p => distanceTo(p, point).distance));
          nearest = Math.min(nearest, d0);
          if (stretch.shape === 'parallel') expect(Math.abs(d0 - d)).toBeLessThan(0.01);
        }
      expect(nearest).toBeGreaterThan(d - 0.01);
      // Nothing of the true trimmed parallel is missing, unless something further along the outline comes near.
      for (const [i, e] of edges.entries())
        for (const { point, tangent } of sampledWithin(e.path, Math.ceil(60 / e.path.segments.length))) {
          const p = at(point.x + d * tangent.y, point.y - d * tangent.x);
          const others = whole.filter((_, k) => k !== i && (k - i + whole.length + 1) % whole.length > 2);
          if (others.some(w => distanceTo(w, p).distance < 2.6 * d)) continue;
          if (whole.some(w => distanceTo(w, p).distance < d - 1e-4)) continue;
          const off = distanceTo(path, p).distance;
          // A pocket closed off by its mouth is cut over.
          if (off > 0.01) expect(findings.map(f => f.code)).toContain('allowance-too-wide');
        }
    },
  );
});
