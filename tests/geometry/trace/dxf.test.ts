import { readdirSync, readFileSync } from 'node:fs';
import { type Path, pathLength, readPattern } from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { signedArea } from '@paperhinge/geometry/regions';
import { piecesOfDrawing, readDxf } from '@paperhinge/geometry/trace';
import { patternDxf } from '@paperhinge/print/dxf';
import { describe, expect, test } from 'vitest';
import { readDxf as readByParser } from '../../print/dxf/dxf-file.js';
import { refusalOf } from '../../support/told.js';

type Groups = readonly (readonly [number, string | number])[];
/** A DXF file of these entities, in mm unless told otherwise. */
const file = (entities: Groups, { unit = 4, blocks = [] }: { unit?: number; blocks?: Groups } = {}): string =>
  [
    [0, 'SECTION'],
    [2, 'HEADER'],
    ...(unit === undefined
      ? []
      : [
          [9, '$INSUNITS'],
          [70, unit],
        ]),
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'BLOCKS'],
    ...blocks,
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...entities,
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ]
    .map(([code, value]) => `${code}\n${value}\n`)
    .join('');
const line = (x: number, y: number, u: number, v: number, layer = '0'): Groups => [
  [0, 'LINE'],
  [8, layer],
  [10, x],
  [20, y],
  [11, u],
  [21, v],
];
const only = (text: string): Path => readDxf(text).drawing.lines[0]!.path;

describe('what a DXF file draws', () => {
  test('lines, in mm and in inches, y turned over', () => {
    const { min, max } = boundsOfPath(only(file(line(1, 2, 4, 6))));
    expect([min.x, max.x, min.y, max.y]).toEqual([1, 4, -6, -2]);
    expect(pathLength(only(file(line(0, 0, 3, 4), { unit: 1 })))).toBeCloseTo(127, 9);
    expect(pathLength(only(file(line(0, 0, 3, 4), { unit: 5 })))).toBeCloseTo(50, 9);
  });

  test('arcs, circles and ellipses by their closed forms', () => {
    const arc = only(
      file([
        [0, 'ARC'],
        [10, 5],
        [20, 5],
        [40, 100],
        [50, 350],
        [51, 80],
      ]),
    );
    expect(pathLength(arc)).toBeCloseTo((100 * Math.PI) / 2, 3);
    expect(
      pathLength(
        only(
          file([
            [0, 'CIRCLE'],
            [10, 0],
            [20, 0],
            [40, 30],
          ]),
        ),
      ),
    ).toBeCloseTo(60 * Math.PI, 3);
    const ellipse = only(
      file([
        [0, 'ELLIPSE'],
        [10, 0],
        [20, 0],
        [11, 80],
        [21, 0],
        [40, 0.5],
        [41, 0],
        [42, 2 * Math.PI],
      ]),
    );
    expect(Math.abs(signedArea(ellipse))).toBeCloseTo(Math.PI * 80 * 40, 0);
  });

  test('a bulge of one is a half circle, to the side that it says', () => {
    const half = only(
      file([
        [0, 'LWPOLYLINE'],
        [90, 2],
        [70, 0],
        [10, 0],
        [20, 0],
        [42, 1],
        [10, 20],
        [20, 0],
      ]),
    );
    expect(pathLength(half)).toBeCloseTo(10 * Math.PI, 3);
    // Positive: anticlockwise from the first point, so below the way to the right; on the page, y turned over, as well.
    expect(boundsOfPath(half).max.y).toBeCloseTo(10, 4);
    const old = only(
      file([
        [0, 'POLYLINE'],
        [70, 1],
        [0, 'VERTEX'],
        [10, 0],
        [20, 0],
        [42, 1],
        [0, 'VERTEX'],
        [10, 20],
        [20, 0],
        [0, 'SEQEND'],
      ]),
    );
    expect(Math.abs(signedArea(old))).toBeCloseTo((Math.PI * 100) / 2, 2);
  });

  test('a spline of degree three is its cubics exactly, one of fit points runs through them', () => {
    const spline = only(
      file([
        [0, 'SPLINE'],
        [70, 8],
        [71, 3],
        ...[0, 0, 0, 0, 1, 2, 2, 2, 2].map(k => [40, k] as const),
        ...[
          [0, 0],
          [0, 40],
          [50, 60],
          [90, 20],
          [100, 0],
        ].flatMap(([x, y]) => [[10, x!] as const, [20, y!] as const]),
      ]),
    );
    expect(spline.segments).toHaveLength(2);
    // Boehm's knot insertion by hand: the joint is the middle of the two points beside it.
    const [, b, c, joint] = spline.segments[0] as readonly { x: number; y: number }[];
    expect([b, c, joint]).toEqual([
      { x: 0, y: -40 },
      { x: 25, y: -50 },
      { x: 47.5, y: -45 },
    ]);
    const fit = only(
      file([
        [0, 'SPLINE'],
        [71, 3],
        [11, 0],
        [21, 0],
        [11, 50],
        [21, 20],
        [11, 100],
        [21, 0],
      ]),
    );
    expect(fit.segments).toHaveLength(2);
    expect(fit.segments[0]!.at(-1)).toEqual({ x: 50, y: -20 });
  });

  test('a block is set, turned and scaled, and keeps its lines together', () => {
    const blocks: Groups = [
      [0, 'BLOCK'],
      [2, 'FRONT'],
      [10, 1],
      [20, 1],
      ...line(1, 1, 11, 1),
      [0, 'ENDBLK'],
    ];
    const { drawing } = readDxf(
      file(
        [
          [0, 'INSERT'],
          [2, 'front'],
          [10, 100],
          [20, 200],
          [41, 2],
          [42, 2],
          [50, 90],
        ],
        { blocks },
      ),
    );
    expect(drawing.lines[0]!.group).toBe('FRONT');
    const { min, max } = boundsOfPath(drawing.lines[0]!.path);
    expect(min.x).toBeCloseTo(100, 9);
    expect(max.y - min.y).toBeCloseTo(20, 9);
    expect(max.y).toBeCloseTo(-200, 9);
  });

  test('words come with their signs', () => {
    const { drawing } = readDxf(
      file([
        [0, 'TEXT'],
        [8, '15'],
        [10, 3],
        [20, 4],
        [1, 'R\\U+00FCcken \\PBruch'],
      ]),
    );
    expect(drawing.words).toEqual([{ text: 'Rücken  Bruch', at: { x: 3, y: -4 } }]);
  });

  test('a file that leaves its unit open says so, and is read in the one that is told', () => {
    const open = file(line(0, 0, 10, 0), { unit: 0 });
    expect(readDxf(open).findings).toMatchObject([{ code: 'unit-not-told', severity: 'warning' }]);
    expect(readDxf(open, 'in').findings).toEqual([]);
    expect(pathLength(readDxf(open, 'in').drawing.lines[0]!.path)).toBeCloseTo(254, 9);
  });

  test('what is no DXF, or binary, is refused', () => {
    expect(refusalOf(() => readDxf('hello')).code).toBe('not-dxf');
    expect(refusalOf(() => readDxf('AutoCAD Binary DXF\r\n')).facts).toEqual({ binary: true });
    expect(refusalOf(() => piecesOfDrawing('x', readDxf(file([])).drawing, { gap: 0.2 })).code).toBe(
      'no-outline-in-drawing',
    );
    // Nothing but writing: ends that lie apart are not what is wrong.
    const words = readDxf(
      file([
        [0, 'TEXT'],
        [8, '15'],
        [10, 3],
        [20, 4],
        [1, 'Front'],
      ]),
    ).drawing;
    expect(refusalOf(() => piecesOfDrawing('x', words, { gap: 0.2 })).remedy).toContain(
      'outlines of the pieces',
    );
  });
});

