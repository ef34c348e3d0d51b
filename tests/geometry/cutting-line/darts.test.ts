import {
  cuttingLine,
  type Dart,
  type Edge,
  type Path,
  type Piece,
  type PieceLine,
  type Point,
  type Segment,
} from '@paperhinge/geometry';
import { reversedPath } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceTo, largestGap, polylineCrossings, sampled } from './independent.js';
import { arc, at, dart, edge, pieceOf, straightEdge } from './pieces.js';

const grain = (from: Point, to: Point): PieceLine => ({
  kind: 'grain',
  name: 'grain',
  path: { segments: [[from, to]] },
});

/** The mirror image of a point in the line through two others. */
function folded(p: Point, a: Point, b: Point): Point {
  const d = at(b.x - a.x, b.y - a.y),
    s = ((p.x - a.x) * d.x + (p.y - a.y) * d.y) / (d.x * d.x + d.y * d.y);
  return at(2 * (a.x + s * d.x) - p.x, 2 * (a.y + s * d.y) - p.y);
}
/** Which side of the line through a and b: positive to its right as seen. */
const side = (p: Point, a: Point, b: Point): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

interface Mouth {
  readonly a: Point;
  readonly apex: Point;
  readonly b: Point;
}
const straightMouth: Mouth = { a: at(80, 0), apex: at(100, 120), b: at(120, 0) };

/** A skirt-like piece with a waist dart; the waist leans so that it runs straight on once the dart is closed. */
function skirt(pressed: Dart['pressed'], { a, apex, b }: Mouth = straightMouth, lean = 1): Piece {
  const slope = lean * Math.tan(Math.atan2(b.x - apex.x, apex.y - b.y));
  const left = at(0, a.y + slope * a.x),
    right = at(200, b.y + slope * (200 - b.x));
  return pieceOf([
    straightEdge('waist', left, a, { allowance: 15 }),
    dart('dart', a, apex, b, pressed),
    straightEdge('waist', b, right, { allowance: 15 }),
    straightEdge('side', right, at(200, 300), { allowance: 10 }),
    straightEdge('hem', at(200, 300), at(0, 300), { kind: 'hem', allowance: 10 }),
    straightEdge('centre', at(0, 300), left, { kind: 'fold' }),
  ]);
}
/** The same part travelled the other way. */
const turnedRound = (part: Edge | Dart): Edge | Dart =>
  part.type === 'edge'
    ? { ...part, path: reversedPath(part.path) }
    : { ...part, legs: [reversedPath(part.legs[1]), reversedPath(part.legs[0])] };
