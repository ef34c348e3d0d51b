import {
  cuttingLine,
  type Edge,
  type OutlinePart,
  type Path,
  type Piece,
  type Pleat,
  type Point,
} from '@paperhinge/geometry';
import { stitchingLine } from '@paperhinge/geometry/cutting-line';
import { reversedPath, transformedPath } from '@paperhinge/geometry/paths';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { anyPiece } from './any-piece.js';
import { cutOf } from './cut-of.js';
import { distanceTo, edgesOf, sampled } from './independent.js';
import { arc, at, dart, edge, pieceOf, polygon, rectangle, straightEdge } from './pieces.js';

// What was drawn on its cutting line, each corner of it in closed form.

const tenIn = (parts: readonly OutlinePart[]) => stitchingLine(parts, () => 10);
const mirrored = (parts: readonly OutlinePart[]): readonly OutlinePart[] =>
  [...(parts as readonly Edge[])].reverse().map(part => ({
    ...part,
    path: reversedPath(transformedPath(part.path, { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 })),
  }));
/** The same places in the order of a piece that is turned over. */
const mirroredEdges = (parts: readonly Edge[]): readonly Edge[] =>
  [...parts].reverse().map(part => ({ ...part, path: reversedPath(part.path) }));
const named = (parts: readonly OutlinePart[], name: string): Path => {
  const part = parts.find(p => p.name === name)!;
  return part.type === 'edge' ? part.path : part.type === 'pleat' ? part.mouth : part.legs[0];
};
const pathEnds = ({ segments }: Path): readonly (readonly number[])[] =>
  [segments[0]![0], segments.at(-1)!.at(-1)!].map(({ x, y }) =>
    [x, y].map(v => Math.round(v * 1e6) / 1e6 + 0),
  );

describe('a curve that was cut short at an inner corner', () => {
  /** Its last direction is straight down, to (100, 100), where the next edge leaves to the right. */
  const stepped = (radius: number): readonly OutlinePart[] => {
    const degrees = (Math.asin(100 / radius) * 180) / Math.PI;
    const curve = arc(at(100 + radius, 100), radius, 180 + degrees, 180);
    return [
      straightEdge('top', at(0, 0), curve[0]![0]),
      edge('curve', curve),
      straightEdge('ledge', at(100, 100), at(300, 100)),
      straightEdge('right', at(300, 100), at(300, 250)),
      straightEdge('foot', at(300, 250), at(0, 250)),
      straightEdge('left', at(0, 250), at(0, 0)),
    ];
  };
  test('is run on straight to its neighbour', () => {
    for (const [parts, x] of [
      [stepped(1000), 90],
      [mirrored(stepped(1000)), -90],
    ] as const) {
      const ends = [
        ...pathEnds(named(tenIn(parts).parts, 'curve')),
        ...pathEnds(named(tenIn(parts).parts, 'ledge')),
      ];
      expect(ends.filter(([px, py]) => px === x && py === 110)).toHaveLength(2);
    }
  });
  test.each([
    [480, true],
    [500, false],
  ])('of radius %d mm: is the corner 10 mm on told for a guess? %s', (radius, isGuess) => {
    // Moved in, the radius is 10 mm more; in 10 mm it leaves its tangent by 50 / radius: seen from 0.1 mm on.
    for (const parts of [stepped(radius), mirrored(stepped(radius))]) {
      const told = tenIn(parts).findings.map(f => [f.severity, f.code, f.figures?.lengthMm]);
      expect(told).toEqual(isGuess ? [['warning', 'corner-guessed', expect.closeTo(10, 3)]] : []);
    }
  });
  test('straight, it is no guess', () => {
    const straight = stepped(1000).map(p =>
      p.name === 'curve' ? straightEdge('curve', at(105, 0), at(100, 100)) : p,
    );
    const parts = straight.map(p => (p.name === 'top' ? straightEdge('top', at(0, 0), at(105, 0)) : p));
    expect(tenIn(parts).findings).toEqual([]);
  });
});

