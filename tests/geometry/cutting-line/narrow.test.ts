import { cuttingLine, type Dart, type Piece } from '@paperhinge/geometry';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { toldFinding } from '../../support/told.js';
import { arc, at, dart, edge, pieceOf, polygon, straightEdge } from './pieces.js';

// Where allowances have no room: what is lost of them, in closed form.

/** A panel of 200 by 150 with a dip in its top, all with 10 mm of allowance. */
const dipped = (...corners: readonly (readonly [number, number])[]): Piece =>
  polygon(
    [[0, 0] as const, ...corners, [200, 0] as const, [200, 150] as const, [0, 150] as const].map(([x, y]) =>
      at(x, y),
    ),
    () => ({ allowance: 10 }),
  );
const lost = (piece: Piece) =>
  cuttingLine(piece).findings.map(f => [f.severity, f.code, f.where.edge, f.figures!.lostMm]);

describe('a slot', () => {
  test('narrower than both allowances loses them on all three sides', () => {
    const slot = dipped([94, 0], [94, 80], [106, 80], [106, 0]);
    const all = (edge: string, mm: number) => ['warning', 'allowance-too-wide', edge, expect.closeTo(mm, 6)];
    expect(lost(slot)).toEqual([all('e1', 80), all('e2', 12), all('e3', 80)]);
    const { snips, path } = cuttingLine(slot);
    // It is snipped to both its corners from the line above it, which runs straight across.
    expect(signedArea(path)).toBeCloseTo(220 * 170, 6);
    expect(snips.map(s => s.segments[0]![1])).toEqual([at(94, 80), at(106, 80)]);
    for (const { segments } of snips) {
      expect(segments[0]![0].y).toBeCloseTo(-10, 9);
      expect(Math.abs(segments[0]![0].x - 100)).toBeLessThan(10);
    }
  });
  test('that narrows loses them below where its parallels cross', () => {
    // Walls from (85, 0) to (97, 80): 15 − 0.15 y from the middle, square to them 80 / √6544 of that: 10 at yc.
    const slant = Math.hypot(12, 80) / 80;
    const crossing = (15 - 10 * slant) / 0.15;
    // The foot of the crossing on the wall lies 10 sin below it; from there to the floor is lost.
    const foot = crossing + 10 * (12 / Math.hypot(12, 80));
    const walls = (80 - foot) * slant;
    const slot = dipped([85, 0], [97, 80], [103, 80], [115, 0]);
    expect(lost(slot)).toEqual([
      ['warning', 'allowance-too-wide', 'e1', expect.closeTo(walls, 6)],
      ['warning', 'allowance-too-wide', 'e2', expect.closeTo(6, 6)],
      ['warning', 'allowance-too-wide', 'e3', expect.closeTo(walls, 6)],
    ]);
    for (const { segments } of cuttingLine(slot).snips) {
      expect(segments[0]![0].x).toBeCloseTo(100, 6);
      expect(segments[0]![0].y).toBeCloseTo(crossing, 6);
    }
  });
  test('that ends in a point loses nothing: it is an inner corner, and snipped', () => {
    const v = dipped([85, 0], [100, 80], [115, 0]);
    expect(lost(v)).toEqual([]);
    const { snips } = cuttingLine(v);
    expect(snips).toHaveLength(1);
    // 10 / sin of half its angle above the point.
    expect(snips[0]!.segments[0]![0].y).toBeCloseTo(80 - 10 / (15 / Math.hypot(15, 80)), 6);
  });
  test('wider than both allowances loses nothing', () => {
    expect(lost(dipped([89.9, 0], [89.9, 80], [110.1, 80], [110.1, 0]))).toEqual([]);
  });
  test('is told with the edge and what to do', () => {
    const [finding] = cuttingLine(dipped([94, 0], [94, 80], [106, 80], [106, 0])).findings;
    expect(toldFinding(finding!).message).toContain('e1');
    expect(toldFinding(finding!).message).toContain('80 mm');
  });
});

test('beside a V that is closed at the fold, a slot elsewhere is snipped from its own place', () => {
  const front = pieceOf([
    straightEdge('neck', at(0, 120), at(9, 0), { allowance: 12 }),
    ...[at(9, 0), at(85, 0), at(97, 80), at(103, 80), at(115, 0), at(210, 0)].flatMap((p, i, all) =>
      i === 0 ? [] : [straightEdge(`top${i}`, all[i - 1]!, p)],
    ),
    straightEdge('side', at(210, 0), at(210, 300)),
    straightEdge('hem', at(210, 300), at(0, 300), { kind: 'hem', allowance: 20 }),
    straightEdge('centre', at(0, 300), at(0, 120), { kind: 'fold' }),
  ]);
  const snips = cuttingLine(front).snips.map(s => s.segments[0]!);
  const to = (x: number, y: number) => snips.filter(s => Math.hypot(s[1]!.x - x, s[1]!.y - y) < 1e-6);
  expect(snips).toHaveLength(3);
  expect(to(0, 120)[0]![0].x).toBeCloseTo(0, 6);
  const crossing = (15 - (10 * Math.hypot(12, 80)) / 80) / 0.15;
  for (const [s] of [to(97, 80), to(103, 80)]) {
    expect(s![0].x).toBeCloseTo(100, 6);
    expect(s![0].y).toBeCloseTo(crossing, 6);
  }
});