describe('our own DXF', () => {
  const demos = new URL('../../../demos/patterns/', import.meta.url);
  const names = readdirSync(demos).filter(name => name.endsWith('.svg'));

  test.each(names)('%s comes back: every piece’s area, allowances, grain and title', name => {
    const { pattern } = readPattern(readFileSync(new URL(name, demos)));
    const { drawing, findings } = readDxf(patternDxf(pattern));
    expect(findings).toEqual([]);
    const back = piecesOfDrawing(pattern.name, drawing, { gap: 0.2 }).pattern;
    expect(back.pieces.map(piece => piece.title).sort()).toEqual(
      pattern.pieces.map(piece => piece.title).sort(),
    );
    for (const piece of pattern.pieces) {
      const again = back.pieces.find(one => one.title === piece.title)!;
      const area = (of: typeof piece): number =>
        signedArea({
          segments: of.outline.parts.flatMap(part =>
            part.type === 'edge'
              ? part.path.segments
              : part.type === 'dart'
                ? part.legs.flatMap(leg => leg.segments)
                : part.mouth.segments,
          ),
        });
      // Chords of 0.05 mm inside a curve, all round.
      expect(Math.abs(area(again) - area(piece))).toBeLessThan(0.05 * 2000);
      const widths = (of: typeof piece): readonly number[] =>
        [
          ...new Set(
            of.outline.parts.flatMap(part =>
              part.type === 'edge' && part.allowance > 0 ? [Math.round(part.allowance * 8) / 8] : [],
            ),
          ),
        ].sort((a, b) => a - b);
      expect(widths(again)).toEqual(widths(piece));
      expect(again.lines.some(line => line.kind === 'grain')).toBe(
        piece.lines.some(line => line.kind === 'grain'),
      );
      const darts = (of: typeof piece): number =>
        of.outline.parts.filter(part => part.type === 'dart').length;
      expect(darts(again)).toBe(darts(piece));
    }
  });

  test('as many entities as an independent reader finds', () => {
    const { pattern } = readPattern(readFileSync(new URL('shirt.svg', demos)));
    const text = patternDxf(pattern);
    const blocks = [...readByParser(text).blocks.values()];
    const theirs = blocks.flatMap(block => block.filter(entity => entity.type !== 'TEXT')).length;
    expect(readDxf(text).drawing.lines).toHaveLength(theirs);
  });
});