test('two edges in one line with unlike allowances never meet: the corner is not recovered, and both are named', () => {
  const parts = [
    straightEdge('first', at(0, 0), at(100, 0)),
    straightEdge('second', at(100, 0), at(200, 0)),
    straightEdge('right', at(200, 0), at(200, 150)),
    straightEdge('foot', at(200, 150), at(0, 150)),
    straightEdge('left', at(0, 150), at(0, 0)),
  ];
  const { findings } = stitchingLine(parts, e => (e.name === 'second' ? 20 : 10));
  expect(findings.map(f => [f.severity, f.code, f.where, f.about])).toEqual([
    [
      'warning',
      'corner-not-recovered',
      { edge: 'first' },
      { edges: [{ edge: 'first' }, { edge: 'second' }] },
    ],
  ]);
});

test('the point of a sharp slash is found 10 / sin of half its angle below that of its cutting line', () => {
  for (const degrees of [7, 12, 30]) {
    const half = (degrees / 2) * (Math.PI / 180);
    const point = at(150, 90),
      up = 90 * Math.tan(half);
    const parts = [
      straightEdge('top', at(0, 0), at(150 - up, 0)),
      straightEdge('down', at(150 - up, 0), point),
      straightEdge('back', point, at(150 + up, 0)),
      straightEdge('rest', at(150 + up, 0), at(300, 0)),
      straightEdge('right', at(300, 0), at(300, 600)),
      straightEdge('foot', at(300, 600), at(0, 600)),
      straightEdge('left', at(0, 600), at(0, 0)),
    ];
    const back = tenIn(parts);
    expect(back.findings).toEqual([]);
    const [, end] = pathEnds(named(back.parts, 'down'));
    expect(end![0]).toBeCloseTo(150, 6);
    expect(end![1]).toBeCloseTo(90 + 10 / Math.sin(half), 5);
  }
});

test('raw edges and folds were drawn without an allowance', () => {
  for (const kind of ['raw', 'fold'] as const) {
    const piece = polygon(rectangle(120, 80), i => ({ kind: i === 3 ? kind : 'seam' }));
    const { parts } = tenIn(piece.outline.parts);
    expect(pathEnds(named(parts, 'e3'))).toEqual([
      [0, 70],
      [0, 10],
    ]);
  }
});

test('a point drawn twice makes no difference', () => {
  const plain = polygon(rectangle(120, 80)).outline.parts as readonly Edge[];
  const doubled = plain.map((part, i) => {
    const [p, q] = part.path.segments[0] as readonly [Point, Point];
    return i === 1
      ? { ...part, path: { segments: [[p, p] as const, [p, q] as const, [q, q] as const] } }
      : part;
  });
  expect(tenIn(doubled).parts.map(p => pathEnds(named([p], p.name)))).toEqual(
    tenIn(plain).parts.map(p => pathEnds(named([p], p.name))),
  );
});

test('a pleat stays where it was drawn, its neighbours moved in beside it', () => {
  const pleat: Pleat = {
    type: 'pleat',
    name: 'pleat',
    kind: 'knife',
    mouth: { segments: [[at(80, 0), at(120, 0)]] },
    towards: 'start',
    stitched: 0,
  };
  const { parts } = stitchingLine(
    [
      straightEdge('waist', at(0, 0), at(80, 0)),
      pleat,
      straightEdge('waist', at(120, 0), at(200, 0)),
      straightEdge('right', at(200, 0), at(200, 150)),
      straightEdge('foot', at(200, 150), at(0, 150)),
      straightEdge('left', at(0, 150), at(0, 0)),
    ],
    e => (e.name === 'waist' ? 0 : 10),
  );
  expect(parts[1]).toEqual(pleat);
  expect(pathEnds(named(parts, 'waist'))).toEqual([
    [10, 0],
    [80, 0],
  ]);
});