const mouthOf = (piece: Piece): Path => ({
  segments: cuttingLine(piece)
    .stretches.filter(s => s.of === 'dart')
    .flatMap(s => s.path.segments),
});
describe('the folded shape', () => {
  /**
   * Folds the paper and compares. `towards` is the mouth end whose side the intake lies on, `fold` the middle of the
   * mouth. A point of the half next to that end is folded once, one of the other half twice: both must then lie on
   * the cutting line beyond the leg.
   */
  function expectToLieFlat(piece: Piece, { a, apex, b }: Mouth, towards: 'a' | 'b'): void {
    const direction = (p: Point) => {
      const n = Math.hypot(p.x - apex.x, p.y - apex.y);
      return at((p.x - apex.x) / n, (p.y - apex.y) / n);
    };
    const ua = direction(a),
      ub = direction(b);
    const fold = at(apex.x + (ua.x + ub.x) * 10, apex.y + (ua.y + ub.y) * 10);
    const near = towards === 'a' ? a : b;
    const whole = cuttingLine(piece).path;
    const points = sampled(mouthOf(piece), 16).map(s => s.point);
    expect(points.length).toBeGreaterThan(30);
    let checked = 0;
    for (const p of points) {
      const onNearHalf = Math.sign(side(p, apex, fold)) === Math.sign(side(near, apex, fold));
      const first = onNearHalf ? p : folded(p, apex, fold);
      const beyond = folded(first, apex, near);
      // The run-on between the edge's end and the leg's line stays where it is.
      if (Math.sign(side(p, apex, near)) === Math.sign(side(beyond, near, apex)) * -1) continue;
      checked++;
      expect(distanceTo(whole, beyond).distance).toBeLessThan(1e-6);
    }
    expect(checked).toBeGreaterThan(15);
  }
  test.each(['start', 'end'] as const)('pressed towards its %s it lies flat on the edge', pressed => {
    expectToLieFlat(skirt(pressed), straightMouth, pressed === 'start' ? 'a' : 'b');
  });
  test('on a straight edge that runs on once closed it is a peak on the fold, both ways alike', () => {
    const start = mouthOf(skirt('start')),
      end = mouthOf(skirt('end')),
      open = mouthOf(skirt('open'));
    const top = (path: Path) => path.segments.flat().reduce((m, p) => (p.y < m.y ? p : m));
    for (const path of [start, end, open]) {
      expect(top(path).x).toBeCloseTo(100, 9);
      // Along the fold: as far from the apex as the leg's line meets the parallel, over cos of half the angle.
      const half = Math.atan(20 / 120),
        leg = Math.hypot(20, 120);
      expect(120 - top(path).y).toBeCloseTo((leg + 15) / Math.cos(half), 6);
    }
  });
  test('on a curved edge the image curves too', () => {
    const waist = arc(at(100, 500), 500, -101.5, -92.3),
      rest = arc(at(100, 500), 500, -87.7, -78.5);
    const a = waist.at(-1)![3],
      b = rest[0]![0],
      apex = at(100, 130);
    const piece = (pressed: Dart['pressed']) =>
      pieceOf([
        edge('waist', waist, { allowance: 15 }),
        dart('dart', a, apex, b, pressed),
        edge('waist', rest, { allowance: 15 }),
        straightEdge('side', rest.at(-1)![3], at(200, 300)),
        straightEdge('hem', at(200, 300), at(0, 300)),
        straightEdge('centre', at(0, 300), waist[0]![0]),
      ]);
    expectToLieFlat(piece('start'), { a, apex, b }, 'a');
    expectToLieFlat(piece('end'), { a, apex, b }, 'b');
  });
  test('a wide dart near a corner folds what lies beyond the corner with it', () => {
    const a = at(20, 0),
      apex = at(60, 100),
      b = at(100, 0);
    const piece = pieceOf([
      straightEdge('waist', at(0, 0), a, { allowance: 10 }),
      dart('dart', a, apex, b, 'start'),
      straightEdge('waist', b, at(200, 0), { allowance: 10 }),
      straightEdge('side', at(200, 0), at(200, 300)),
      straightEdge('hem', at(200, 300), at(0, 300)),
      straightEdge('left', at(0, 300), at(0, 0), { allowance: 10 }),
    ]);
    const { path, findings } = cuttingLine(piece);
    expect(largestGap(path)).toBeLessThan(1e-6);
    expect(polylineCrossings(path)).toEqual([]);
    expect(findings.map(f => f.code)).not.toContain('dart-mouth-bridged');
    expectToLieFlat(piece, { a, apex, b }, 'a');
  });
});

