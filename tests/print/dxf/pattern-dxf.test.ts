import {
  at,
  cuttingLine,
  edgeNames,
  type Path,
  type Pattern,
  type Piece,
  type Point,
  pathLength,
  pathOf,
  polyline,
} from '@paperhinge/geometry';
import type { Cubic } from '@paperhinge/geometry/curves';
import {
  joined,
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
} from '@paperhinge/geometry/paths';
import { dartsOf, foldEdgeOf, partsOfEdge } from '@paperhinge/geometry/pattern';
import { distance, lerp } from '@paperhinge/geometry/plane';
import { patternDxf } from '@paperhinge/print/dxf';
import { describe, expect, test } from 'vitest';
import { chordError, drawnChordError, verticesOf } from '../../../packages/print/src/dxf/vertices.js';
import { shiftPattern } from '../../support/shift.js';
import { patternOf, polygonPiece, rectangle } from '../simple-pieces.js';
import { type Entity, readDxf } from './dxf-file.js';

/** mm: what a figure of the file may be off. */
const printed = 1e-3;

const on = (entities: readonly Entity[], layer: number, type?: string): readonly Entity[] =>
  entities.filter(e => e.layer === String(layer) && (type === undefined || e.type === type));

const pathsOf = (entities: readonly Entity[]): readonly Path[] => entities.map(e => polyline(...e.points));

/** The farthest of the points from the nearest of the paths. */
const farthest = (points: readonly Point[], paths: readonly Path[]): number =>
  Math.max(...points.map(p => Math.min(...paths.map(path => nearestOnPath(path, p).distance))));

const sampled = (path: Path, count = 60): readonly Point[] => {
  const length = pathLength(path);
  return Array.from({ length: count + 1 }, (_, i) => pointAlong(path, (length * i) / count));
};

const vertices = (entities: readonly Entity[]): readonly Point[] => entities.flatMap(e => e.points);
const same = (points: readonly Point[], p: Point): boolean => points.some(q => distance(p, q) < printed);

