import {
  type CuttingLine,
  cuttingLine,
  type Edge,
  type Finding,
  type OutlinePart,
  type Path,
  type Piece,
  type Pleat,
  pathLength,
} from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { joined, nearestOnPath, reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { sampled } from './independent.js';
import { arc, at, dart, edge, pieceOf, polygon, straightEdge } from './pieces.js';

// Nobody who cuts cloth cares where a drawing program began its outline, nor on which side of the fabric it lies: on
// pieces where something is hard about corners, folds, darts, slots and bends, nothing may hang on either.

const pleat = (kind: Pleat['kind'], towards: Pleat['towards'], from: number, to: number): Pleat => ({
  type: 'pleat',
  name: `${kind} pleat`,
  kind,
  mouth: { segments: [[at(from, 0), at(to, 0)]] },
  towards,
  stitched: 40,
});
const box = [
  straightEdge('side', at(300, 0), at(310, 260), { allowance: 14 }),
  straightEdge('hem', at(310, 260), at(0, 260), { kind: 'hem', allowance: 30 }),
  straightEdge('centre', at(0, 260), at(0, 0), { kind: 'fold' }),
];

const gallery: Readonly<Record<string, Piece>> = {
  'a neck that dips to a fold, a hem that points there': pieceOf([
    straightEdge('neck', at(0, 80), at(70, 0), { allowance: 7 }),
    straightEdge('shoulder', at(70, 0), at(190, 40), { allowance: 15, end: 'pressed-open' }),
    edge('armhole', [[at(190, 40), at(170, 110), at(180, 160), at(240, 180)]], { allowance: 10 }),
    straightEdge('side', at(240, 180), at(260, 400), { allowance: 16 }),
    straightEdge('hem', at(260, 400), at(0, 520), { kind: 'hem', allowance: 25 }),
    straightEdge('centre', at(0, 520), at(0, 80), { kind: 'fold' }),
  ]),
  'a sleeve, its hem turned up, its cap pressed open': pieceOf([
    edge('cap', [[at(0, 100), at(60, 0), at(190, 0), at(250, 110)]], {
      allowance: 10,
      start: 'pressed-open',
      end: 'pressed-open',
    }),
    straightEdge('right', at(250, 110), at(230, 400), { allowance: 15 }),
    straightEdge('hem', at(230, 400), at(20, 390), { kind: 'hem', allowance: 25 }),
    straightEdge('left', at(20, 390), at(0, 100), { allowance: 12 }),
  ]),
  'obtuse corners pressed open, one at each end': polygon(
    [at(0, 0), at(200, 0), at(270, 90), at(260, 240), at(60, 250), at(-60, 120)],
    i => ({
      allowance: [15, 10, 12, 8, 20, 9][i]!,
      ...(i === 0 ? { end: 'pressed-open' as const } : {}),
      ...(i === 3 ? { start: 'pressed-open' as const } : {}),
      ...(i === 5 ? { start: 'turned-up' as const } : {}),
    }),
  ),
  'a V too narrow at the fold': pieceOf([
    straightEdge('neck', at(0, 120), at(9, 0), { allowance: 12 }),
    straightEdge('shoulder', at(9, 0), at(190, 40), { allowance: 12 }),
    straightEdge('side', at(190, 40), at(210, 300), { allowance: 10 }),
    straightEdge('hem', at(210, 300), at(0, 300), { kind: 'hem', allowance: 20 }),
    straightEdge('centre', at(0, 300), at(0, 120), { kind: 'fold' }),
  ]),
  'darts pressed either way and open': pieceOf([
    straightEdge('waist', at(0, 0), at(50, 2), { allowance: 12 }),
    dart('one', at(50, 2), at(62, 90), at(74, 3), 'start'),
    straightEdge('waist', at(74, 3), at(130, 0), { allowance: 12 }),
    dart('two', at(130, 0), at(146, 110), at(154, 1), 'open'),
    straightEdge('yoke', at(154, 1), at(210, 4), { allowance: 18 }),
    dart('three', at(210, 4), at(225, 70), at(232, 5), 'end'),
    straightEdge('yoke', at(232, 5), at(300, 0), { allowance: 18 }),
    ...box,
  ]),
  'two darts whose mouths want more of the edge between them than there is': pieceOf([
    straightEdge('waist', at(0, 0), at(80, 0), { allowance: 25 }),
    dart('one', at(80, 0), at(105, 60), at(130, 0), 'end'),
    straightEdge('waist', at(130, 0), at(134, 0), { allowance: 25 }),
    dart('two', at(134, 0), at(160, 60), at(186, 0), 'start'),
    straightEdge('waist', at(186, 0), at(300, 0), { allowance: 25 }),
    ...box,
  ]),
  'pleats of all kinds': pieceOf([
    straightEdge('waist', at(0, 10), at(40, 0), { allowance: 12 }),
    pleat('knife', 'start', 40, 64),
    straightEdge('waist', at(64, 0), at(120, 0), { allowance: 12 }),
    pleat('box', 'start', 120, 160),
    straightEdge('waist', at(160, 0), at(220, 0), { allowance: 12 }),
    pleat('inverted', 'start', 220, 250),
    straightEdge('waist', at(250, 0), at(300, -6), { allowance: 12 }),
    straightEdge('side', at(300, -6), at(310, 260), { allowance: 14 }),
    straightEdge('hem', at(310, 260), at(0, 260), { kind: 'hem', allowance: 30 }),
    straightEdge('left', at(0, 260), at(0, 10), { allowance: 8 }),
  ]),
  'a slot narrower than its allowances': polygon(
    [at(0, 0), at(94, 0), at(96, 80), at(106, 84), at(109, 0), at(200, 0), at(200, 150), at(0, 150)],
    i => ({ allowance: [10, 9, 7, 8, 12, 10, 15, 6][i]! }),
  ),
  'a keyhole that its mouth closes': pieceOf([
    edge('top', [
      [at(0, 0), at(95, 0)],
      [at(95, 0), at(95, 20)],
      ...arc(at(100, 60), Math.hypot(5, 40), -97.125, -442.875),
      [at(105, 20), at(105, 0)],
      [at(105, 0), at(200, 0)],
    ]),
    straightEdge('right', at(200, 0), at(200, 200)),
    straightEdge('foot', at(200, 200), at(0, 200)),
    straightEdge('left', at(0, 200), at(0, 0)),
  ]),
  'a rounded notch tighter than its allowance, its sides narrower': pieceOf([
    straightEdge('left side', at(60, 0), at(192, 100), { allowance: 6 }),
    edge('bend', arc(at(195.0, 96), 5, 126.9, 40), { allowance: 15 }),
    straightEdge('right side', at(195 + 5 * Math.cos(0.698), 96 + 5 * Math.sin(0.698)), at(300, 0), {
      allowance: 8,
    }),
    straightEdge('right', at(300, 0), at(320, 300), { allowance: 10 }),
    straightEdge('foot', at(320, 300), at(40, 300), { allowance: 10 }),
    straightEdge('left', at(40, 300), at(60, 0), { allowance: 10 }),
  ]),
  'a rounded notch with a narrower side on one side only': pieceOf([
    straightEdge('left side', at(60, 0), at(192, 100), { allowance: 15 }),
    edge('bend', arc(at(195.0, 96), 5, 126.9, 40), { allowance: 15 }),
    straightEdge('right side', at(195 + 5 * Math.cos(0.698), 96 + 5 * Math.sin(0.698)), at(300, 0), {
      allowance: 6,
    }),
    straightEdge('right', at(300, 0), at(320, 300), { allowance: 10 }),
    straightEdge('foot', at(320, 300), at(40, 300), { allowance: 10 }),
    straightEdge('left', at(40, 300), at(60, 0), { allowance: 10 }),
  ]),
  'a dart between edges that have corners of their own': pieceOf([
    edge(
      'waist',
      [
        [at(30, -120), at(40, 0)],
        [at(40, 0), at(120, 0)],
      ],
      { allowance: 9 },
    ),
    dart('d', at(120, 0), at(140, 110), at(160, 0), 'open'),
    edge(
      'yoke',
      [
        [at(160, 0), at(230, 0)],
        [at(230, 0), at(260, -100)],
      ],
      { allowance: 12 },
    ),
    straightEdge('side', at(260, -100), at(310, 260), { allowance: 14 }),
    straightEdge('hem', at(310, 260), at(0, 260), { kind: 'hem', allowance: 30 }),
    straightEdge('left', at(0, 260), at(30, -120), { allowance: 10 }),
  ]),
  'spikes and slits of unlike allowances': polygon(
    [at(0, 0), at(60, 40), at(120, 0), at(150, 4), at(260, 10), at(150, 30), at(160, 120), at(20, 130)],
    i => ({ allowance: [7, 15, 10, 25, 12, 6, 20, 10][i]! }),
  ),
  'one that lies on both sides of its fold': pieceOf([
    straightEdge('top', at(0, 0), at(100, 0), { allowance: 8 }),
    straightEdge('right', at(100, 0), at(100, 200)),
    straightEdge('foot', at(100, 200), at(-50, 200), { allowance: 12 }),
    straightEdge('left', at(-50, 200), at(-50, 100)),
    straightEdge('step', at(-50, 100), at(0, 100), { allowance: 6 }),
    straightEdge('fold', at(0, 100), at(0, 0), { kind: 'fold' }),
  ]),
};

const begunAt = (piece: Piece, k: number): Piece => {
  const { parts } = piece.outline;
  return { ...piece, outline: { parts: [...parts.slice(k), ...parts.slice(0, k)] } };
};

/** x turned round. */
const across = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
const turnedRound = (path: Path): Path => reversedPath(transformedPath(path, across));
const otherEnd = <T extends string>(towards: T): T =>
  (towards === 'start' ? 'end' : towards === 'end' ? 'start' : towards) as T;
function mirroredPart(part: OutlinePart): OutlinePart {
  if (part.type === 'pleat')
    return { ...part, mouth: turnedRound(part.mouth), towards: otherEnd(part.towards) };
  if (part.type === 'dart') {
    const [first, second] = part.legs;
    return {
      ...part,
      legs: [turnedRound(second), turnedRound(first)],
      apex: at(-part.apex.x, part.apex.y),
      ...(part.pressed ? { pressed: otherEnd(part.pressed) } : {}),
    };
  }
  const { start, end } = part.corners;
  return {
    ...part,
    path: turnedRound(part.path),
    corners: { ...(end ? { start: end } : {}), ...(start ? { end: start } : {}) },
  };
}
const mirrored = (piece: Piece): Piece => ({
  ...piece,
  outline: { parts: [...piece.outline.parts].reverse().map(mirroredPart) },
});

/** What is told, its figures to the micrometre, in no order. */
const told = (findings: readonly Finding[]): readonly string[] =>
  findings
    .map(({ severity, code, where, figures }) => {
      const rounded = Object.entries(figures ?? {}).map(([k, v]) => `${k} ${(v as number).toFixed(2)}`);
      return [severity, code, where.edge, ...rounded.sort()].join(' ');
    })
    .sort();
const lengthsByPart = ({ stretches }: CuttingLine): ReadonlyMap<string, number> => {
  const lengths = new Map<string, number>();
  for (const { of, shape, path } of stretches)
    lengths.set(`${of} ${shape}`, (lengths.get(`${of} ${shape}`) ?? 0) + pathLength(path));
  return lengths;
};
const farthest = (from: Path, to: Path): number =>
  Math.max(...sampled(from, 3).map(({ point }) => nearestOnPath(to, point).distance));

function expectAlike(one: CuttingLine, other: CuttingLine, image: (path: Path) => Path = path => path): void {
  expect(Math.max(farthest(image(one.path), other.path), farthest(other.path, image(one.path)))).toBeLessThan(
    0.01,
  );
  expect(Math.abs(signedArea(one.path) - signedArea(other.path))).toBeLessThan(0.5);
  expect(told(other.findings)).toEqual(told(one.findings));
  const [a, b] = [lengthsByPart(one), lengthsByPart(other)];
  expect([...b.keys()].sort()).toEqual([...a.keys()].sort());
  for (const [part, length] of a) expect(Math.abs(b.get(part)! - length)).toBeLessThan(0.02);
  for (const marks of ['snips', 'foldLines'] as const) {
    expect(other[marks]).toHaveLength(one[marks].length);
    for (const mark of one[marks])
      expect(
        Math.min(
          ...other[marks].map(m => Math.max(farthest(image(mark), m), farthest(m, image(mark)))),
          Number.POSITIVE_INFINITY,
        ),
      ).toBeLessThan(0.01);
  }
}

describe.each(Object.entries(gallery))('%s', (_, piece) => {
  test('is cut the same wherever its outline is begun', () => {
    const line = cuttingLine(piece);
    for (let k = 1; k < piece.outline.parts.length; k++) expectAlike(line, cuttingLine(begunAt(piece, k)));
  });
  test('seen in a mirror is cut as its image', () => {
    expectAlike(cuttingLine(piece), cuttingLine(mirrored(piece)), path => transformedPath(path, across));
  });
});

/** The cutting line as somebody might draw it: each edge's stretches as its path. */
function drawn(piece: Piece): readonly OutlinePart[] {
  const ring = [...cuttingLine(piece).stretches];
  while (ring[0]!.of === ring.at(-1)!.of) ring.unshift(ring.pop()!);
  const parts: Edge[] = [];
  for (const { of, path } of ring) {
    const last = parts.at(-1);
    if (last?.name === of) parts[parts.length - 1] = { ...last, path: joined(last.path, path) };
    else {
      const own = piece.outline.parts.find(p => p.name === of) as Edge;
      parts.push({ ...own, path });
    }
  }
  return parts;
}

describe.each(
  [
    'a neck that dips to a fold, a hem that points there',
    'a sleeve, its hem turned up, its cap pressed open',
    'obtuse corners pressed open, one at each end',
    'spikes and slits of unlike allowances',
    'one that lies on both sides of its fold',
  ].map(name => [name, gallery[name]!] as const),
)('%s', (_, piece) => {
  const back = (parts: readonly OutlinePart[]) => stitchingLine(parts, e => e.allowance);
  const allPaths = (parts: readonly OutlinePart[]) =>
    new Map(parts.map(p => [p.name, (p as Edge).path] as const));
  const expectSame = (
    one: ReturnType<typeof back>,
    other: ReturnType<typeof back>,
    image: (path: Path) => Path = path => path,
  ) => {
    expect(told(other.findings)).toEqual(told(one.findings));
    const paths = allPaths(other.parts);
    for (const [name, path] of allPaths(one.parts))
      expect(
        Math.max(farthest(image(path), paths.get(name)!), farthest(paths.get(name)!, image(path))),
      ).toBeLessThan(0.01);
  };
  test('comes back from its cutting line the same wherever that is begun, and in a mirror', () => {
    const parts = drawn(piece);
    const one = back(parts);
    for (let k = 1; k < parts.length; k++) expectSame(one, back([...parts.slice(k), ...parts.slice(0, k)]));
    expectSame(one, back([...parts].reverse().map(mirroredPart)), path => transformedPath(path, across));
  });
});
