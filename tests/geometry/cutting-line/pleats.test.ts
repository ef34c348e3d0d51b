import {
  cuttingLine,
  type Path,
  type Piece,
  type Pleat,
  type PleatKind,
  type Segment,
} from '@paperhinge/geometry';
import { nearestOnPath } from '@paperhinge/geometry/paths';
import { selfCrossings, signedArea } from '@paperhinge/geometry/regions';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sampled } from './independent.js';
import { at, edge, pieceOf, straightEdge } from './pieces.js';

const [left, right] = [120, 180];
const width = right - left,
  middle = (left + right) / 2;

const pleat = (kind: PleatKind, towards: Pleat['towards'], stitched = 0): Pleat => ({
  type: 'pleat',
  name: 'pleat',
  kind,
  mouth: { segments: [[at(left, 0), at(right, 0)]] },
  towards,
  stitched,
});

/** A skirt front whose waist is drawn from 0 to 300 with a pleat's mouth, level, from 120 to 180. */
const skirt = (fold: Pleat, before: Segment, after: Segment, allowance = 10): Piece =>
  pieceOf([
    edge('waist', [before], { allowance }),
    fold,
    edge('waist', [after], { allowance }),
    straightEdge('side', after.at(-1)!, at(320, 400)),
    straightEdge('hem', at(320, 400), at(0, 400)),
    straightEdge('centre', at(0, 400), before[0]),
  ]);
const level: readonly [Segment, Segment] = [
  [at(0, 0), at(left, 0)],
  [at(right, 0), at(300, 0)],
];
const sloped: readonly [Segment, Segment] = [
  [at(0, 24), at(left, 0)],
  [at(right, 0), at(300, -12)],
];

const kinds: readonly (readonly [PleatKind, Pleat['towards']])[] = [
  ['knife', 'start'],
  ['knife', 'end'],
  ['tuck', 'start'],
  ['tuck', 'end'],
  ['box', 'start'],
  ['inverted', 'end'],
];

/** Where the cloth at a place of the mouth comes to lie when the pleat is folded, along the edge. */
function laid(kind: PleatKind, towards: Pleat['towards'], x: number): number {
  if (kind === 'box' || kind === 'inverted') {
    if (x < left + width / 4) return 2 * left - x;
    if (x < middle) return x - width / 2;
    return x < right - width / 4 ? x + width / 2 : 2 * right - x;
  }
  if (towards === 'start') return x < middle ? 2 * left - x : x - width;
  return x > middle ? 2 * right - x : x + width;
}

const overMouth = (path: Path) =>
  sampled(path, 12).filter(({ point: { x, y } }) => x > left + 0.5 && x < right - 0.5 && y < 100);
const passes = (path: Path, x: number, y: number): void =>
  expect(nearestOnPath(path, at(x, y)).distance).toBeLessThan(1e-9);

describe.each(kinds)('a %s pleat, laid towards the %s', (kind, towards) => {
  test('on a level edge leaves the cutting line level', () => {
    const { path, findings } = cuttingLine(skirt(pleat(kind, towards), ...level));
    for (const { point } of overMouth(path)) expect(point.y).toBeCloseTo(-10, 9);
    expect(findings).toEqual([]);
    const plain = pieceOf([
      straightEdge('waist', at(0, 0), at(300, 0)),
      straightEdge('side', at(300, 0), at(320, 400)),
      straightEdge('hem', at(320, 400), at(0, 400)),
      straightEdge('centre', at(0, 400), at(0, 0)),
    ]);
    expect(signedArea(path)).toBeCloseTo(signedArea(cuttingLine(plain).path), 6);
  });

  test('lies, folded, on the cutting line under it', () => {
    const { path } = cuttingLine(skirt(pleat(kind, towards), ...sloped));
    expect(selfCrossings(path)).toEqual([]);
    for (const { point } of overMouth(path)) {
      const folds = [left, right, middle, left + width / 4, right - width / 4];
      if (folds.some(x => Math.abs(point.x - x) < 0.01)) continue;
      expect(nearestOnPath(path, at(laid(kind, towards, point.x), point.y)).distance).toBeLessThan(1e-9);
    }
  });
});

describe('closed forms on a sloped edge', () => {
  // The line beyond the mouth's start rises by 24 in 120, its parallel lies 10 √(1 + 0.2²) above it.
  const onStart = -10 * Math.hypot(1, 0.2);
  const onEnd = -10 * Math.hypot(1, 0.1);
  test('a knife pleat towards the start falls as the edge before it does, as far as its middle, and rises again', () => {
    const { path, foldLines } = cuttingLine(skirt(pleat('knife', 'start', 80), ...sloped));
    passes(path, middle, onStart + 0.2 * (width / 2));
    passes(path, middle - 15, onStart + 0.2 * (width / 2 - 15));
    passes(path, middle + 15, onStart + 0.2 * (width / 2 - 15));
    const [fold] = foldLines;
    expect(fold!.segments[0]![0]!.x).toBeCloseTo(middle, 9);
    expect(fold!.segments[0]![0]!.y).toBeCloseTo(onStart + 0.2 * (width / 2), 9);
    expect(fold!.segments[0]!.at(-1)).toEqual({ x: expect.closeTo(middle, 9), y: expect.closeTo(80, 9) });
  });
  test('towards the end it takes the shape of the edge after it', () => {
    const { path } = cuttingLine(skirt(pleat('knife', 'end'), ...sloped));
    passes(path, middle, onEnd - 0.1 * (width / 2));
  });
  test('a box pleat has two folds, each in the shape of its own side', () => {
    const { path, foldLines } = cuttingLine(skirt(pleat('box', 'start'), ...sloped));
    passes(path, left + width / 4, onStart + 0.2 * (width / 4));
    passes(path, right - width / 4, onEnd - 0.1 * (width / 4));
    expect(foldLines).toHaveLength(2);
  });
});

