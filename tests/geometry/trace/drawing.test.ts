import { readdirSync, readFileSync } from 'node:fs';
import { type OutlinePart, type Piece, readPattern } from '@paperhinge/geometry';
import { signedArea } from '@paperhinge/geometry/regions';
import {
  type DrawnLine,
  drawingOfSvg,
  type ForeignDrawing,
  piecesOfDrawing,
} from '@paperhinge/geometry/trace';
import { describe, expect, test } from 'vitest';
import { refusalOf, toldFinding } from '../../support/told.js';

const svg = (body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="600mm" viewBox="0 0 600 600">${body}</svg>`;
const traced = (body: string, wishes: { gap?: number; layer?: string } = {}) =>
  piecesOfDrawing('x', drawingOfSvg(svg(body)).drawing, { gap: 0.2, ...wishes });
const only = (body: string): Piece => traced(body).pattern.pieces[0]!;
const edges = (piece: Piece) => piece.outline.parts.flatMap(part => (part.type === 'edge' ? [part] : []));
const segmentsOf = (part: OutlinePart) =>
  part.type === 'edge'
    ? part.path.segments
    : part.type === 'dart'
      ? part.legs.flatMap(leg => leg.segments)
      : part.mouth.segments;
const area = (piece: Piece): number => signedArea({ segments: piece.outline.parts.flatMap(segmentsOf) });

const outer = '<path d="M 85 85 H 315 V 440 H 85 Z"/>';
const inner = '<path d="M 100 100 H 300 V 400 H 100 Z"/>';

test('long bent lines that go round nothing are told, straight ones and short ones are not', () => {
  const piece = '<path fill="none" d="M 20 20 H 120 V 120 H 20 Z"/>';
  const codes = (body: string) => traced(piece + body).findings.map(found => found.code);
  const told = traced(`${piece}<path d="M 200 20 H 500 V 400"/>`).findings.find(
    f => f.code === 'long-lines-left',
  )!;
  expect(told.figures).toMatchObject({ lines: 1, lengthMm: 680 });
  expect(toldFinding(told).message).toContain('680 mm');
  expect(codes('<path d="M 200 20 H 580"/>')).not.toContain('long-lines-left');
  expect(codes('<path d="M 200 20 H 260 V 80"/>')).not.toContain('long-lines-left');
});

describe('two lines beside one another', () => {
  test('the inner is sewn, and the way between them is each edge’s allowance', () => {
    const { pattern, bothLines, findings } = traced(outer + inner);
    expect(bothLines).toBe(true);
    expect(area(pattern.pieces[0]!)).toBeCloseTo(200 * 300, 6);
    expect(edges(pattern.pieces[0]!).map(edge => edge.allowance)).toEqual([15, 15, 40, 15]);
    expect(findings.map(found => found.code)).toEqual(['lines-told-apart']);
  });

  test('one line alone leaves open what it is', () => {
    const { bothLines, findings } = traced(outer);
    expect(bothLines).toBe(false);
    expect(findings.map(found => found.code)).toEqual(['one-line-drawn']);
  });

  test('three are sizes, chosen by layer', () => {
    const size = (n: number, colour: string): string =>
      `<path stroke="${colour}" d="M ${100 - n} ${100 - n} h ${200 + 2 * n} v ${300 + 2 * n} h ${-200 - 2 * n} Z"/>`;
    const nest = size(0, 'red') + size(10, 'green') + size(20, 'blue');
    const { message, remedy } = refusalOf(() => traced(nest));
    expect(message).toContain('sizes');
    expect(remedy).toContain('--layer "green"');
    expect(area(traced(nest, { layer: 'green' }).pattern.pieces[0]!)).toBeCloseTo(220 * 320, 6);
    expect(refusalOf(() => traced(nest, { layer: 'grean' })).code).toBe('layer-not-there');
  });

  test('a pocket’s place is neither', () => {
    const piece = only(`${outer}<path d="M 180 300 h 60 v 70 h -60 Z"/>`);
    expect(area(piece)).toBeCloseTo(230 * 355, 6);
    expect(piece.lines.map(line => line.kind)).toEqual(['placement']);
  });
});

describe('signs within an outline', () => {
  test('a wedge at the edge is a dart, whatever its strokes', () => {
    for (const wedge of [
      '<path d="M 100 180 L 180 195 L 100 210"/>',
      '<path d="M 100 180 L 180 195"/><path d="M 180 195 L 100 210"/>',
    ]) {
      const piece = only(inner + wedge);
      const dart = piece.outline.parts.find(part => part.type === 'dart');
      expect(dart).toMatchObject({ apex: { x: expect.closeTo(100, 6), y: expect.closeTo(115, 6) } });
      // The edge that it opens into stays one edge.
      expect(new Set(edges(piece).map(edge => edge.name)).size).toBe(4);
      expect(area(piece)).toBeCloseTo(200 * 300 - (30 * 80) / 2, 6);
    }
  });

  test('a dart drawn as part of the outline is one', () => {
    const piece = only('<path d="M 100 100 H 300 V 400 H 100 V 210 L 180 195 L 100 180 Z"/>');
    expect(piece.outline.parts.filter(part => part.type === 'dart')).toHaveLength(1);
    expect(new Set(edges(piece).map(edge => edge.name)).size).toBe(4);
  });

  test('a tick is a notch, at its place on the edge', () => {
    const piece = only(`${inner}<path d="M 300 150 h -8"/>`);
    expect(piece.notches).toHaveLength(1);
    expect(piece.notches[0]!.at).toBeCloseTo(50, 6);
    expect(edges(piece).find(edge => edge.name === piece.notches[0]!.edge)!.path.segments[0]![0].x).toBe(220);
  });

  test('the grain has an arrow, or stands upright and says that it was guessed', () => {
    const arrow =
      '<path d="M 200 150 L 230 350"/><path d="M 226 340 L 230 350"/><path d="M 230 350 L 224 341"/>';
    expect(traced(inner + arrow).findings.map(found => found.code)).not.toContain('grain-guessed');
    const grain = only(inner + arrow).lines.filter(line => line.kind === 'grain');
    expect(grain).toHaveLength(1);
    const guessed = traced(`${inner}<path d="M 200 150 V 350"/>`);
    expect(guessed.findings.map(found => found.code)).toContain('grain-guessed');
    expect(
      traced(`${inner}<path d="M 150 150 L 250 350"/>`).pattern.pieces[0]!.lines.map(line => line.kind),
    ).toEqual(['style']);
  });

  test('a dashed edge, or one with the word beside it, lies on the fold', () => {
    const loose = (left: string): string =>
      `<path d="M 100 100 H 300"/><path d="M 300 100 V 400"/><path d="M 300 400 H 100"/>${left}`;
    const folds = (piece: Piece): readonly string[] =>
      edges(piece)
        .filter(edge => edge.kind === 'fold')
        .map(edge => edge.name);
    expect(folds(only(loose('<path stroke-dasharray="8 4" d="M 100 400 V 100"/>')))).toHaveLength(1);
    expect(folds(only(`${inner}<text x="110" y="250">Place on fold</text>`))).toHaveLength(1);
    expect(folds(only(`${inner}<text x="110" y="250">im Stoffbruch</text>`))).toHaveLength(1);
    expect(folds(only(`${inner}<text x="110" y="250">unfolded later</text>`))).toHaveLength(0);
  });

  test('what is written on a piece is its title', () => {
    expect(only(`${inner}<text x="150" y="200">Back yoke</text>`).title).toBe('Back yoke');
  });
});

describe('loose strokes', () => {
  const loose =
    '<path d="M 100 100 H 299.2"/><path d="M 300 100 V 400"/><path d="M 300 400 H 100"/><path d="M 100 400 V 100"/>';

  test('are joined within the gap that is given, in the middle of it', () => {
    expect(area(traced(loose, { gap: 1 }).pattern.pieces[0]!)).toBeCloseTo(200 * 300 - 0.4 * 150, 1);
    expect(refusalOf(() => traced(loose)).code).toBe('no-outline-in-drawing');
  });

  test('that do not meet are shown beside those that do', () => {
    const { findings } = traced(`${loose}<path d="M 400 100 h 100 v 200 h -100 Z"/>`);
    const told = findings.map(found => toldFinding(found).message);
    expect(told).toContain('A line 999.2 mm long nearly comes home: its ends lie 0.8 mm apart.');
  });
});

describe('our demos as any other program would draw them', () => {
  const demos = new URL('../../../demos/patterns/', import.meta.url);
  /** Their strokes alone, broken at their corners, in any order and direction, their ends up to 0.1 mm off. */
  function strewn(drawing: ForeignDrawing): ForeignDrawing {
    let state = 11;
    const random = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const shake = (p: { readonly x: number; readonly y: number }) => ({
      x: p.x + (random() - 0.5) * 0.14,
      y: p.y + (random() - 0.5) * 0.14,
    });
    const lines = drawing.lines.flatMap(({ path, closed, ...line }): DrawnLine[] =>
      path.segments.map(segment => {
        const moved = [shake(segment[0]), ...segment.slice(1, -1), shake(segment.at(-1)!)];
        const turned = random() < 0.5 ? moved.reverse() : moved;
        return { ...line, closed: false, path: { segments: [turned as unknown as typeof segment] } };
      }),
    );
    return {
      words: [],
      lines: lines
        .map(line => ({ line, at: random() }))
        .sort((a, b) => a.at - b.at)
        .map(({ line }) => line),
    };
  }

  test.each(readdirSync(demos).filter(name => name.endsWith('.svg')))('%s', name => {
    const text = readFileSync(new URL(name, demos), 'utf8');
    const { pattern } = readPattern(text);
    const bare = text
      .replace(/<metadata>.*?<\/metadata>/su, '')
      .replace(/<path data-(notch|line)[^>]*>/gu, '')
      .replace(/ data-[\w-]+="[^"]*"/gu, '')
      .replace(/<text.*?<\/text>/gsu, '');
    const { drawing } = drawingOfSvg(bare);
    const back = piecesOfDrawing(name, strewn(drawing), { gap: 0.5 }).pattern;
    const sizes = (of: readonly Piece[]): readonly number[] => of.map(area).sort((a, b) => a - b);
    expect(back.pieces).toHaveLength(pattern.pieces.length);
    const [theirs, ours] = [sizes(back.pieces), sizes(pattern.pieces)];
    // A tenth of a millimetre all round.
    for (const [i, size] of theirs.entries()) expect(Math.abs(size - ours[i]!)).toBeLessThan(0.1 * 3000);
  });
});
