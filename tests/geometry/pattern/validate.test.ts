import {
  type Dart,
  definePattern,
  definePiece,
  type EdgeSpec,
  line,
  type Path,
  type Pattern,
  PatternError,
  type PieceSpec,
  pathOf,
  polyline,
  type Seam,
  validatePattern,
  validatePiece,
} from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { shiftPattern } from '../../support/shift.js';
import { told } from '../../support/told.js';

const at = (x: number, y: number) => ({ x, y });
const edge = (name: string, path: Path, rest: Partial<EdgeSpec> = {}): EdgeSpec => ({ name, path, ...rest });
const corners = [at(0, 0), at(100, 0), at(100, 80), at(0, 80)] as const;
const side = (i: number) => polyline(corners[i]!, corners[(i + 1) % 4]!);
const names = ['top', 'right', 'bottom', 'left'];
const outline = names.map((name, i) => edge(name, side(i)));
const box = (changes: Partial<PieceSpec> = {}): PieceSpec => ({ name: 'box', outline, ...changes });
const withEdge = (i: number, changed: EdgeSpec | Dart): PieceSpec =>
  box({ outline: outline.map((e, j) => (j === i ? changed : e)) });
const refusal = (work: () => unknown): ReturnType<typeof told> => {
  try {
    work();
  } catch (error) {
    if (error instanceof PatternError) return told(error);
    throw error;
  }
  throw new Error('it was accepted');
};

test('a piece gets the defaults of the format', () => {
  expect(definePiece(box())).toMatchObject({
    name: 'box',
    title: 'box',
    notches: [],
    cutting: { count: 1, mirrored: false, fabric: 'main' },
    outline: { parts: [{ type: 'edge', name: 'top', kind: 'seam', allowance: 0, corners: {} }, {}, {}, {}] },
  });
  expect(definePiece(box({ cutting: { count: 2 } })).cutting.mirrored).toBe(true);
  const onFold = withEdge(3, edge('left', side(3), { kind: 'fold' }));
  expect(definePiece({ ...onFold, cutting: { count: 2 } }).cutting.mirrored).toBe(false);
});

test('a plausible pattern is accepted', () => {
  expect(() => validatePattern(shiftPattern())).not.toThrow();
});

describe('a piece is refused, naming piece and edge, for', () => {
  const dart = (legs: readonly [Path, Path]): Dart => ({
    type: 'dart',
    name: 'bust',
    legs,
    apex: at(40, 40),
  });
  const dartOutline = (b: number) => [
    outline[0]!,
    edge('upper', polyline(at(100, 0), at(100, 30))),
    dart([polyline(at(100, 30), at(40, 40)), polyline(at(40, 40), at(100, b))]),
    edge('lower', polyline(at(100, b), at(100, 80))),
    outline[2]!,
    outline[3]!,
  ];

  test.each<[string, PieceSpec, string, string | undefined]>([
    ['a gap', withEdge(1, edge('right', polyline(at(100, 2.5), at(100, 80)))), 'open-outline', 'top'],
    [
      'a gap within an edge',
      withEdge(0, edge('top', pathOf(line(at(0, 0), at(50, 0)), line(at(51, 0), at(100, 0))))),
      'open-outline',
      'top',
    ],
    [
      'an edge of no length',
      withEdge(0, edge('top', polyline(at(0, 0), at(0, 0)))),
      'edge-without-length',
      'top',
    ],
    ['no edges', box({ outline: [] }), 'piece-without-outline', undefined],
    ['two edges of one name', withEdge(1, edge('top', side(1))), 'edge-in-parts', 'top'],
    ['an edge without a name', withEdge(2, edge(' ', side(2))), 'name-missing', undefined],
    [
      'an edge and a dart of one name',
      box({ outline: dartOutline(50).map(p => (p.name === 'upper' ? { ...p, name: 'bust' } : p)) }),
      'duplicate-edge',
      'bust',
    ],
    [
      'a negative allowance',
      withEdge(0, edge('top', side(0), { allowance: -1 })),
      'allowance-out-of-range',
      'top',
    ],
    [
      'an absurd allowance',
      withEdge(0, edge('top', side(0), { allowance: 1000 })),
      'allowance-out-of-range',
      'top',
    ],
    [
      'an allowance that is no number',
      withEdge(0, edge('top', side(0), { allowance: Number.NaN })),
      'allowance-out-of-range',
      'top',
    ],
    [
      'an allowance on a fold',
      withEdge(0, edge('top', side(0), { allowance: 5, kind: 'fold' })),
      'allowance-on-fold',
      'top',
    ],
    [
      'an opening of no length',
      withEdge(0, edge('top', side(0), { opening: 0 })),
      'opening-out-of-range',
      'top',
    ],
    [
      'a coordinate that is no number',
      withEdge(0, edge('top', pathOf([at(0, 0), at(Number.NaN, 0)], [at(Number.NaN, 0), at(100, 0)]))),
      'coordinate-out-of-range',
      'top',
    ],
    [
      'a coordinate 200 m away',
      withEdge(0, edge('top', pathOf([at(0, 0), at(2e5, 0)], [at(2e5, 0), at(100, 0)]))),
      'coordinate-out-of-range',
      'top',
    ],
    ['legs that differ by over 1 mm', box({ outline: dartOutline(60) }), 'dart-legs-differ', 'bust'],
    [
      'an anticlockwise outline',
      box({ outline: names.map((name, i) => edge(name, polyline(corners[(4 - i) % 4]!, corners[3 - i]!))) }),
      'outline-anticlockwise',
      undefined,
    ],
    [
      'a notch beyond its edge',
      box({ notches: [{ edge: 'top', at: 101, style: 'single' }] }),
      'notch-off-edge',
      'top',
    ],
    [
      'a notch on an edge that is not there',
      box({ notches: [{ edge: 'tpo', at: 1, style: 'single' }] }),
      'unknown-edge',
      'tpo',
    ],
    ['a count of nothing', box({ cutting: { count: 0 } }), 'cut-count', undefined],
    ['a count that is no whole number', box({ cutting: { count: 1.5 } }), 'cut-count', undefined],
  ])('%s', (_, spec, code, named) => {
    const error = refusal(() => definePiece(spec));
    expect(error.code).toBe(code);
    expect(error.where.piece).toBe('box');
    if (named !== undefined) expect(error.where.edge).toBe(named);
    expect(error.remedy).not.toBe('');
  });

  test('an outline that crosses itself, with the place', () => {
    const bowtie = [
      edge('a', polyline(at(0, 0), at(100, 100))),
      edge('b', polyline(at(100, 100), at(100, 0))),
      edge('c', polyline(at(100, 0), at(0, 120))),
      edge('d', polyline(at(0, 120), at(0, 0))),
    ];
    const turned = bowtie
      .map(e => ({ ...e, path: { segments: e.path.segments.map(([p, q]) => line(q, p)) } }))
      .reverse();
    const error = [bowtie, turned].map(o => refusal(() => definePiece(box({ outline: o }))));
    expect(error.map(e => e.code)).toContain('self-crossing');
    expect(error.find(e => e.code === 'self-crossing')!.message).toContain('54.5 mm across and 54.5 mm down');
  });

  test('but not one that only touches itself', () => {
    // A square with a slit that comes back to touch the top edge from within.
    const touching = polyline(at(0, 80), at(0, 40), at(50, 0), at(0, 30), at(0, 0));
    expect(() => definePiece(withEdge(3, edge('left', touching)))).not.toThrow();
    const through = polyline(at(0, 80), at(0, 40), at(50, -1), at(0, 30), at(0, 0));
    expect(refusal(() => definePiece(withEdge(3, edge('left', through)))).code).toBe('self-crossing');
  });
});

