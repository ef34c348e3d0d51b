import { edgeNames, edgePath, pathLength, readPattern } from '@paperhinge/geometry';
import { pathStart } from '@paperhinge/geometry/paths';
import { edgeParts, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import type { SheetPieces } from '@paperhinge/geometry/svg';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { inMillimetres } from './in-millimetres.js';

const read = (content: string, pieces: SheetPieces = {}) =>
  readPattern(inMillimetres(content), { file: 'p.svg', pieces });
const outline = (d: string) =>
  read(`<g data-piece="p" data-allowance="10"><path data-outline="" d="${d}"/></g>`).pattern.pieces[0]!;
describe('a piece drawn as one closed path', () => {
  test('is cut into edges at its corners, numbered clockwise from the first point', () => {
    const piece = outline('M0 0H100V60H0Z');
    expect(edgeNames(piece)).toEqual(['edge-1', 'edge-2', 'edge-3', 'edge-4']);
    expect(edgeParts(piece).map(e => pathLength(e.path))).toEqual([100, 60, 100, 60]);
  });

  test('drawn anticlockwise is turned, and still numbered from the first point', () => {
    const piece = outline('M0 0V60H100V0Z');
    expect(signedArea(outlinePath(piece.outline))).toBe(6000);
    expect(pathStart(edgePath(piece, 'edge-1'))).toEqual({ x: 0, y: 0 });
    expect(pathLength(edgePath(piece, 'edge-1'))).toBe(100);
  });

  test('that begins within an edge is numbered from the next corner clockwise', () => {
    const piece = outline('M50 0H100V60H0V0Z');
    expect(edgeParts(piece).map(e => pathLength(e.path))).toEqual([60, 100, 60, 100]);
    expect(edgeParts(piece)[3]!.path.segments).toHaveLength(2);
  });

  test('has no corner where the line turns by up to 20 degrees', () => {
    const gentle = (degrees: number) => 50 + 50 * Math.tan((degrees * Math.PI) / 180);
    expect(edgeNames(outline(`M0 50H50L100 ${gentle(19)}V200H0Z`))).toHaveLength(4);
    expect(edgeNames(outline(`M0 50H50L100 ${gentle(21)}V200H0Z`))).toHaveLength(5);
  });

  test('without corners is one edge', () => {
    const piece = read('<circle data-piece="p" data-outline="" data-allowance="5" cx="50" cy="50" r="20"/>')
      .pattern.pieces[0]!;
    expect(edgeNames(piece)).toEqual(['edge-1']);
  });

  test('closed by hand within 0.05 mm is closed, wider gaps are refused with their size', () => {
    expect(edgeNames(outline('M0 0H100V60H0V0.03'))).toHaveLength(4);
    expect(edgeNames(outline('M0 0H100V60H0V0.03Z'))).toHaveLength(4);
    const error = refusalOf(() => outline('M0 0H100V60H0V4'));
    expect(error).toMatchObject({ code: 'open-outline', where: { file: 'p.svg', line: 1, piece: 'p' } });
    expect(error.message).toContain('a gap of 4 mm');
  });

  test('beside edges of its own is refused, a second one is a finding', () => {
    const both =
      '<g data-piece="p"><path data-outline="" d="M0 0H9V9Z"/><path data-edge="a" d="M0 0H9"/></g>';
    expect(refusalOf(() => read(both)).code).toBe('two-outlines');
    const two =
      '<g data-piece="p" data-allowance="1"><path data-outline="" d="M0 0H9V9Z"/><path data-outline="" d="M20 0H29V9Z"/></g>';
    expect(read(two).findings.map(f => f.code)).toEqual(['second-outline-left-out']);
  });
});

describe('a sheet', () => {
  const drawing =
    '<path id="front-outline" d="M0 0H100V60H0Z"/><rect id="other" x="200" width="10" height="10"/>';

  test('names the outline, its edges, their kinds and the allowance', () => {
    const { pattern, findings } = read(drawing, {
      front: {
        outline: 'front-outline',
        edges: ['neck', 'side', 'hem', 'centre'],
        kinds: { hem: 'hem', centre: 'fold' },
        allowance: 15,
      },
    });
    const piece = pattern.pieces[0]!;
    expect(piece).toMatchObject({ name: 'front', title: 'front', cutting: { count: 1, mirrored: false } });
    expect(edgeParts(piece).map(e => [e.name, e.kind, e.allowance])).toEqual([
      ['neck', 'seam', 15],
      ['side', 'seam', 15],
      ['hem', 'hem', 15],
      ['centre', 'fold', 0],
    ]);
    expect(findings).toEqual([]);
  });

  test('may name an outline within a piece, whose other parts stay', () => {
    const group =
      '<g data-piece="front" data-title="Front" data-cut="2"><path id="o" d="M0 0H100V60H0Z"/><path data-line="grain" d="M50 50V10"/></g>';
    const piece = read(group, { front: { outline: 'o', allowance: 7 } }).pattern.pieces[0]!;
    expect(piece).toMatchObject({ title: 'Front', cutting: { count: 2 }, lines: [{ kind: 'grain' }] });
    expect(edgeParts(piece).map(e => e.allowance)).toEqual([7, 7, 7, 7]);
  });

  test('with more or fewer names than edges is refused with both numbers', () => {
    const error = refusalOf(() =>
      read(drawing, { front: { outline: 'front-outline', edges: ['neck', 'side'] } }),
    );
    expect(error).toMatchObject({ code: 'edge-names-do-not-fit', where: { piece: 'front', line: 1 } });
    expect(error.message).toMatch(/4 edges.*2 names/);
  });

  test('that gives a kind to an edge which is not there is refused with a suggestion', () => {
    const error = refusalOf(() =>
      read(drawing, {
        front: { outline: 'front-outline', edges: ['neck', 'side', 'hem', 'centre'], kinds: { hemm: 'hem' } },
      }),
    );
    expect(error).toMatchObject({
      code: 'unknown-edge',
      remedy: 'Did you mean "hem"?',
      where: { piece: 'front' },
    });
  });

  test('that names one outline for two pieces is refused', () => {
    const outline = 'front-outline';
    expect(refusalOf(() => read(drawing, { front: { outline }, back: { outline } })).code).toBe(
      'duplicate-outline',
    );
  });

  test('that names an id which is not there is refused with a suggestion', () => {
    const error = refusalOf(() => read(drawing, { front: { outline: 'front-outlin' } }));
    expect(error).toMatchObject({ code: 'unknown-outline', remedy: 'Did you mean "front-outline"?' });
  });
});

describe('a drawing of the cutting line', () => {
  test('is moved inwards by the allowance it includes, which is the edges’ allowance afterwards', () => {
    const content =
      '<g data-piece="p" data-line-drawn="cutting" data-included-allowance="1cm"><path data-edge="top" d="M0 0H100"/><path data-edge="side" d="M100 0V80"/><path data-edge="hem" data-kind="hem" data-included-allowance="30" d="M100 80H0"/><path data-edge="centre" data-kind="fold" d="M0 80V0"/></g>';
    const piece = read(content).pattern.pieces[0]!;
    expect(edgeParts(piece).map(e => e.allowance)).toEqual([10, 10, 30, 0]);
    expect(edgeParts(piece).map(e => pathLength(e.path))).toEqual([90, 40, 90, 40]);
    expect(pathStart(edgePath(piece, 'top'))).toEqual({ x: 0, y: 10 });
  });

  test('is moved for closed outlines and for sheets too', () => {
    const rect = '<rect id="o" width="100" height="80"/>';
    const lengths = (content: string, pieces: SheetPieces = {}) =>
      edgeParts(read(content, pieces).pattern.pieces[0]!).map(e => [
        e.allowance,
        Number(pathLength(e.path).toFixed(6)),
      ]);
    const expected = [
      [10, 80],
      [10, 60],
      [10, 80],
      [10, 60],
    ];
    expect(
      lengths(
        `<g data-piece="p" data-included-allowance="10" data-line-drawn="cutting">${rect.replace('<rect', '<rect data-outline=""')}</g>`,
      ),
    ).toEqual(expected);
    expect(lengths(rect, { p: { outline: 'o', lineDrawn: 'cutting', includedAllowance: 10 } })).toEqual(
      expected,
    );
  });

  test('without the allowance it includes is taken as it is, with a finding', () => {
    const content =
      '<g data-piece="p" data-line-drawn="cutting" data-allowance="10"><rect data-outline="" width="100" height="80"/></g>';
    expect(new Set(read(content).findings.map(f => f.code))).toEqual(new Set(['allowance-not-given']));
  });

  test('with more allowance than there is room is refused', () => {
    const content =
      '<g data-piece="p" data-line-drawn="cutting" data-included-allowance="45"><rect data-outline="" width="100" height="80"/></g>';
    expect(refusalOf(() => read(content))).toMatchObject({ where: { file: 'p.svg', piece: 'p' } });
  });

  test('a piece drawn on the stitching line among others on the cutting line says so', () => {
    const content =
      '<g data-line-drawn="cutting" data-included-allowance="10" data-allowance="6"><g data-piece="p" data-line-drawn="stitching"><rect data-outline="" width="100" height="80"/></g></g>';
    const piece = read(content).pattern.pieces[0]!;
    expect(edgeParts(piece).map(e => [e.allowance, pathLength(e.path)])).toEqual([
      [6, 100],
      [6, 80],
      [6, 100],
      [6, 80],
    ]);
  });
});