test('on any curved edge the folded cloth ends where the cloth under it does', () => {
  const amount = fc.double({ min: -25, max: 25, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...kinds),
      fc.tuple(amount, amount, amount, amount),
      fc.constantFrom(0, 7, 10, 15.875),
      ([kind, towards], [p, q, r, s], allowance) => {
        const before: Segment = [at(0, p), at(40, p + q / 3), at(80, q / 4), at(left, 0)],
          after: Segment = [at(right, 0), at(220, r / 4), at(260, s + r / 3), at(300, s)];
        const { path, findings } = cuttingLine(skirt(pleat(kind, towards), before, after, allowance));
        expect(findings.filter(f => f.code !== 'pleat-fold-step')).toEqual([]);
        for (const { point } of overMouth(path)) {
          const folds = [left, right, middle, left + width / 4, right - width / 4];
          if (folds.some(x => Math.abs(point.x - x) < 0.01)) continue;
          expect(nearestOnPath(path, at(laid(kind, towards, point.x), point.y)).distance).toBeLessThan(0.01);
        }
      },
    ),
    { numRuns: 150 },
  );
});

test('where the folded cloth misses the edge beyond by unlike allowances, the step is told with both its edges', () => {
  const waist = (towards: Pleat['towards'], first: number, second: number) => {
    const { parts } = skirt(pleat('knife', towards), ...level).outline;
    const edges = [straightEdge('front waist', at(0, 0), at(left, 0), { allowance: first }), parts[1]!];
    const after = straightEdge('back waist', at(right, 0), at(300, 0), { allowance: second });
    return cuttingLine(pieceOf([...edges, after, ...parts.slice(3)])).findings;
  };
  for (const towards of ['start', 'end'] as const)
    for (const [first, second] of [
      [10, 16],
      [16, 10],
    ] as const)
      expect(
        waist(towards, first, second).map(f => [f.severity, f.code, f.where, f.figures, f.about]),
      ).toEqual([
        [
          'note',
          'pleat-fold-step',
          { piece: 'piece', edge: 'pleat' },
          { stepMm: expect.closeTo(6, 9) },
          {
            pleat: { piece: 'piece', pleat: 'pleat' },
            edges: ['front waist', 'back waist'].map(edge => ({ piece: 'piece', edge })),
            unlike: true,
          },
        ],
      ]);
  // 0.8 mm can be sewn away.
  expect(waist('start', 10, 10.8 - 1e-6)).toEqual([]);
});

test('a pleat beside an edge that falls away by more than 60 degrees is cut straight across', () => {
  const falling = (degrees: number) => {
    const drop = 120 * Math.tan((degrees * Math.PI) / 180);
    return skirt(pleat('knife', 'start'), [at(60, drop / 2), at(left, 0)], [at(right, 0), at(300, 0)]);
  };
  const over = (degrees: number) => overMouth(cuttingLine(falling(degrees)).path).map(({ point }) => point.y);
  for (const y of over(61)) expect(y).toBeCloseTo(-10, 9);
  expect(Math.max(...over(59).map(y => Math.abs(y + 10)))).toBeGreaterThan(5);
});

test('it is both its neighbours that must run on, whichever way it is laid', () => {
  const drop = 120 * Math.tan((70 * Math.PI) / 180);
  for (const towards of ['start', 'end'] as const) {
    const before = skirt(
      pleat('knife', towards),
      [at(60, drop / 2), at(left, 0)],
      [at(right, 0), at(300, 0)],
    );
    const after = skirt(
      pleat('knife', towards),
      [at(0, 0), at(left, 0)],
      [at(right, 0), at(right + 60, drop / 2)],
    );
    for (const piece of [before, after])
      for (const { point } of overMouth(cuttingLine(piece).path)) expect(point.y).toBeCloseTo(-10, 9);
  }
});

test('a pleat deeper than the cloth it is folded onto is cut straight across, with a finding', () => {
  const narrow = (kind: PleatKind) =>
    pieceOf([
      straightEdge('waist', at(110, 0), at(left, 0)),
      pleat(kind, 'start'),
      straightEdge('waist', at(right, 0), at(300, 0)),
      straightEdge('side', at(300, 0), at(300, 400)),
      straightEdge('hem', at(300, 400), at(110, 400)),
      straightEdge('centre', at(110, 400), at(110, 0)),
    ]);
  const { findings, path } = cuttingLine(narrow('knife'));
  expect(findings.map(f => f.code)).toEqual(['pleat-mouth-bridged']);
  // One laid to one side may be laid to the other instead.
  const oneWay = (['knife', 'tuck'] as const).map(kind =>
    cuttingLine(narrow(kind)).findings.map(f => f.about?.oneWay),
  );
  expect(oneWay).toEqual([[true], [false]]);
  expect(selfCrossings(path)).toEqual([]);
  expect(signedArea(path)).toBeCloseTo(210 * 420, 6);
});