describe('a pattern is refused for', () => {
  const box1 = definePiece(box());
  const seam = (name: string, edgeName: string, piece = 'box'): Seam => ({
    name,
    a: [{ piece, edge: edgeName, reversed: false }],
    b: [{ piece: 'box', edge: 'left', reversed: true }],
    ease: { mm: 0 },
  });
  const pattern = (changes: Partial<Pattern>): Pattern => ({
    name: 'p',
    unit: 'mm',
    pieces: [box1],
    seams: [],
    fabrics: [],
    ...changes,
  });

  test.each<[string, Partial<Pattern>, string, string]>([
    ['two pieces of one name', { pieces: [box1, box1] }, 'duplicate-piece', ''],
    ['two seams of one name', { seams: [seam('s', 'top'), seam('s', 'top')] }, 'duplicate-seam', ''],
    [
      'two fabrics of one name',
      {
        fabrics: [
          { name: 'main', role: 'main' },
          { name: 'main', role: 'lining' },
        ],
      },
      'duplicate-fabric',
      '',
    ],
    [
      'a seam of a piece that is not there',
      { seams: [seam('s', 'top', 'bx')] },
      'unknown-piece',
      'Did you mean "box"?',
    ],
    [
      'a seam of an edge that is not there',
      { seams: [seam('s', 'botom')] },
      'unknown-edge',
      'Did you mean "bottom"?',
    ],
    ['a seam of nothing', { seams: [{ ...seam('s', 'top'), a: [] }] }, 'empty-seam', ''],
    ['a name of nothing', { fabrics: [{ name: '', role: 'main' }] }, 'name-missing', ''],
  ])('%s', (_, changes, code, remedy) => {
    const error = refusal(() => definePattern(pattern(changes)));
    expect(error.code).toBe(code);
    expect(error.remedy).toContain(remedy);
  });
});

test('names in messages are cut at 40 printable characters', () => {
  const long = `\u0007${'x'.repeat(500)}`;
  const error = refusal(() =>
    validatePiece(definePiece(box({ outline: outline.map((e, i) => (i < 2 ? { ...e, name: long } : e)) }))),
  );
  expect(error.message.length).toBeLessThan(140);
  expect(error.message).not.toContain('\u0007');
});