/** A level waist with a wider allowance beyond the dart: the folded shape and the parallel do not meet at B. */
const stepped = (pressed: Dart['pressed'] = 'start', left = 15, right = 25): Piece => {
  const { a, apex, b } = straightMouth;
  return pieceOf([
    straightEdge('left waist', at(0, 0), a, { allowance: left }),
    dart('dart', a, apex, b, pressed),
    straightEdge('right waist', b, at(200, 0), { allowance: right }),
    straightEdge('side', at(200, 0), at(200, 300)),
    straightEdge('hem', at(200, 300), at(0, 300)),
    straightEdge('centre', at(0, 300), at(0, 0), { kind: 'fold' }),
  ]);
};
test('where image and parallel do not meet, the step at B runs along the leg’s line and is a note', () => {
  const { apex, b } = straightMouth;
  const { findings, stretches } = cuttingLine(stepped());
  const onLeg = stretches
    .filter(s => s.shape === 'dart')
    .flatMap(s => s.path.segments)
    .filter(s => s.every(p => Math.abs(side(p, apex, b)) < 1e-6));
  expect(onLeg).toHaveLength(1);
  const [from, to] = onLeg[0]!;
  const step = 10 / Math.sin(Math.atan2(120, 20));
  expect(Math.hypot(to!.x - from!.x, to!.y - from!.y)).toBeCloseTo(step, 6);
  expect(findings.map(f => f.code)).toEqual(['dart-fold-step']);
  expect(findings[0]!.figures!.stepMm).toBeCloseTo(step, 6);
});
test('the fold of the intake is drawn from the point of the dart as far as the folded cloth reaches', () => {
  const { a, apex, b } = straightMouth;
  /** Where the image of a level line `depth` above the waist, in a leg's line, meets the fold at x = 100. */
  const onFold = (depth: number, end: Point): number => {
    const p = folded(at(end.x < 100 ? 0 : 200, -depth), apex, end),
      q = folded(at(end.x, -depth), apex, end);
    return p.y + ((100 - p.x) / (q.x - p.x)) * (q.y - p.y);
  };
  for (const [left, right] of [
    [15, 25],
    [25, 15],
    [6.35, 7],
  ] as const) {
    const fold = (pressed: Dart['pressed']) =>
      cuttingLine(stepped(pressed, left, right)).foldLines[0]!.segments[0]!;
    const [fromLeft, fromRight] = [onFold(left, a), onFold(right, b)];
    for (const [pressed, y] of [
      ['start', fromLeft],
      ['end', fromRight],
      ['open', Math.min(fromLeft, fromRight)],
    ] as const) {
      expect(fold(pressed)[0]).toEqual(apex);
      expect(fold(pressed)[1]!.x).toBeCloseTo(100, 9);
      expect(fold(pressed)[1]!.y).toBeCloseTo(y, 6);
    }
  }
});
test('the step is told where it is largest: at the fold of one that is pressed open, at the far leg of another', () => {
  const step = (pressed: Dart['pressed'], left: number, right: number) =>
    cuttingLine(stepped(pressed, left, right)).findings.map(f => [
      f.severity,
      f.code,
      f.where,
      f.figures!.stepMm,
    ]);
  const leg = Math.hypot(20, 120) / 120;
  const told = (mm: number) => [
    ['note', 'dart-fold-step', { piece: 'piece', edge: 'dart' }, expect.closeTo(mm, 6)],
  ];
  // Along the legs' lines, which lean by 20 in 120, two allowances lie farther apart than they differ.
  expect(step('start', 15, 25)).toEqual(told(10 * leg));
  expect(step('end', 15, 25)).toEqual(told(10 * leg));
  expect(step('end', 25, 15)).toEqual(told(10 * leg));
  expect(step('start', 15, 15)).toEqual([]);
  // 0.8 mm can be sewn away.
  expect(step('start', 15, 15.78)).toEqual([]);
  expect(step('start', 15, 15.8)).toEqual(told(0.8 * leg));
});
test('the edges on both sides of a step are told, and whether it is their allowances that differ', () => {
  const told = (piece: Piece) => cuttingLine(piece).findings.map(f => f.about);
  const step = (unlike: boolean) => ({
    dart: { piece: 'piece', dart: 'dart' },
    edges: ['left waist', 'right waist'].map(edge => ({ piece: 'piece', edge })),
    unlike,
  });
  expect(told(stepped('start', 15, 25))).toEqual([step(true)]);
  expect(told(stepped('start', 25, 15))).toEqual([step(true)]);
  // Of allowances alike, a mouth that slants: its right end 12 mm lower.
  const { parts } = stepped('start', 15, 15).outline;
  const [a, apex, b] = [at(80, 0), at(100, 120), at(120, 12)];
  const slanting = [
    ...parts.slice(0, 1),
    dart('dart', a, apex, b, 'start'),
    straightEdge('right waist', b, at(200, 0), { allowance: 15 }),
    ...parts.slice(3),
  ];
  expect(told(pieceOf(slanting))).toEqual([step(false)]);
});
test('angles that miss 180° alike on both sides leave no step', () => {
  const { findings, path } = cuttingLine(skirt('start', straightMouth, 0));
  expect(largestGap(path)).toBeLessThan(1e-9);
  expect(findings).toEqual([]);
});
test('an angle at A plus half the dart’s of 180° or more is a finding, and the mouth is bridged straight', () => {
  const a = at(80, 0),
    apex = at(100, 30),
    b = at(120, 0);
  const steep = pieceOf([
    straightEdge('waist', at(78, -160), a, { allowance: 10 }),
    dart('dart', a, apex, b, 'start'),
    straightEdge('waist', b, at(122, -160), { allowance: 10 }),
    straightEdge('top', at(122, -160), at(300, -160)),
    straightEdge('side', at(300, -160), at(300, 200)),
    straightEdge('hem', at(300, 200), at(-100, 200)),
    straightEdge('left', at(-100, 200), at(-100, -160)),
    straightEdge('top left', at(-100, -160), at(78, -160)),
  ]);
  const { findings, path } = cuttingLine(steep);
  expect(findings.map(f => f.code)).toContain('dart-mouth-bridged');
  expect(largestGap(path)).toBeLessThan(1e-6);
  expect(polylineCrossings(path)).toEqual([]);
  // The bridge over the mouth: its parallel, ten above it.
  expect(path.segments.some(s => s.every(p => Math.abs(p.y + 10) < 1e-9))).toBe(true);
});