describe('an allowance that cannot be one', () => {
  test.each([-1, 301, Number.NaN, Number.POSITIVE_INFINITY])(
    'of %d mm is refused, with its edge',
    allowance => {
      const { parts } = polygon(rectangle(1200, 800)).outline;
      const refused = refusalOf(() => stitchingLine(parts, e => (e.name === 'e2' ? allowance : 10)));
      expect(refused).toMatchObject({ code: 'allowance-out-of-range', where: { edge: 'e2' } });
      const piece = polygon(rectangle(1200, 800), i => ({ allowance: i === 2 ? allowance : 10 }));
      expect(refusalOf(() => cuttingLine(piece))).toMatchObject({
        code: 'allowance-out-of-range',
        where: { piece: 'piece', edge: 'e2' },
      });
    },
  );
  test('300 mm is one', () => {
    expect(cuttingLine(polygon(rectangle(1200, 800), () => ({ allowance: 300 }))).findings).toEqual([]);
    expect(() => stitchingLine(polygon(rectangle(1200, 800)).outline.parts, () => 300)).not.toThrow();
  });
});

test('an outline of nothing is refused, and so is a point that is no number, wherever it stands', () => {
  expect(refusalOf(() => cuttingLine(pieceOf([])))).toMatchObject({ code: 'piece-without-outline' });
  expect(refusalOf(() => stitchingLine([], () => 10))).toMatchObject({ code: 'piece-without-outline' });
  const { parts } = polygon(rectangle(120, 80)).outline;
  const nowhere = at(Number.NaN, 0);
  const withLine: Piece = {
    ...polygon(rectangle(120, 80)),
    lines: [{ kind: 'grain', name: 'grain', path: { segments: [[at(0, 0), nowhere]] } }],
  };
  expect(refusalOf(() => cuttingLine(withLine)).code).toBe('coordinate-out-of-range');
  const taken = { ...dart('d', at(0, 0), at(5, 5), at(0, 0)), apex: nowhere };
  expect(refusalOf(() => cuttingLine(pieceOf([...parts, taken])))).toMatchObject({
    code: 'coordinate-out-of-range',
    where: { piece: 'piece', edge: 'd' },
  });
});

/** What comes back, each edge with its own allowance; none where it is refused. */
function backOf(drawn: readonly OutlinePart[]): ReturnType<typeof stitchingLine> | undefined {
  try {
    return stitchingLine(drawn, e => e.allowance);
  } catch (error) {
    expect(error).toMatchObject({ code: 'included-allowance-too-wide' });
    return undefined;
  }
}

describe('a piece drawn on its cutting line', () => {
  const straightened = (piece: Piece): Piece =>
    pieceOf(
      edgesOf(piece).map(e => straightEdge(e.name, e.path.segments[0]![0], e.path.segments[0]!.at(-1)!, e)),
    );
  /** How far two paths lie apart, the ends of the one that is sought included. */
  const apart = (one: Path, other: Path): number =>
    Math.max(
      ...sampled(one, 4).map(s => distanceTo(other, s.point).distance),
      ...sampled(other, 4).map(s => distanceTo(one, s.point).distance),
    );
  // A hem whose end was mirrored in the start of a curve came back up to 27 mm too long: the curve's direction was
  // taken further along it.
  test('with hems turned up and corners of any angle comes back as it was, edge by edge', () => {
    let count = 0;
    fc.assert(
      fc.property(anyPiece().map(straightened), piece => {
        const { findings } = cuttingLine(piece);
        fc.pre(!findings.some(f => f.severity !== 'note'));
        const drawn = cutOf(piece);
        fc.pre(drawn.length === edgesOf(piece).length);
        const back = stitchingLine(drawn, e => e.allowance);
        if (back.findings.some(f => f.severity !== 'note')) return;
        count++;
        // Where two edges all but run on, their ends are drawn together over less than 0.05 mm.
        for (const e of edgesOf(piece)) expect(apart(named(back.parts, e.name), e.path)).toBeLessThan(0.05);
      }),
      { numRuns: 60 },
    );
    expect(count).toBeGreaterThan(10);
  });
  // Two in a hundred once came back with the end of a turned-up or pressed-open allowance for part of an edge, untold.
  test('with curved sides comes back as it was, or what is not certain is told', () => {
    let right = 0;
    fc.assert(
      fc.property(anyPiece(), piece => {
        fc.pre(!cuttingLine(piece).findings.some(f => f.severity !== 'note'));
        const drawn = cutOf(piece);
        fc.pre(drawn.length === edgesOf(piece).length);
        const back = backOf(drawn);
        if (!back || back.findings.some(f => f.severity !== 'note')) return;
        right++;
        for (const e of edgesOf(piece)) expect(apart(named(back.parts, e.name), e.path)).toBeLessThan(0.1);
      }),
      { numRuns: 150, seed: 1 },
    );
    expect(right).toBeGreaterThan(130);
  });
  test.each([1, -1])('beside a curve that bends away at once, on either side, its hem comes back', side => {
    // A side that bows, from the hem up: its direction at the hem is 20 degrees off that in its middle.
    const bowed = (sense: number): Piece => {
      const x = (v: number) => 150 + sense * v;
      const parts = [
        straightEdge('top', at(x(-100), 0), at(x(100), 0)),
        edge('bowed', [[at(x(100), 0), at(x(150), 70), at(x(150), 130), at(x(100), 200)]], { allowance: 7 }),
        straightEdge('hem', at(x(100), 200), at(x(-100), 200), { kind: 'hem', allowance: 15.875 }),
        straightEdge('other', at(x(-100), 200), at(x(-100), 0)),
      ];
      return pieceOf(sense === 1 ? parts : mirroredEdges(parts));
    };
    const piece = bowed(side);
    const back = stitchingLine(cutOf(piece), e => e.allowance);
    for (const e of edgesOf(piece)) expect(apart(named(back.parts, e.name), e.path)).toBeLessThan(0.05);
  });
});