test('an inner corner that is snipped elsewhere hides nothing of what is lost', () => {
  // A round scoop of 5 mm in an edge of 10: its line runs straight across, and the scoop is lost.
  const scooped = (...corners: readonly (readonly [number, number])[]): Piece => {
    const scoop = arc(at(160, 0), 5, 180, 0);
    const places = [[0, 0] as const, ...corners].map(([x, y]) => at(x, y));
    const sides = places.map((p, i) => straightEdge(`t${i}`, p, places[i + 1] ?? at(155, 0)));
    return pieceOf([
      ...sides,
      edge('scoop', scoop),
      straightEdge('top', at(165, 0), at(200, 0)),
      straightEdge('right', at(200, 0), at(200, 150)),
      straightEdge('foot', at(200, 150), at(0, 150)),
      straightEdge('left', at(0, 150), at(0, 0)),
    ]);
  };
  const whole = ['warning', 'allowance-too-wide', 'scoop', expect.closeTo(5 * Math.PI, 3)];
  expect(lost(scooped())).toEqual([whole]);
  const withV = scooped([60, 0], [75, 60], [90, 0]);
  expect(cuttingLine(withV).snips).toHaveLength(1);
  expect(lost(withV)).toEqual([whole]);
});

describe('two darts that want more of the edge between them than there is', () => {
  const waist = (gap: number, one: Dart['pressed'], two: Dart['pressed']) =>
    pieceOf([
      straightEdge('waist', at(0, 0), at(80, 0)),
      dart('one', at(80, 0), at(100, 60), at(120, 0), one),
      straightEdge('waist', at(120, 0), at(120 + gap, 0)),
      dart('two', at(120 + gap, 0), at(140 + gap, 60), at(160 + gap, 0), two),
      straightEdge('waist', at(160 + gap, 0), at(300, 0)),
      straightEdge('side', at(300, 0), at(300, 200)),
      straightEdge('hem', at(300, 200), at(0, 200)),
      straightEdge('centre', at(0, 200), at(0, 0), { kind: 'fold' }),
    ]);
  const bridged = (piece: Piece) =>
    cuttingLine(piece)
      .findings.filter(f => f.code === 'dart-mouth-bridged')
      .map(f => [f.severity, f.where.edge, f.about!.dart]);
  const named = (name: string) => ['warning', name, { piece: 'piece', dart: name }];
  test('the one that is folded onto that edge is cut straight across, and named', () => {
    expect(bridged(waist(8, 'end', 'end'))).toEqual([named('one')]);
    expect(bridged(waist(8, 'start', 'start'))).toEqual([named('two')]);
    expect(bridged(waist(8, 'start', 'end'))).toEqual([]);
    expect(bridged(waist(60, 'end', 'end'))).toEqual([]);
  });
  test('or both', () => {
    expect(bridged(waist(8, 'end', 'start'))).toEqual([named('one'), named('two')]);
    const { stretches } = cuttingLine(waist(8, 'end', 'start'));
    for (const name of ['one', 'two']) {
      const own = stretches.filter(s => s.of === name);
      expect(own.flatMap(s => s.path.segments)).toHaveLength(1);
      for (const p of own[0]!.path.segments[0]!) expect(p.y).toBeCloseTo(-10, 6);
    }
  });
  test('a dart between two others has no edge to take an allowance from', () => {
    const row = pieceOf([
      straightEdge('waist', at(0, 0), at(80, 0)),
      dart('one', at(80, 0), at(90, 60), at(100, 0)),
      dart('two', at(100, 0), at(110, 60), at(120, 0)),
      dart('three', at(120, 0), at(130, 60), at(140, 0)),
      straightEdge('waist', at(140, 0), at(300, 0)),
      straightEdge('side', at(300, 0), at(300, 200)),
      straightEdge('hem', at(300, 200), at(0, 200)),
      straightEdge('centre', at(0, 200), at(0, 0), { kind: 'fold' }),
    ]);
    const { stretches, findings } = cuttingLine(row);
    expect(findings.map(f => [f.code, f.where.edge])).toEqual([
      ['dart-mouth-bridged', 'one'],
      ['dart-mouth-bridged', 'two'],
      ['dart-mouth-bridged', 'three'],
    ]);
    const depth = (name: string) =>
      Math.max(
        ...stretches
          .filter(s => s.of === name && s.shape === 'parallel')
          .flatMap(s => s.path.segments.flat().map(p => -p.y)),
      );
    for (const [name, mm] of Object.entries({ one: 10, two: 0, three: 10 }))
      expect(depth(name)).toBeCloseTo(mm, 9);
  });
});