test('of two whose mouths want more of the edge between them than there is, one is cut straight across', () => {
  // Each leg leans out by 20 in 120: over an allowance of 15 it takes 2.5 of the edge between the two.
  const besides = (gap: number, [first, second]: readonly Dart['pressed'][] = ['start', 'end']): Piece => {
    const far = 120 + gap;
    return pieceOf([
      straightEdge('left waist', at(0, 0), at(80, 0), { allowance: 15 }),
      dart('one', at(80, 0), at(100, 120), at(120, 0), first),
      straightEdge('between', at(120, 0), at(far, 0), { allowance: 15 }),
      dart('two', at(far, 0), at(far + 20, 120), at(far + 40, 0), second),
      straightEdge('right waist', at(far + 40, 0), at(300, 0), { allowance: 15 }),
      straightEdge('side', at(300, 0), at(300, 300)),
      straightEdge('hem', at(300, 300), at(0, 300)),
      straightEdge('centre', at(0, 300), at(0, 0)),
    ]);
  };
  const bridged = (gap: number, pressed?: readonly Dart['pressed'][]) =>
    cuttingLine(besides(gap, pressed))
      .findings.filter(f => f.code === 'dart-mouth-bridged')
      .map(f => f.where.edge);
  expect(bridged(4.9)).toEqual(['two']);
  expect(bridged(5.1)).toEqual([]);
  // Nor does an intake of 40 find its shape on the 8 between them.
  expect(bridged(8, ['start', 'start'])).toEqual(['two']);
  expect(bridged(8, ['end', 'end'])).toEqual(['one']);
  expect(bridged(8, ['open', 'open'])).toEqual(['one', 'two']);
  for (const gap of [4.9, 5.1]) {
    const { path } = cuttingLine(besides(gap));
    expect(largestGap(path)).toBeLessThan(1e-6);
    expect(polylineCrossings(path)).toEqual([]);
  }
});

test('one with no edge beside it is cut straight across', () => {
  const mouth = { type: 'pleat', name: 'pleat', kind: 'knife', towards: 'start', stitched: 0 } as const;
  const pleat = (from: Point, to: Point) => ({ ...mouth, mouth: { segments: [[from, to]] } }) as const;
  const waist = (...between: Parameters<typeof pieceOf>[0]) =>
    pieceOf([
      straightEdge('left waist', at(0, 0), at(80, 0), { allowance: 15 }),
      ...between,
      straightEdge('right waist', at(160, 0), at(300, 0), { allowance: 15 }),
      straightEdge('side', at(300, 0), at(300, 300)),
      straightEdge('hem', at(300, 300), at(0, 300)),
      straightEdge('centre', at(0, 300), at(0, 0)),
    ]);
  const [one, two] = [
    dart('one', at(80, 0), at(100, 120), at(120, 0)),
    dart('two', at(120, 0), at(140, 120), at(160, 0)),
  ];
  for (const piece of [
    waist(one, two),
    waist(one, pleat(at(120, 0), at(160, 0))),
    waist(pleat(at(80, 0), at(120, 0)), two),
  ]) {
    const { path } = cuttingLine(piece);
    expect(polylineCrossings(path)).toEqual([]);
    // Over both mouths the line runs level, 15 above the waist.
    for (const { point } of sampled(path, 4))
      if (point.x > 80 && point.x < 160 && point.y < 100) expect(point.y).toBeCloseTo(-15, 9);
  }
});