describe.each<[string, Pattern]>([
  ['a shift with darts and folds', shiftPattern()],
  ['the same without any allowance', shiftPattern({ allowance: 0, hemAllowance: 0 })],
])('an independent reader of %s', (_, pattern) => {
  const file = readDxf(patternDxf(pattern));
  const blockOf = (piece: Piece): readonly Entity[] => file.blocks.get(piece.name.toUpperCase())!;

  test('finds one style in millimetres, a block for each piece and an insert of each', () => {
    expect(file.header).toMatchObject({ $ACADVER: 'AC1009', $INSUNITS: 4 });
    expect(file.texts).toEqual([
      `Style Name: ${pattern.name}`,
      'ANSI/AAMA Version: ASTM D6673',
      'Author: paperhinge',
      'Sample Size: ONE',
      'Units: METRIC',
    ]);
    const names = pattern.pieces.map(p => p.name.toUpperCase());
    expect([...file.blocks.keys()]).toEqual(names);
    expect(file.inserts.map(i => i.name)).toEqual(names);
  });

  test.each(pattern.pieces.map(p => [p.name, p] as const))('reads the cutting line of %s', (_name, piece) => {
    const { path } = cuttingLine(piece, pattern);
    const boundary = on(blockOf(piece), 1, 'POLYLINE');
    expect(boundary).toHaveLength(1);
    expect(boundary[0]!.closed).toBe(true);
    // Readers of the trade ask for the first point once more.
    expect(boundary[0]!.points.at(-1)).toEqual(boundary[0]!.points[0]);
    expect(farthest(vertices(boundary), [path])).toBeLessThan(printed);
    expect(farthest(sampled(path, 400), pathsOf(boundary))).toBeLessThan(chordError + printed);
  });

  test.each(pattern.pieces.map(p => [p.name, p] as const))(
    'reads the stitching line of %s',
    (_name, piece) => {
      const sewn = edgeNames(piece).filter(n => partsOfEdge(piece, n)[0]!.kind !== 'fold');
      const paths = [
        ...sewn.flatMap(n => partsOfEdge(piece, n).map(e => e.path)),
        ...dartsOf(piece).flatMap(d => d.legs),
      ];
      const lines = on(blockOf(piece), 14, 'POLYLINE');
      expect(farthest(vertices(lines), paths)).toBeLessThan(printed);
      for (const path of paths)
        expect(farthest(sampled(path), pathsOf(lines))).toBeLessThan(drawnChordError + printed);
      const length = pathsOf(lines).reduce((sum, p) => sum + pathLength(p), 0);
      const own = paths.reduce((sum, p) => sum + pathLength(p), 0);
      expect(Math.abs(length - own)).toBeLessThan(own * 1e-4);
    },
  );

  test('finds every point of the boundary once as a turn or a curve point, and every corner of a line', () => {
    for (const piece of pattern.pieces) {
      const block = blockOf(piece);
      const turns = vertices(on(block, 2)),
        curves = vertices(on(block, 3));
      for (const p of vertices(on(block, 1, 'POLYLINE')))
        expect(same(turns, p) || same(curves, p)).toBe(true);
      for (const dart of dartsOf(piece))
        for (const corner of [pathStart(dart.legs[0]), dart.apex, pathEnd(dart.legs[1])])
          expect(same(turns, corner)).toBe(true);
      expect(new Set(turns.map(p => `${p.x} ${p.y}`)).size).toBe(turns.length);
    }
  });

  test('finds grain, fold and level lines, and notches on the cutting line', () => {
    for (const piece of pattern.pieces) {
      const block = blockOf(piece);
      const grain = piece.lines.filter(l => l.kind === 'grain');
      const lines = on(block, 7, 'LINE');
      expect(lines).toHaveLength(grain.length);
      for (const [i, { path }] of grain.entries()) {
        expect(distance(lines[i]!.points[0]!, pathStart(path))).toBeLessThan(printed);
        expect(distance(lines[i]!.points[1]!, pathEnd(path))).toBeLessThan(printed);
      }
      const fold = foldEdgeOf(piece);
      const mirror = on(block, 6, 'LINE');
      expect(mirror).toHaveLength(fold ? 1 : 0);
      if (fold) {
        const [from, to] = mirror[0]!.points as [Point, Point];
        const ends = [from, to].map(p => farthest([p], pathsOf(on(block, 1, 'POLYLINE'))));
        expect(Math.max(...ends)).toBeLessThan(chordError + printed);
        expect(farthest(sampled(fold.path), [polyline(from, to)])).toBeLessThan(printed);
      }
      const ticks = { single: 1, double: 2, triple: 3 };
      const notches = vertices(on(block, 4, 'POINT'));
      expect(notches).toHaveLength(piece.notches.reduce((sum, n) => sum + ticks[n.style], 0));
      if (notches.length > 0)
        expect(farthest(notches, [cuttingLine(piece, pattern).path])).toBeLessThan(chordError + printed);
      for (const level of piece.lines.filter(l => l.kind === 'level'))
        expect(farthest(sampled(level.path), pathsOf(on(block, 8, 'POLYLINE')))).toBeLessThan(printed);
    }
  });
});

test('a square has its four corners and no more, on both lines', () => {
  const block = readDxf(patternDxf(patternOf(rectangle('square', 100, 100, 10)))).blocks.get('SQUARE')!;
  expect(on(block, 1, 'POLYLINE').map(e => e.points.length)).toEqual([5]);
  expect(on(block, 14, 'POLYLINE').map(e => e.points.length)).toEqual([5]);
  expect(on(block, 2)).toHaveLength(8);
  expect(on(block, 3)).toHaveLength(0);
});

test('a notch is straight out from its place on the stitching line', () => {
  const piece = rectangle('cuff', 200, 60, 10, { notches: [{ edge: 'edge-1', at: 80, style: 'double' }] });
  const block = readDxf(patternDxf(patternOf(piece))).blocks.get('CUFF')!;
  expect(vertices(on(block, 4))).toEqual([
    { x: 77, y: -10 },
    { x: 83, y: -10 },
  ]);
});

test('only a drill hole is drilled; other marks are crosses that nothing cuts', () => {
  const piece = rectangle('front', 100, 100, 10, {
    marks: [
      { kind: 'drill', name: 'pocket', at: { x: 20, y: 30 } },
      { kind: 'point', name: 'bust point', at: { x: 60, y: 70 } },
    ],
  });
  const block = readDxf(patternDxf(patternOf(piece))).blocks.get('FRONT')!;
  expect(vertices(on(block, 13))).toEqual([{ x: 20, y: 30 }]);
  const [across, up] = on(block, 8, 'LINE');
  expect(lerp(across!.points[0]!, across!.points[1]!, 0.5)).toEqual({ x: 60, y: 70 });
  expect(lerp(up!.points[0]!, up!.points[1]!, 0.5)).toEqual({ x: 60, y: 70 });
});