describe('a short last stretch of an edge', () => {
  /** The top ends in a slanted stretch of so many millimetres, before the right side. */
  const slanted = (length: number): Piece =>
    pieceOf([
      edge('top', [
        [at(0, 0), at(200, 0)],
        [at(200, 0), at(200 + length * Math.SQRT1_2, length * Math.SQRT1_2)],
      ]),
      straightEdge('right', at(200 + length * Math.SQRT1_2, length * Math.SQRT1_2), at(230, 300)),
      straightEdge('foot', at(230, 300), at(0, 300)),
      straightEdge('left', at(0, 300), at(0, 0)),
    ]);
  test.each([3, 4, 8, 9, 10, 12, 20, 27, 33, 45])(
    'of %d mm that has its place on the stitching line stays',
    length => {
      for (const turn of [(p: readonly OutlinePart[]) => p, mirrored]) {
        const back = tenIn(turn(cutOf(slanted(length))));
        expect(back.findings).toEqual([]);
        const { segments } = named(back.parts, 'top');
        const reach = segments.map(s => Math.hypot(s.at(-1)!.x - s[0].x, s.at(-1)!.y - s[0].y));
        expect(Math.min(...reach.filter(mm => mm > 1e-6))).toBeCloseTo(length, 6);
      }
    },
  );
});

test('the tail of a turned-up hem is told with its length, both its edges named', () => {
  const shift = 200 * Math.tan((8 * Math.PI) / 180);
  const sleeve = pieceOf([
    straightEdge('top', at(0, 0), at(200, 0)),
    straightEdge('right', at(200, 0), at(200 + shift, 200), { allowance: 15 }),
    straightEdge('hem', at(200 + shift, 200), at(-shift, 200), { kind: 'hem', allowance: 25 }),
    straightEdge('left', at(-shift, 200), at(0, 0), { allowance: 15 }),
  ]);
  const { stretches } = cuttingLine(sleeve);
  const parts = sleeve.outline.parts.map(part => ({
    ...(part as Edge),
    path: { segments: stretches.filter(s => s.of === part.name).flatMap(s => s.path.segments) },
  }));
  const { findings } = stitchingLine(parts, e => e.allowance);
  expect(findings.map(f => [f.code, f.where, f.about])).toEqual([
    ['corner-tail-dropped', { edge: 'hem' }, { edges: [{ edge: 'hem' }, { edge: 'left' }] }],
    ['corner-tail-dropped', { edge: 'hem' }, { edges: [{ edge: 'hem' }, { edge: 'right' }] }],
  ]);
  // The end of the hem's allowance leans as the side does.
  for (const f of findings) expect(f.figures!.lengthMm).toBeCloseTo(25 / Math.cos((8 * Math.PI) / 180), 6);
});