describe('pressed by default', () => {
  const pressedAs = (piece: Piece): string => {
    const shape = (p: Dart['pressed']) => JSON.stringify(cuttingLine(withPressed(piece, p)).path);
    const own = JSON.stringify(cuttingLine(piece).path);
    return (['start', 'end', 'open'] as const).filter(p => shape(p) === own).join();
  };
  const withPressed = (piece: Piece, pressed: Dart['pressed']): Piece => ({
    ...piece,
    outline: { parts: piece.outline.parts.map(p => (p.type === 'dart' ? { ...p, pressed: pressed! } : p)) },
  });
  /** Different on both sides of the dart, so that the three ways of pressing differ. */
  const uneven = (lines: Piece['lines'], mirrored = false): Piece => {
    const { a, apex, b } = straightMouth;
    const kinds = mirrored ? (['seam', 'fold'] as const) : (['fold', 'seam'] as const);
    const right = at(200, 0);
    return pieceOf(
      [
        straightEdge('left waist', at(0, 10), a, { allowance: 15 }),
        dart('dart', a, apex, b),
        straightEdge('right waist', b, right, { allowance: 20 }),
        straightEdge('side', right, at(200, 300), { kind: kinds[1] }),
        straightEdge('hem', at(200, 300), at(0, 300)),
        straightEdge('inner', at(0, 300), at(0, 10), { kind: kinds[0] }),
      ],
      lines,
    );
  };
  const upright = grain(at(50, 280), at(50, 80)),
    level = grain(at(20, 200), at(120, 200));
  test('a waist dart goes towards the fold', () => {
    expect(pressedAs(uneven([upright]))).toBe('start');
    expect(pressedAs(uneven([upright], true))).toBe('end');
  });
  test('a dart square to the grain goes down', () => {
    // On a level grain the waist dart lies square to it; "down" is then the way the grain was drawn.
    expect(pressedAs(uneven([level]))).toBe('end');
    expect(pressedAs(uneven([grain(at(120, 200), at(20, 200))]))).toBe('start');
    // Wherever its fold is.
    expect(pressedAs(uneven([level], true))).toBe('end');
    expect(pressedAs(uneven([grain(at(120, 200), at(20, 200))], true))).toBe('start');
  });
  test('a side dart of an upright piece goes to its lower leg', () => {
    const a = at(200, 100),
      apex = at(80, 120),
      b = at(200, 140);
    const piece = pieceOf(
      [
        straightEdge('top', at(0, 0), at(200, 0)),
        straightEdge('side', at(200, 0), a, { allowance: 15 }),
        dart('dart', a, apex, b),
        straightEdge('lower side', b, at(210, 300), { allowance: 20 }),
        straightEdge('hem', at(210, 300), at(0, 300)),
        straightEdge('centre', at(0, 300), at(0, 0), { kind: 'fold' }),
      ],
      [upright],
    );
    expect(pressedAs(piece)).toBe('end');
    // Down is down the page where no grain is drawn.
    expect(pressedAs({ ...piece, lines: [] })).toBe('end');
  });
  test('and so does one on the other side', () => {
    const [a, apex, b] = [at(0, 140), at(120, 120), at(0, 100)];
    const piece = pieceOf(
      [
        straightEdge('top', at(0, 0), at(200, 0)),
        straightEdge('centre', at(200, 0), at(200, 300), { kind: 'fold' }),
        straightEdge('hem', at(200, 300), at(-10, 300)),
        straightEdge('lower side', at(-10, 300), a, { allowance: 20 }),
        dart('dart', a, apex, b),
        straightEdge('side', b, at(0, 0), { allowance: 15 }),
      ],
      [upright],
    );
    expect(pressedAs(piece)).toBe('start');
  });
  test('on a slanting grain it goes down that grain, whichever way its line was drawn', () => {
    // Its axis falls by 40 degrees; the grain by 60 to the left: 80 degrees to it. By the page alone it would not go down.
    const axis = at(Math.cos((40 * Math.PI) / 180), Math.sin((40 * Math.PI) / 180));
    const on = (mm: number) => at(300 - axis.y * mm, 60 + axis.x * mm);
    const [a, b, end] = [on(80), on(120), on(200)];
    const middle = on(100);
    const piece = (lines: Piece['lines']) =>
      pieceOf(
        [
          straightEdge('top', at(0, 0), on(0)),
          straightEdge('side', on(0), a, { allowance: 15 }),
          dart('dart', a, at(middle.x - 90 * axis.x, middle.y - 90 * axis.y), b),
          straightEdge('lower side', b, end, { allowance: 20 }),
          straightEdge('hem', end, at(0, 400)),
          straightEdge('inner', at(0, 400), at(0, 0)),
        ],
        lines,
      );
    const [low, high] = [at(40, 40 + 100 * Math.sqrt(3)), at(140, 40)];
    expect(pressedAs(piece([grain(low, high)]))).toBe('end');
    expect(pressedAs(piece([grain(high, low)]))).toBe('end');
    // Along an upright grain it goes down as well; along one that falls to the right it does not, and has no centre to go to.
    expect(pressedAs(piece([upright]))).toBe('end');
    expect(pressedAs(piece([]))).toBe('end');
    expect(pressedAs(piece([grain(at(40, 40), at(140, 40 + 100 * Math.sqrt(3)))]))).toBe('start');
  });
  test('without a fold or a centre it goes to the leg met first', () => {
    const piece = uneven([upright]);
    const parts = piece.outline.parts.map(p =>
      p.type === 'edge' && p.kind === 'fold' ? { ...p, kind: 'seam' as const } : p,
    );
    expect(pressedAs({ ...piece, outline: { parts } })).toBe('start');
  });
  test('an edge named centre stands for the fold', () => {
    const piece = uneven([upright]);
    const parts = piece.outline.parts.map(p =>
      p.type === 'edge' && p.name === 'inner'
        ? { ...p, kind: 'seam' as const }
        : p.type === 'edge' && p.name === 'side'
          ? { ...p, name: 'centre back' }
          : p,
    );
    expect(pressedAs({ ...piece, outline: { parts } })).toBe('end');
  });
});