test('the stitching lines of a double-pointed dart are sewn, other lines within a piece are not', () => {
  const lens: Path = polyline(
    { x: 50, y: 20 },
    { x: 56, y: 50 },
    { x: 50, y: 80 },
    { x: 44, y: 50 },
    { x: 50, y: 20 },
  );
  const piece = rectangle('back', 100, 100, 10, {
    lines: [
      { kind: 'dart', name: 'waist', path: lens },
      { kind: 'placement', name: 'pocket', path: polyline({ x: 10, y: 10 }, { x: 30, y: 10 }) },
    ],
  });
  const block = readDxf(patternDxf(patternOf(piece))).blocks.get('BACK')!;
  const sewn = on(block, 14, 'POLYLINE');
  expect(sewn.map(e => [e.closed, e.points.length])).toEqual([
    [true, 5],
    [true, 5],
  ]);
  expect(vertices(on(block, 8))).toEqual([
    { x: 10, y: 10 },
    { x: 30, y: 10 },
  ]);
});

test('a mirrored pair is one block that says how many are cut left and right', () => {
  const piece = rectangle('sleeve', 100, 100, 10, { cutting: { count: 2, mirrored: true, fabric: 'main' } });
  const block = readDxf(patternDxf(patternOf(piece))).blocks.get('SLEEVE')!;
  const said = on(block, 1, 'TEXT').map(e => e.text);
  expect(said).toEqual([
    'Piece Name: sleeve',
    'Size: ONE',
    'Quantity: 1,1',
    'Material: main',
    'Annotation: cut 2, 1 mirrored',
  ]);
});

test('each piece is of the size that the file says it is of', () => {
  const sized = { ...patternOf(rectangle('yoke', 100, 100, 10)), size: '14' };
  const { blocks, texts } = readDxf(patternDxf(sized));
  expect(on(blocks.get('YOKE')!, 1, 'TEXT').map(e => e.text)).toContain('Size: 14');
  expect(texts).toContain('Sample Size: 14');
  const between = readDxf(patternDxf({ ...sized, size: '12…14' }));
  expect(between.texts).toContain('Sample Size: 12-14');
});

test('what a cutter must know of a piece is in its annotation: layers, and that it is not turned over', () => {
  const cutting = { count: 2, mirrored: false, layers: 2, fabric: 'main' };
  const annotation = (changes: Partial<Piece>) =>
    on(
      readDxf(patternDxf(patternOf(rectangle('yoke', 100, 100, 10, changes)))).blocks.get('YOKE')!,
      1,
      'TEXT',
    )
      .map(e => e.text)
      .at(-1);
  expect(annotation({ cutting })).toBe('Annotation: cut 2, in 2 layers');
  expect(annotation({ cutting: { ...cutting, rightSideUp: true, note: 'on the bias' } })).toBe(
    'Annotation: cut 2, in 2 layers; right side up only; on the bias',
  );
  const lining = { count: 1, mirrored: false, fabric: 'lining', rightSideUp: true };
  expect(annotation({ cutting, alsoCut: [lining] })).toBe(
    'Annotation: cut 2, in 2 layers; cut 1 of lining; right side up only',
  );
});

test('pieces drawn over one another are inserted side by side, others where they were drawn', () => {
  const over = readDxf(patternDxf(patternOf(rectangle('a', 100, 50, 10), rectangle('b', 80, 50))));
  expect(over.inserts.map(i => i.at)).toEqual([
    { x: 10, y: 10 },
    { x: 140, y: -0 },
  ]);
  const apart = polygonPiece('c', [at(300, 0), at(400, 0), at(400, 50), at(300, 50)]);
  const clear = readDxf(patternDxf(patternOf(rectangle('a', 100, 50, 10), apart)));
  for (const insert of clear.inserts) expect(distance(insert.at, { x: 0, y: 0 })).toBe(0);
});

