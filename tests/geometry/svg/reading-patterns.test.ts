import {
  edgeNamed,
  edgeNames,
  edgePath,
  isPatternDrawing,
  PatternError,
  pathLength,
  readPattern,
} from '@paperhinge/geometry';
import { pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { dartsOf, edgeParts, outlinePath } from '@paperhinge/geometry/pattern';
import { signedArea } from '@paperhinge/geometry/regions';
import { describe, expect, test } from 'vitest';
import { refusalOf, told, toldFinding } from '../../support/told.js';
import { inMillimetres } from './in-millimetres.js';

const read = (content: string, options = {}) => readPattern(inMillimetres(content), options);
const pieceIn = (content: string) =>
  read(`<g data-piece="p" data-allowance="10">${content}</g>`).pattern.pieces[0]!;
const findingsIn = (content: string) => read(`<g data-piece="p" data-allowance="10">${content}</g>`).findings;
const codes = (content: string) => findingsIn(content).map(f => f.code);
const refusal = (content: string, options = {}): ReturnType<typeof told> => {
  try {
    read(content, { file: 'p.svg', ...options });
  } catch (error) {
    if (error instanceof PatternError) return told(error);
    throw error;
  }
  throw new Error('it was read');
};
const inPiece = (content: string) => `\n<g data-piece="p" data-allowance="10">\n${content}</g>`;

const top = '<path data-edge="top" d="M0 0H100"/>';
const side = '<path data-edge="side" d="M100 0V80"/>';
const hem = '<path data-edge="hem" data-kind="hem" data-allowance="25" d="M100 80H0"/>';
const fold = '<path data-edge="centre" data-kind="fold" d="M0 80V0"/>';
const box = top + side + hem + fold;

describe('edges', () => {
  test('make one clockwise outline, each with its kind and allowance', () => {
    const piece = pieceIn(box);
    expect(edgeNames(piece)).toEqual(['top', 'side', 'hem', 'centre']);
    expect(edgeParts(piece).map(e => [e.kind, e.allowance])).toEqual([
      ['seam', 10],
      ['seam', 10],
      ['hem', 25],
      ['fold', 0],
    ]);
    expect(signedArea(outlinePath(piece.outline))).toBe(8000);
  });

  test('may be drawn in any order and direction', () => {
    const mixed =
      '<path data-edge="hem" d="M0 80H100"/><path data-edge="top" d="M0 0H100"/><path data-edge="side" d="M100 80V0"/><path data-edge="centre" d="M0 0V80"/>';
    const piece = pieceIn(mixed);
    expect(signedArea(outlinePath(piece.outline))).toBe(8000);
    expect(edgeNames(piece)).toEqual(['hem', 'centre', 'top', 'side']);
    expect(pathStart(edgePath(piece, 'top'))).toEqual({ x: 0, y: 0 });
  });

  test('that miss each other by up to 0.05 mm are joined at the middle, handles and all', () => {
    const piece = pieceIn(
      '<path data-edge="top" d="M0 0C30 10 70 10 100 0"/><path data-edge="side" d="M100.04 0V80"/>' +
        hem +
        fold,
    );
    const curve = edgeNamed(piece, 'top').path.segments[0]!;
    expect(curve[3]!.x).toBeCloseTo(100.02, 12);
    expect(curve[2]!.x).toBeCloseTo(70.02, 12);
    expect(pathStart(edgePath(piece, 'side'))).toEqual(curve[3]);
  });

  test('that leave a wider gap are refused with its size', () => {
    const error = refusal(inPiece(`${top}<path data-edge="side" d="M100 3.25V80"/>${hem}${fold}`));
    expect(error).toMatchObject({
      code: 'open-outline',
      where: { file: 'p.svg', line: 3, piece: 'p', edge: 'top' },
    });
    expect(error.facts).toMatchObject({ gapMm: 3.25 });
    expect(error.message).toContain('a gap of 3.3 mm');
    expect(error.message).toContain('"side"');
  });

  test('may be shapes and groups of any kind, moved by any transform', () => {
    const piece = pieceIn(
      `<g transform="translate(50 50) rotate(90) scale(2)"><line data-edge="a" x2="10"/><polyline data-edge="b" points="10,0 10,5 10,10"/><g data-edge="c"><path d="M0 10H5M5 10 L10 10"/></g><path data-edge="d" d="M0 0 0 10"/></g>`,
    );
    expect(signedArea(outlinePath(piece.outline))).toBeCloseTo(400, 9);
    expect(edgeParts(piece).map(e => pathLength(e.path))).toEqual([20, 20, 20, 20]);
  });

  test('one edge may go all the way round', () => {
    const piece = pieceIn('<circle data-edge="rim" cx="50" cy="50" r="20"/>');
    expect(edgeNames(piece)).toEqual(['rim']);
    expect(pathLength(edgePath(piece, 'rim'))).toBeCloseTo(40 * Math.PI, 6);
  });

  test('a point between two lines does not make a corner or an edge', () => {
    const piece = pieceIn(`<path data-edge="top" d="M0 0L0 0L100 0L100 0"/>${side}${hem}${fold}`);
    expect(edgeNamed(piece, 'top').path.segments).toHaveLength(1);
  });

  test('corner rules and openings are read', () => {
    const piece = pieceIn(
      `${top}<path data-edge="side" data-corner-start="pressed-open" data-corner-end="turned-up" data-opening="1 in" d="M100 0V80"/>${hem}${fold}`,
    );
    expect(edgeNamed(piece, 'side')).toMatchObject({
      corners: { start: 'pressed-open', end: 'turned-up' },
      opening: 25.4,
    });
    expect(edgeNamed(piece, 'top').corners).toEqual({});
  });

  test.each([
    ['two edges of one name', top + top + side + hem + fold, 'duplicate-edge', 'top'],
    ['an edge without a name', '<path data-edge=" " d="M0 0H100"/>', 'name-missing', undefined],
    [
      'an unknown kind',
      '<path data-edge="top" data-kind="hemm" d="M0 0H100"/>',
      'word-not-understood',
      'top',
    ],
    [
      'an unknown corner rule',
      '<path data-edge="top" data-corner-end="miter" d="M0 0H100"/>',
      'word-not-understood',
      'top',
    ],
    [
      'a negative allowance',
      '<path data-edge="top" data-allowance="-3" d="M0 0H100"/>',
      'allowance-out-of-range',
      'top',
    ],
    [
      'an absurd allowance',
      '<path data-edge="top" data-allowance="40 in" d="M0 0H100"/>',
      'allowance-out-of-range',
      'top',
    ],
    [
      'an allowance that is no length',
      '<path data-edge="top" data-allowance="wide" d="M0 0H100"/>',
      'length-not-understood',
      'top',
    ],
    [
      'an opening of nothing',
      '<path data-edge="top" data-opening="0" d="M0 0H100"/>',
      'length-not-positive',
      'top',
    ],
    ['damaged path data', '<path data-edge="top" d="M0 0 H100 L4"/>', 'path-data-broken', 'top'],
    ['an edge all alone', '<path data-edge="top" d="M0 0H100"/>', 'open-outline', 'top'],
    [
      'edges on top of each other',
      '<path data-edge="a" d="M0 0H100"/><path data-edge="b" d="M0 0H100"/>',
      'outline-without-area',
      undefined,
    ],
    [
      'nothing but darts',
      '<path data-dart="a" d="M0 0L50 50L99 0"/><path data-dart="b" d="M0 0L50 -50L99 0"/>',
      'piece-without-outline',
      undefined,
    ],
    ['nothing but a line', '<path data-line="grain" d="M0 0H100"/>', 'piece-without-outline', undefined],
  ])('%s: refused with its line', (_, content, code, edge) => {
    const error = refusal(inPiece(content));
    expect(error.code).toBe(code);
    expect(error.where).toMatchObject({
      file: 'p.svg',
      piece: 'p',
      line: expect.any(Number),
      column: expect.any(Number),
    });
    expect(error.where.line).toBeGreaterThanOrEqual(2);
    if (edge) expect(error.where.edge).toBe(edge);
    expect(error.remedy).not.toBe('');
  });

  test('the place of damaged path data is given to the character', () => {
    const error = refusal('\n<g data-piece="p">\n  <path data-edge="e" d="M0 0\n  L10 10 Q5 x"/></g>');
    expect(error.where).toMatchObject({ line: 4, column: 13, edge: 'e' });
  });

  test('an outline that crosses itself is refused with the place', () => {
    const error = refusal(
      inPiece(
        '<path data-edge="a" d="M0 0L100 0"/><path data-edge="b" d="M100 0L0 80"/><path data-edge="c" d="M0 80L150 90"/><path data-edge="d" d="M150 90L0 0"/>',
      ),
    );
    expect(error.code).toBe('self-crossing');
    expect(error.message).toMatch(/57\.1 mm across and 34\.3 mm down: ("b" and "d"|"d" and "b")\./);
    expect(error.where).toMatchObject({ piece: 'p', line: 3 });
  });

  test('the nearest word is suggested', () => {
    expect(refusal(inPiece('<path data-edge="top" data-kind="Hemm" d="M0 0H100"/>')).remedy).toBe(
      'Did you mean "hem"?',
    );
  });
});

describe('allowances', () => {
  test('are inherited from the nearest element that has one, in its own unit or the drawing’s', () => {
    const source = `<svg xmlns="http://www.w3.org/2000/svg" width="500mm" height="500mm" viewBox="0 0 500 500" data-unit="in" data-allowance="1/2"><g data-piece="p"><g data-allowance="5mm">${top}</g>${side}<g><path data-edge="hem" data-allowance="3/8" d="M100 80H0"/></g><path data-edge="left" d="M0 80V0"/></g></svg>`;
    const piece = readPattern(source).pattern.pieces[0]!;
    expect(edgeParts(piece).map(e => e.allowance)).toEqual([5, 12.7, 9.525, 12.7]);
    expect(readPattern(source).findings).toEqual([]);
  });

  test('not given are 0, with a finding that names the edge', () => {
    const { pattern, findings } = read(`<g data-piece="p">${top}${side}${hem}${fold}</g>`);
    expect(edgeParts(pattern.pieces[0]!).map(e => e.allowance)).toEqual([0, 0, 25, 0]);
    expect(findings).toMatchObject([
      { code: 'allowance-not-given', severity: 'note', where: { piece: 'p', edge: 'top' } },
      { code: 'allowance-not-given', where: { edge: 'side' } },
    ]);
  });

  test('of fold and raw edges are always 0', () => {
    const piece = pieceIn(
      `${top}${side}<path data-edge="hem" data-kind="raw" data-allowance="7" d="M100 80H0"/>${fold}`,
    );
    expect(edgeParts(piece).map(e => e.allowance)).toEqual([10, 10, 0, 0]);
  });
});

describe('darts', () => {
  const sideUpper = '<path data-edge="side-upper" d="M100 0V30"/>';
  const sideLower = '<path data-edge="side-lower" d="M100 50V80"/>';
  const withDart = (dart: string) => top + sideUpper + dart + sideLower + hem + fold;

  test('open into the outline, legs in clockwise order however they are drawn', () => {
    for (const d of ['M100 30L40 40L100 50', 'M100 50L40 40L100 30', 'M100 30L40 40L100 50Z']) {
      const piece = pieceIn(withDart(`<path data-dart="bust" data-pressed="end" d="${d}"/>`));
      const [dart] = dartsOf(piece);
      expect(dart).toMatchObject({ name: 'bust', apex: { x: 40, y: 40 }, pressed: 'end' });
      expect(pathStart(dart!.legs[0])).toEqual({ x: 100, y: 30 });
      expect(edgeNames(piece)).toEqual(['top', 'side-upper', 'side-lower', 'hem', 'centre']);
      expect(signedArea(outlinePath(piece.outline))).toBe(8000 - 600);
    }
  });

  test('have curved legs too; the point is the sharpest joint', () => {
    const piece = pieceIn(
      withDart('<path data-dart="bust" d="M100 30C80 32 70 33 60 36L40 40L60 44C70 47 80 48 100 50"/>'),
    );
    expect(dartsOf(piece)[0]!.apex).toEqual({ x: 40, y: 40 });
    expect(dartsOf(piece)[0]!.legs[0].segments).toHaveLength(2);
  });

  test('may interrupt an edge, which stays one edge', () => {
    const piece = pieceIn(
      `${top}<path data-edge="side" d="M100 0V30M100 50V80"/><path data-dart="bust" d="M100 30L40 40L100 50"/>${hem}${fold}`,
    );
    expect(edgeNames(piece)).toEqual(['top', 'side', 'hem', 'centre']);
    expect(pathLength(edgePath(piece, 'side'))).toBe(60);
  });

  test('an interrupted edge that is drawn first begins at its own start', () => {
    const piece = pieceIn(
      `<path data-edge="side" d="M100 50V80M100 0V30"/>${top}<path data-dart="bust" d="M100 30L40 40L100 50"/>${hem}${fold}`,
    );
    expect(piece.outline.parts.map(p => p.name)).toEqual(['side', 'bust', 'side', 'hem', 'centre', 'top']);
    expect(pathStart(edgePath(piece, 'side'))).toEqual({ x: 100, y: 0 });
  });

  test('with legs up to 1 mm unlike are read with a finding, beyond that refused', () => {
    const near = withDart('<path data-dart="bust" d="M100 30L40 40.3L100 50"/>');
    expect(findingsIn(near)).toMatchObject([
      { code: 'dart-legs-differ', where: { piece: 'p', edge: 'bust' } },
    ]);
    const { firstMm, secondMm } = findingsIn(near)[0]!.figures!;
    expect(firstMm).toBeCloseTo(Math.hypot(60, 10.3), 9);
    expect(secondMm).toBeCloseTo(Math.hypot(60, 9.7), 9);
    const far = refusal(inPiece(withDart('<path data-dart="bust" d="M100 30L40 44L100 50"/>')));
    expect(far).toMatchObject({ code: 'dart-legs-differ', where: { piece: 'p', edge: 'bust', line: 3 } });
  });

  test.each([
    'M50 20L55 40L50 60L45 40Z',
    'M50 20L55 40L50 60L45 40L50 20',
    'M50 20L55 40L50 60L45 40L50 20.01',
  ])('with two points lie within the piece, as lines, closed by a word or by coming back: %s', d => {
    const piece = pieceIn(`${box}<path data-dart="waist" d="${d}"/>`);
    expect(dartsOf(piece)).toEqual([]);
    expect(piece.lines).toMatchObject([{ kind: 'dart', name: 'waist' }]);
  });

  test('without a point are refused', () => {
    expect(
      refusal(inPiece(withDart('<path data-dart="bust" d="M100 30C40 30 40 50 100 50"/>'))),
    ).toMatchObject({
      code: 'dart-without-apex',
      where: { edge: 'bust' },
    });
  });
});

describe('a piece', () => {
  test('has its title, cutting and note, with defaults', () => {
    const cutting = (attributes: string, edges = `${top + side + hem}<path data-edge="left" d="M0 80V0"/>`) =>
      read(`<g data-piece="p" data-allowance="1" ${attributes}>${edges}</g>`).pattern.pieces[0]!.cutting;
    expect(cutting('')).toEqual({ count: 1, mirrored: false, fabric: 'main' });
    expect(cutting('data-cut="2"')).toEqual({ count: 2, mirrored: true, fabric: 'main' });
    expect(cutting('data-cut="2" data-mirrored="no" data-fabric="lining" data-note="bias"')).toEqual({
      count: 2,
      mirrored: false,
      fabric: 'lining',
      note: 'bias',
    });
    expect(cutting('data-cut="2"', box).mirrored).toBe(false);
    for (const count of ['0', '-1', '1.5', 'two', ''])
      expect(refusal(`<g data-piece="p" data-cut="${count}">${box}</g>`).code).toBe('cut-count');
  });

  test('has lines and marks', () => {
    const piece = pieceIn(
      `${box}<path data-line="grain" d="M20 70V10"/><line data-line="level" data-name="waist" x1="0" y1="40" x2="100" y2="40"/><circle data-mark="point" data-name="bust point" cx="40" cy="30" r="2"/><path data-mark="button" d="M9 10H11M10 9V11"/><path data-mark="drill" d="M70 60"/>`,
    );
    expect(piece.lines.map(l => [l.kind, l.name])).toEqual([
      ['grain', 'grain'],
      ['level', 'waist'],
    ]);
    expect(piece.marks).toMatchObject([
      { kind: 'point', name: 'bust point' },
      { kind: 'button', name: 'button', at: { x: 10, y: 10 } },
      { kind: 'drill', at: { x: 70, y: 60 } },
    ]);
    expect(piece.marks[0]!.at.x).toBeCloseTo(40, 9);
  });

  test('keeps a line of an unknown kind as a style line, with a finding', () => {
    const content = `${box}<path data-line="centre" d="M20 70V10"/>`;
    expect(pieceIn(content).lines).toMatchObject([{ kind: 'style', name: 'centre' }]);
    expect(codes(content)).toEqual(['word-not-understood']);
  });

  test('is named once', () => {
    const two = `<g data-piece="p" data-allowance="1">${box}</g>`;
    expect(refusal(`${two}\n${two}`)).toMatchObject({
      code: 'duplicate-piece',
      where: { line: 2, piece: 'p' },
    });
  });

  test('shown by a use is read where it stands', () => {
    const { pattern } = read(
      `<defs><g id="g" data-piece="p" data-allowance="1">${box}</g></defs><use href="#g" x="200"/>`,
    );
    expect(pathStart(edgePath(pattern.pieces[0]!, 'top'))).toEqual({ x: 200, y: 0 });
  });

  test('what is derived in its group is passed over', () => {
    const derived =
      '<path data-derived="cutting-line" data-edge="x" d="M0 0 broken"/><g data-derived="notes"><path data-mark="y" d=""/></g>';
    expect(findingsIn(box + derived)).toEqual([]);
  });
});

describe('notches', () => {
  const notchesIn = (content: string) => pieceIn(box + content).notches;

  test('sit where their drawing crosses the outline', () => {
    expect(notchesIn('<path data-notch="single" d="M90 30H110"/>')).toEqual([
      { edge: 'side', at: 30, style: 'single' },
    ]);
    expect(notchesIn('<path data-notch="single" data-name="hip" d="M100 30L95 29"/>')).toMatchObject([
      { edge: 'side', at: 30, name: 'hip' },
    ]);
  });

  test('else at the outline point nearest to their nearer end', () => {
    expect(notchesIn('<path data-notch="single" d="M104 33L110 20"/>')).toMatchObject([
      { edge: 'side', at: 33 },
    ]);
    expect(notchesIn('<path data-notch="single" d="M70 20L96 44"/>')).toMatchObject([
      { edge: 'side', at: 44 },
    ]);
  });

  test('double ones in the middle of the pair, wedges in the middle of their mouth', () => {
    expect(notchesIn('<path data-notch="double" d="M95 20H105M95 26H105"/>')).toMatchObject([
      { edge: 'side', at: 23, style: 'double' },
    ]);
    expect(notchesIn('<g data-notch="double"><path d="M95 20H99"/><path d="M95 28H99"/></g>')).toMatchObject([
      { at: 24 },
    ]);
    expect(notchesIn('<path data-notch="single" d="M105 37L95 40L105 43"/>')[0]!.at).toBeCloseTo(40, 9);
    expect(notchesIn('<path data-notch="triple" d="M95 20H105M95 26H105M95 32H105"/>')).toMatchObject([
      { at: 26 },
    ]);
  });

  test('where the drawing runs through two edges sit on the one nearer to its middle', () => {
    expect(notchesIn('<path data-notch="single" d="M50 -20L50 84"/>')).toMatchObject([
      { edge: 'top', at: 50 },
    ]);
    expect(notchesIn('<path data-notch="single" d="M50 -4L50 100"/>')).toMatchObject([
      { edge: 'hem', at: 50 },
    ]);
  });

  test('of an unknown style are single ones, with a finding; ones that draw nothing are left out with one', () => {
    const content = '<path data-notch="dubble" d="M90 30H110"/>';
    expect(notchesIn(content)).toEqual([{ edge: 'side', at: 30, style: 'single' }]);
    expect(findingsIn(box + content).map(found => toldFinding(found))).toMatchObject([
      { code: 'word-not-understood', remedy: 'Did you mean "double"?', where: { piece: 'p', line: 1 } },
    ]);
    expect(codes(`${box}<path data-notch="single" d=""/>`)).toEqual(['nothing-drawn']);
  });
});

describe('what is not understood', () => {
  test('misspelt attributes are findings with line and suggestion', () => {
    const { findings } = read(
      inPiece(`<path data-edge="top" data-alowance="3" d="M0 0H100"/>${side}${hem}${fold}`),
    );
    expect(findings.map(found => toldFinding(found))).toMatchObject([
      {
        code: 'attribute-unknown',
        severity: 'warning',
        where: { line: 3 },
        remedy: 'Did you mean "data-allowance"?',
      },
    ]);
  });

  test('attributes of other programs are a note, ours on the wrong element a warning', () => {
    expect(findingsIn(`${box}<g data-editor-layer-7="x"/>`)).toMatchObject([
      { code: 'attribute-unknown', severity: 'note' },
    ]);
    expect(codes(`<path data-edge="top" data-cut="2" d="M0 0H100"/>${side}${hem}${fold}`)).toEqual([
      'attribute-misplaced',
    ]);
  });

  test('plain drawing in a piece is one note, text none', () => {
    expect(codes(`${box}<path d="M1 1H5"/><rect width="2" height="2"/><text>Front</text>`)).toEqual([
      'drawing-not-read',
    ]);
    expect(codes(`${box}<text>Front</text>`)).toEqual([]);
  });

  test('damage to a shape without meaning is a finding, to a group that moves the piece an error', () => {
    expect(codes(`${box}<path d="M0 0 L5 5 x"/>`)).toEqual(['path-data-broken', 'drawing-not-read']);
    expect(refusal(inPiece(`<g transform="turn(3)">${box}</g>`))).toMatchObject({
      code: 'attribute-not-understood',
      where: { line: 3 },
    });
    expect(refusal(inPiece(`<g data-edge="e"><path d="M0 0 L5 5 x"/></g>`)).code).toBe('path-data-broken');
  });

  test('edges outside every piece and pieces that show nothing are findings', () => {
    const { findings } = read(
      `${inPiece(box)}<path data-edge="lost" d="M0 0H1"/><g data-piece="q" display="none">${box}</g>`,
    );
    expect(findings.map(f => f.code).sort()).toEqual(['outside-piece', 'piece-left-out']);
  });

  test('a fold that is not straight is a finding', () => {
    expect(
      codes(`${top}${side}${hem}<path data-edge="centre" data-kind="fold" d="M0 80Q4 40 0 0"/>`),
    ).toEqual(['fold-not-straight']);
  });

  test('a drawing without pieces is refused', () => {
    expect(refusal('<rect width="1" height="1"/>').code).toBe('no-pieces');
  });
});

test('a pattern that a drawing program saved again is read as before, without findings', () => {
  // As such programs write it: their own namespaces, attributes, styles, ids, RDF, a layer with a transform.
  const source = `<?xml version="1.0" encoding="UTF-8" standalone="no"?>
<!-- Created with a drawing program -->
<svg width="210mm" height="297mm" viewBox="0 0 210 297" version="1.1" id="svg1" data-unit="mm"
   xmlns:ed="http://example.org/editor" xmlns="http://www.w3.org/2000/svg" xmlns:svg="http://www.w3.org/2000/svg"
   xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#" xmlns:dc="http://purl.org/dc/elements/1.1/">
  <ed:namedview id="view" zoom="1.2"><ed:grid id="grid"/></ed:namedview>
  <defs id="defs1"><linearGradient id="g"/></defs>
  <metadata id="metadata1">{ "seams": { "s": { "a": "p.top from centre", "b": "p.hem from centre" } } }<rdf:RDF><dc:title/></rdf:RDF></metadata>
  <g id="layer1" ed:label="Layer 1" ed:groupmode="layer" style="display:inline" transform="matrix(0,1,-1,0,180,10)">
    <g data-piece="p" data-allowance="10" id="g2" style="fill:none;stroke:#222;stroke-width:0.26">
      <path d="m 0,0 h 100" data-edge="top" id="e1" ed:connector-curvature="0" />
      <path d="M 100,0 V 80" data-edge="side" id="e2" style="fill:none" />
      <path d="m 100,80 c -33.33333,0 -66.66667,0 -100,0" data-edge="hem" id="e3" />
      <path d="M 0,80 0,0" data-kind="fold" data-edge="centre" id="e4" />
      <text xml:space="preserve" x="3" y="9"><tspan ed:role="line">Front</tspan></text>
    </g>
  </g>
</svg>`;
  const { pattern, findings } = readPattern(new TextEncoder().encode(source));
  expect(findings).toEqual([]);
  expect(edgeParts(pattern.pieces[0]!).map(e => [e.name, Number(pathLength(e.path).toFixed(6))])).toEqual([
    ['top', 100],
    ['side', 80],
    ['hem', 100],
    ['centre', 80],
  ]);
  expect(pattern.seams[0]!.b[0]).toEqual({ piece: 'p', edge: 'hem', reversed: true });
});

test('a pattern is told from other drawings by the attributes only it has', () => {
  expect(isPatternDrawing(inMillimetres(inPiece(box)))).toBe(true);
  expect(
    isPatternDrawing(inMillimetres('<g data-name="Layer 1" data-unit="px"><rect width="1" height="1"/></g>')),
  ).toBe(false);
});

test('its name is its own, or the file’s without the folder', () => {
  const source = inMillimetres(inPiece(box));
  expect(readPattern(source, { file: 'patterns/shift.svg' }).pattern.name).toBe('shift.svg');
  expect(
    readPattern(source.replace('<svg', '<svg data-pattern="Shift"'), { file: 'x.svg' }).pattern.name,
  ).toBe('Shift');
});

test('a notch keeps its place to a millionth on a curve', () => {
  const piece = pieceIn(
    `<path data-edge="top" d="M0 0C30 -20 70 -20 100 0"/>${side}${hem}${fold}<path data-notch="single" d="M50 -30V0"/>`,
  );
  const [notch] = piece.notches;
  expect(pointAlong(edgePath(piece, 'top'), notch!.at).x).toBeCloseTo(50, 7);
});

describe('the size of a drawing', () => {
  const sized = (width: string) =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${width}" viewBox="0 0 400 400"><g data-piece="front" data-allowance="0">` +
    '<path data-edge="top" d="M0,0 H300"/><path data-edge="side" d="M300,0 V300"/><path data-edge="hem" d="M300,300 L0,0"/></g></svg>';

  test('in a unit that SVG does not have is refused, not guessed', () => {
    expect(refusalOf(() => readPattern(sized('400m')))).toMatchObject({
      code: 'unit-not-known',
      remedy: 'Write width and height in mm, cm or in.',
    });
  });

  test.each(['0', '-400mm', '0mm'])('of %s is told as none, not as a strange unit', width => {
    const refused = refusalOf(() => readPattern(sized(width)));
    expect(refused.code).toBe('unit-not-known');
    expect(refused.message).toBe('How large the drawing is cannot be known: its width is 0 or less.');
  });

  test('whose width and height do not go with its viewBox is told with what either must be', () => {
    const changed = sized('400mm').replace('height="400mm"', 'height="300mm"');
    const told = readPattern(changed).findings.filter(f => f.code === 'size-out-of-proportion');
    expect(told.map(f => [f.severity, f.figures])).toEqual([['warning', { widthMm: 300, heightMm: 400 }]]);
    for (const rounded of ['400.9mm', '399.1mm', '15.75in'])
      expect(
        readPattern(sized('400mm').replace('height="400mm"', `height="${rounded}"`)).findings.map(
          f => f.code,
        ),
      ).not.toContain('size-out-of-proportion');
  });

  test('that makes a piece of many metres is told as a likely wrong unit', () => {
    const { findings } = readPattern(sized('400in'));
    expect(findings.map(f => f.code)).toContain('piece-very-large');
    expect(readPattern(sized('400mm')).findings.map(f => f.code)).not.toContain('piece-very-large');
  });
});