describe('degenerate darts', () => {
  test.each([
    ['very thin', { a: at(99.999, 0), apex: at(100, 120), b: at(100.001, 0) }],
    ['very wide', { a: at(30, 0), apex: at(100, 60), b: at(170, 0) }],
    ['very short', { a: at(80, 0), apex: at(100, 2), b: at(120, 0) }],
    ['closed', { a: at(100, 0), apex: at(100, 120), b: at(100, 0) }],
  ])('a %s dart leaves a simple closed line', (_, mouth) => {
    for (const pressed of ['start', 'end', 'open'] as const)
      for (const lean of [0, 0.2]) {
        const { path } = cuttingLine(skirt(pressed, mouth as Mouth, lean));
        expect(largestGap(path)).toBeLessThan(1e-6);
        expect(polylineCrossings(path)).toEqual([]);
      }
  });
  test('one all but closed is cut as if there were none', () => {
    // Its halves are no longer than two points that are one.
    for (const pressed of ['start', 'end', 'open'] as const) {
      const mouth = { a: at(100 - 7e-7, 0), apex: at(100, 120), b: at(100 + 7e-7, 0) };
      const { path, findings } = cuttingLine(skirt(pressed, mouth, 0));
      expect(findings).toEqual([]);
      for (const { point } of sampled(path, 3))
        expect(
          Math.min(
            Math.abs(point.y + 15),
            Math.abs(point.y - 310),
            Math.abs(point.x - 210),
            Math.abs(point.x),
          ),
        ).toBeLessThan(1e-5);
    }
  });
  test('beside an edge with a corner in it, it is the part next to the mouth that counts', () => {
    // From a stand-up end along the leg's own direction, with which no mouth could be folded, level up to the mouth.
    const right: readonly Segment[] = [
      [at(110, 0), at(200, 0)],
      [at(200, 0), at(200, -60)],
    ];
    const level = { allowance: 10 };
    const piece = (isLeft: boolean): Piece => {
      const image = (p: Point): Point => (isLeft ? at(200 - p.x, p.y) : p);
      const parts = [
        straightEdge('left', image(at(0, 0)), image(at(90, 0)), level),
        dart('dart', image(at(90, 0)), image(at(100, 90)), image(at(110, 0)), 'open'),
        edge(
          'right',
          right.map(([p, q]) => [image(p), image(q!)] as const),
          level,
        ),
        straightEdge('side', image(at(200, -60)), image(at(260, -60)), level),
        straightEdge('back', image(at(260, -60)), image(at(260, 200)), level),
        straightEdge('foot', image(at(260, 200)), image(at(0, 200)), level),
        straightEdge('end', image(at(0, 200)), image(at(0, 0)), level),
      ];
      return pieceOf(isLeft ? [...parts].reverse().map(turnedRound) : parts);
    };
    for (const isLeft of [true, false]) {
      const { findings, stretches } = cuttingLine(piece(isLeft));
      expect(findings.map(f => f.code)).toEqual([]);
      expect(stretches.filter(s => s.shape === 'dart')).toHaveLength(1);
    }
  });
  test('two darts side by side are both folded', () => {
    const piece = pieceOf([
      straightEdge('waist', at(0, 0), at(60, 0), { allowance: 12 }),
      dart('one', at(60, 0), at(70, 90), at(80, 0)),
      straightEdge('waist', at(80, 0), at(120, 0), { allowance: 12 }),
      dart('two', at(120, 0), at(130, 90), at(140, 0)),
      straightEdge('waist', at(140, 0), at(200, 0), { allowance: 12 }),
      straightEdge('side', at(200, 0), at(200, 200)),
      straightEdge('hem', at(200, 200), at(0, 200)),
      straightEdge('centre', at(0, 200), at(0, 0), { kind: 'fold' }),
    ]);
    const { path, stretches, foldLines } = cuttingLine(piece);
    expect(new Set(stretches.filter(s => s.shape === 'dart').map(s => s.of))).toEqual(
      new Set(['one', 'two']),
    );
    expect(foldLines).toHaveLength(2);
    expect(polylineCrossings(path)).toEqual([]);
  });
});