describe('names', () => {
  const textsOf = (name: string) => {
    const file = readDxf(patternDxf({ ...patternOf(rectangle(name, 100, 100, 5, { title: name })), name }));
    return [...file.blocks.values()]
      .flat()
      .filter(e => e.type === 'TEXT')
      .map(e => e.text)
      .concat(file.texts);
  };

  test.each(['Ärmel', '袖', 'كم', '👗 dress', 'a\\U+0041b', '100 %', '^J up', 'C:\\P'])(
    '%j comes back as it was',
    name => {
      expect(textsOf(name)).toContain(`Piece Name: ${name}`);
      expect(textsOf(name)).toContain(`Style Name: ${name}`);
    },
  );

  test('cannot break out of their line, nor turn into the format’s own signs', () => {
    const evil = 'a\r\n  0\r\nEOF\r\n%%uunder\u2028\u202eback\0';
    const text = patternDxf(patternOf(rectangle(evil, 100, 100, 5, { title: evil }), rectangle('b', 10, 10)));
    expect([...readDxf(text).blocks.keys()]).toEqual(['A_0_EOF_UUNDER_BACK', 'B']);
    expect(text).toContain('Piece Name: a 0 EOF % %uunder back');
    expect(text.split('\r\n').filter(l => l === 'EOF')).toHaveLength(1);
    expect(text).toMatch(/^[\r\n -~]*$/);
  });

  test('of a thousand signs are cut to what the format holds', () => {
    const lines = patternDxf(patternOf(rectangle('縫'.repeat(1000), 100, 100, 5))).split('\r\n');
    expect(Math.max(...lines.map(l => l.length))).toBeLessThan(256);
    expect(lines.some(l => l.startsWith('Piece Name: \\U+7E2B') && l.endsWith('7E2B...'))).toBe(true);
  });

  test('that come to the same in capitals stay different blocks', () => {
    const names = ['Ärmel 1', 'armel-1', 'ÄRMEL_1', '袖', '縫', 'x'.repeat(40), `${'x'.repeat(40)}y`];
    const file = readDxf(patternDxf(patternOf(...names.map(n => rectangle(n, 50, 50, 5)))));
    expect([...file.blocks.keys()]).toEqual([
      'ARMEL_1',
      'ARMEL-1',
      'ARMEL_1_2',
      'PIECE',
      'PIECE_2',
      'X'.repeat(31),
      `${'X'.repeat(29)}_2`,
    ]);
  });
});

describe('flattening', () => {
  test.each<[string, Cubic]>([
    [
      'an armhole',
      [
        { x: 0, y: 0 },
        { x: 40, y: 90 },
        { x: 60, y: 150 },
        { x: 170, y: 180 },
      ],
    ],
    [
      'the hem of a train',
      [
        { x: 0, y: 0 },
        { x: 0, y: 3000 },
        { x: 3000, y: 5000 },
        { x: 6000, y: 5000 },
      ],
    ],
    [
      'a curve that turns back',
      [
        { x: 0, y: 0 },
        { x: 300, y: 10 },
        { x: -200, y: 20 },
        { x: 100, y: 0 },
      ],
    ],
  ])('keeps the chords of %s near it', (_, curve) => {
    const path = pathOf(curve);
    const chords = polyline(...verticesOf(path, false).map(v => v.at));
    expect(farthest(sampled(path, 500), [chords])).toBeLessThanOrEqual(chordError);
  });

  test('calls corners and the ends of straight lines turns, smooth joints curve points', () => {
    const half: Cubic = [
      { x: 0, y: 0 },
      { x: 20, y: 0 },
      { x: 40, y: 10 },
      { x: 50, y: 30 },
    ];
    const on: Cubic = [
      { x: 50, y: 30 },
      { x: 55, y: 40 },
      { x: 50, y: 60 },
      { x: 50, y: 80 },
    ];
    const line = polyline({ x: 50, y: 80 }, { x: 50, y: 100 });
    const all = verticesOf(joined(pathOf(half, on), line), false);
    const kindAt = (p: Point) => all.find(v => distance(v.at, p) === 0)?.kind;
    expect([half[0], on[0], on[3], pathEnd(line)].map(kindAt)).toEqual(['turn', 'curve', 'turn', 'turn']);
    const there = verticesOf(joined(pathOf(half), reversedPath(pathOf(half))), true);
    expect(there.filter(v => v.kind === 'turn').map(v => v.at)).toEqual([half[0], half[3]]);
  });
});

test('a pattern without pieces is refused', () => {
  expect(() => patternDxf(patternOf())).toThrow(expect.objectContaining({ code: 'nothing-to-print' }));
});