test('a wide allowance between a narrow one and a dart steps out square to their line', () => {
  const waist = pieceOf([
    straightEdge('narrow', at(0, 0), at(60, 0), { allowance: 8 }),
    straightEdge('wide', at(60, 0), at(120, 0), { allowance: 18 }),
    dart('d', at(120, 0), at(130, 80), at(140, 0), 'end'),
    straightEdge('rest', at(140, 0), at(300, 0), { allowance: 18 }),
    straightEdge('side', at(300, 0), at(300, 200)),
    straightEdge('hem', at(300, 200), at(0, 200)),
    straightEdge('centre', at(0, 200), at(0, 0), { kind: 'fold' }),
  ]);
  const { path, findings } = cuttingLine(waist);
  const points = path.segments.map(s => s[0]);
  for (const [x, y] of [
    [60, -8],
    [60, -18],
  ] as const)
    expect(Math.min(...points.map(p => Math.hypot(p.x - x, p.y - y)))).toBeLessThan(1e-6);
  expect(findings).toEqual([]);
});

test('even where no more than a point of it lies beyond', () => {
  const { path } = cuttingLine(
    pieceOf([
      straightEdge('top', at(0, 0), at(100, 0)),
      straightEdge('right', at(100, 0), at(100, 200)),
      straightEdge('foot', at(100, 200), at(0, 200)),
      straightEdge('low', at(0, 200), at(-40, 160)),
      straightEdge('high', at(-40, 160), at(0, 120)),
      straightEdge('fold', at(0, 120), at(0, 0), { kind: 'fold' }),
    ]),
  );
  // The point turns by a right angle: mitred, √2 allowances beyond it.
  expect(Math.min(...path.segments.flat().map(p => p.x))).toBeCloseTo(-40 - 10 * Math.SQRT2, 9);
});

test('a piece that lies on both sides of its fold keeps both', () => {
  const { path } = cuttingLine(
    pieceOf([
      straightEdge('top', at(0, 0), at(100, 0)),
      straightEdge('right', at(100, 0), at(100, 200)),
      straightEdge('foot', at(100, 200), at(-50, 200)),
      straightEdge('left', at(-50, 200), at(-50, 100)),
      straightEdge('step', at(-50, 100), at(0, 100)),
      straightEdge('fold', at(0, 100), at(0, 0), { kind: 'fold' }),
    ]),
  );
  expect(Math.min(...path.segments.flat().map(p => p.x))).toBeCloseTo(-60, 9);
  // 110 by 220 on one side; on the other 60 by 120, from the step's allowance, run to the fold's line, down.
  expect(signedArea(path)).toBeCloseTo(110 * 220 + 60 * 120, 6);
});

test.each([
  [11, 1],
  [12, 0],
])(
  'a corner of %d degrees pressed open: the other line meets its stitching line beyond 5 allowances? %d',
  (degrees, count) => {
    // 10 / sin of the angle from the corner: 50 mm at 11.5 degrees.
    const angle = (degrees * Math.PI) / 180;
    const far = at(400 - 380 * Math.cos(angle), 380 * Math.sin(angle));
    const wedge = pieceOf([
      straightEdge('first', at(0, 0), at(400, 0), { end: 'pressed-open' }),
      straightEdge('second', at(400, 0), far),
      straightEdge('left', far, at(0, 0), { kind: 'raw' }),
    ]);
    expect(cuttingLine(wedge).findings.filter(f => f.code === 'corner-not-shaped')).toHaveLength(count);
  },
);

test('an inner corner asked to be pressed open is cut where the parallels cross, like any other', () => {
  const corners = [at(0, 0), at(100, 0), at(100, 80), at(220, 90), at(220, 200), at(0, 200)];
  const asked = (rule: 'pressed-open' | 'mitre') =>
    cuttingLine(polygon(corners, i => ({ allowance: 10 + i, ...(i === 1 ? { end: rule } : {}) })));
  expect(asked('pressed-open')).toEqual(asked('mitre'));
  expect(asked('mitre').snips).toHaveLength(1);
});

test('a corner that cannot be pressed open is told, a note at both its edges', () => {
  // So sharp that the mirrored end does not meet the parallel within reach.
  const sharp = pieceOf([
    straightEdge('first', at(0, 0), at(200, 0), { end: 'pressed-open', allowance: 15 }),
    straightEdge('second', at(200, 0), at(2, 14), { allowance: 3 }),
    straightEdge('left', at(2, 14), at(0, 0), { kind: 'raw' }),
  ]);
  const told = cuttingLine(sharp).findings.filter(f => f.code === 'corner-not-shaped');
  expect(told.map(f => [f.severity, f.where, f.about])).toEqual([
    [
      'note',
      { piece: 'piece', edge: 'first' },
      {
        edges: [
          { piece: 'piece', edge: 'first' },
          { piece: 'piece', edge: 'second' },
        ],
      },
    ],
  ]);
});