describe('darts of any shape', () => {
  const any = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const pressed = fc.constantFrom('start' as const, 'end' as const, 'open' as const);
  const allowance = fc.constantFrom(0, 6.35, 15.875, 25);
  const expectSimple = (piece: Piece): void => {
    const { path, findings } = cuttingLine(piece);
    expect(findings.filter(f => f.severity === 'fault')).toEqual([]);
    expect(largestGap(path)).toBeLessThan(1e-6);
    expect(polylineCrossings(path)).toEqual([]);
  };
  test('leave the cutting line closed and simple', () => {
    fc.assert(
      fc.property(
        any(30, 120),
        any(0.5, 60),
        any(20, 180),
        any(-60, 60),
        any(-40, 40),
        any(-40, 40),
        fc.tuple(allowance, allowance, pressed),
        (start, width, depth, sideways, left, right, [a, b, towards]) => {
          const from = at(start, 0),
            to = at(start + width, 0),
            apex = at(start + width / 2 + sideways, depth);
          expectSimple(
            pieceOf([
              edge('left', [[at(0, left), at(start / 3, left), at((2 * start) / 3, 0), from]], {
                allowance: a,
              }),
              dart('dart', from, apex, to, towards),
              edge('right', [[to, at(start + width + 30, 0), at(220, right), at(260, right)]], {
                allowance: b,
              }),
              straightEdge('side', at(260, right), at(260, 320)),
              straightEdge('hem', at(260, 320), at(0, 320), { kind: 'hem', allowance: 25 }),
              straightEdge('centre', at(0, 320), at(0, left), { kind: 'fold' }),
            ]),
          );
        },
      ),
      { numRuns: 200 },
    );
  });
  test('so do two whose mouths all but touch', () => {
    fc.assert(
      fc.property(
        any(0.01, 12),
        any(5, 40),
        any(-30, 30),
        fc.tuple(pressed, pressed, allowance),
        (gap, width, lean, [p, q, d]) => {
          const x = 80,
            y = x + width,
            z = y + gap,
            w = z + width;
          expectSimple(
            pieceOf([
              straightEdge('waist', at(0, 0), at(x, 0), { allowance: d }),
              dart('one', at(x, 0), at((x + y) / 2 + lean, 90), at(y, 0), p),
              straightEdge('waist', at(y, 0), at(z, 0), { allowance: d }),
              dart('two', at(z, 0), at((z + w) / 2 + 40 + lean, 90), at(w, 0), q),
              straightEdge('waist', at(w, 0), at(300, 0), { allowance: d }),
              straightEdge('side', at(300, 0), at(300, 200)),
              straightEdge('hem', at(300, 200), at(0, 200)),
              straightEdge('centre', at(0, 200), at(0, 0), { kind: 'fold' }),
            ]),
          );
        },
      ),
      { numRuns: 150 },
    );
  });
});
