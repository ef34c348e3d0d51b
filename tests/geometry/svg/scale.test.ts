import { readPattern, readShapes, sizesOf } from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { describe, expect, test } from 'vitest';
import { refusalOf, toldFinding } from '../../support/told.js';

const edges =
  '<path data-edge="neck" d="M20 20 L60 20"/><path data-edge="side" d="M60 20 L60 90"/>' +
  '<path data-edge="hem" data-kind="hem" d="M60 90 L20 90"/><path data-edge="cf" data-kind="fold" d="M20 90 L20 20"/>';
const drawing = (root: string, content = edges) =>
  `<svg xmlns="http://www.w3.org/2000/svg" data-paperhinge="2" ${root}><g data-piece="front" data-cut="1" data-allowance="10mm">${content}</g></svg>`;
const mm = 'width="100mm" height="100mm" viewBox="0 0 100 100"';
const read = (source: string, options = {}) => readPattern(source, options);
const width = (source: string, options = {}): number => {
  const { min, max } = boundsOfPath(outlinePath(read(source, options).pattern.pieces[0]!.outline));
  return max.x - min.x;
};

describe('a pattern whose scale cannot be known is refused with what to write', () => {
  // Each was read at 1/96 in, without a word.
  test.each([
    '0 0 100',
    '0,0,100,100,',
    '0 0 -100 100',
    '0px 0px 100px 100px',
    '0 0 abc 100',
    '0 0 0 100',
    '',
  ])('viewBox="%s"', viewBox => {
    const source = drawing(`width="100mm" height="100mm" viewBox="${viewBox}"`);
    expect(refusalOf(() => read(source))).toMatchObject({
      code: 'scale-not-known',
      where: { line: 1 },
      remedy: expect.stringContaining('viewBox="0 0 600 800"'),
    });
    // The remedy, followed, mends it; a drawing that is no pattern is measured with a warning.
    expect(width(source.replace(/viewBox="[^"]*"/, 'viewBox="0 0 100 100"'))).toBeCloseTo(40, 9);
    expect(readShapes(source).findings).toHaveLength(1);
  });

  test('percentages', () => {
    const source = drawing('width="100%" height="100%" viewBox="0 0 100 100"');
    expect(refusalOf(() => read(source))).toMatchObject({ code: 'scale-not-known' });
    expect(width(source, { scale: { unitMm: 1 } })).toBeCloseTo(40, 9);
  });
});

describe('a pattern in pixels, or without a size, is read at 96 to the inch', () => {
  test.each([
    ['width="100" height="100" viewBox="0 0 100 100"', 'gives its size in pixels'],
    ['width="100px" height="100px"', 'gives its size in pixels'],
    ['viewBox="0 0 100 100"', 'does not say how large it is'],
    ['', 'does not say how large it is'],
  ])('%s: with a warning that says how large that makes it', (root, words) => {
    const { findings } = read(drawing(root));
    expect(findings.map(found => toldFinding(found))).toMatchObject([
      { code: 'scale-assumed', severity: 'warning', message: expect.stringContaining(words) },
    ]);
    expect(toldFinding(findings[0]!).message).toContain(
      `the front, ${((70 * 25.4) / 96).toFixed(1)} mm long`,
    );
    expect(toldFinding(findings[0]!, 'in').message).toContain('the front, 3/4 in long');
  });

  test('the scale that the warning asks for ends it', () => {
    const source = drawing('width="100" height="100" viewBox="0 0 100 100"');
    expect(read(source, { scale: { factor: 4 } }).findings).toEqual([]);
    expect(width(source, { scale: { factor: 4 } })).toBeCloseTo((4 * 40 * 25.4) / 96, 9);
    expect(width(source, { scale: { unitMm: 1 } })).toBeCloseTo(40, 9);
  });

  test('in millimetres, without a word', () => {
    expect(read(drawing(mm)).findings).toEqual([]);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('a scale of %s is refused', factor => {
    expect(refusalOf(() => read(drawing(mm), { scale: { factor } })).code).toBe('scale-out-of-range');
  });
});

describe('what was drawn to mean something does not vanish in silence', () => {
  const told = (content: string) =>
    read(drawing(mm, content))
      .findings.map(found => toldFinding(found))
      .map(({ code, message }) => [code, message]);

  test('an edge without geometry', () => {
    expect(told(`<path data-edge="ghost" d="M5 5"/><path data-edge="ghost2"/>${edges}`)).toEqual([
      ['nothing-drawn', 'The edge "ghost" draws nothing and was left out.'],
      ['nothing-drawn', 'The edge "ghost2" draws nothing and was left out.'],
    ]);
  });

  test('an edge that is not displayed', () => {
    const hidden = '<path data-edge="ghost" display="none" d="M5 5L9 9"/>';
    expect(told(hidden + edges)).toEqual([['not-displayed', 'The edge "ghost" is hidden and was left out.']]);
    expect(told(`<g style="display:none">${hidden}</g>${edges}`)).toHaveLength(1);
  });

  test('a dart and a pleat without geometry', () => {
    expect(
      told(`${edges}<path data-dart="d" d=""/><path data-pleat="p" d="M1 1"/>`).map(([, m]) => m),
    ).toEqual([
      'The dart "d" draws nothing and was left out.',
      'The pleat "p" draws nothing and was left out.',
    ]);
  });

  test('a closing side shorter than a gap', () => {
    const outline = '<path data-outline="" d="M0 0H80V60H0V0.02Z"/>';
    const findings = read(drawing(mm, outline)).findings.map(found => toldFinding(found));
    expect(findings).toMatchObject([
      { code: 'short-side-dropped', figures: { lengthMm: expect.closeTo(0.02, 9) } },
    ]);
  });
});

test('rem is the size of the root, wherever it stands', () => {
  const source =
    '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100" font-size="2">' +
    '<g font-size="7"><rect width="3rem" height="1em"/></g></svg>';
  expect(readShapes(source).shapes[0]!.boxMm.slice(2)).toEqual([6, 7]);
});

test('5,000 marks drawn as circles are no trouble', () => {
  const marks = Array.from(
    { length: 5000 },
    (_, i) => `<circle data-mark="drill" cx="${i % 100}" cy="${Math.floor(i / 100)}" r="1"/>`,
  );
  const [piece] = read(drawing(mm, edges + marks.join(''))).pattern.pieces;
  expect(piece!.marks).toHaveLength(5000);
  expect(piece!.marks[4321]!.at.x).toBeCloseTo(21, 9);
  expect(piece!.marks[4321]!.at.y).toBeCloseTo(43, 9);
});

describe('a misspelt attribute is told before what it caused', () => {
  test('among findings', () => {
    const source = drawing(mm).replace('data-allowance', 'data-alowance');
    const findings = read(source).findings.map(found => toldFinding(found));
    expect(findings[0]).toMatchObject({
      code: 'attribute-unknown',
      remedy: 'Did you mean "data-allowance"?',
    });
    expect(findings[1]).toMatchObject({ code: 'allowance-not-given' });
  });

  test('instead of a refusal that it caused', () => {
    const source = drawing(mm).replace('data-piece', 'data-peice');
    expect(refusalOf(() => read(source))).toMatchObject({
      code: 'attribute-misspelt',
      message: expect.stringContaining('"data-peice" is misspelt'),
      remedy: 'Write "data-piece".',
      where: { line: 1 },
    });
  });
});

describe('a file that is no drawing is told what it is', () => {
  test.each([
    ['%PDF-1.7 ...', 'This is a PDF'],
    ['\u0089PNG\r\n', 'This is a picture'],
    ['{ "steps": [] }', 'This is a record'],
    ['pattern: shift.svg\nsteps: []\n', 'This is a text'],
    ['<!DOCTYPE html><html></html>', 'This is a web page'],
    ['', 'The file is empty'],
  ])('%s', (source, words) => {
    const bytes = Uint8Array.from([...source].map(c => c.charCodeAt(0)));
    for (const given of [source, bytes]) {
      const { code, message } = refusalOf(() => read(given as string));
      expect(code).toBe('not-a-drawing');
      expect(message).toContain(words);
    }
  });
});

describe('several sizes in one drawing', () => {
  const size = (name: string, x: number) =>
    `<g data-size="${name}"><g data-piece="front" data-allowance="1">${edges.replaceAll('60 ', `${x} `)}</g></g>`;
  const both = `<svg xmlns="http://www.w3.org/2000/svg" data-paperhinge="2" ${mm}>${size('12', 60)}${size('14', 64)}</svg>`;

  test('the one asked for is read, and every one named', () => {
    expect(sizesOf(both)).toEqual(['12', '14']);
    const reading = read(both, { size: '14' });
    expect(reading.sizes).toEqual(['12', '14']);
    expect(reading.pattern.size).toBe('14');
    expect(reading.findings).toEqual([]);
    expect(width(both, { size: '14' })).toBeCloseTo(44, 9);
  });

  test('without a choice the first, with a note', () => {
    const { pattern, findings } = read(both);
    expect(pattern.size).toBe('12');
    expect(findings.map(found => toldFinding(found).message)).toEqual([
      'The drawing holds the sizes 12 and 14; 12 was read.',
    ]);
  });

  test('one that is not there is refused', () => {
    expect(refusalOf(() => read(both, { size: '16' }))).toMatchObject({
      code: 'unknown-size',
      remedy: expect.stringContaining('12, 14'),
    });
  });

  /** The drawing with something else written in its larger size, which stands last. */
  const inLarger = (from: string, to: string): string => {
    const at = both.lastIndexOf(from);
    return both.slice(0, at) + to + both.slice(at + from.length);
  };

  test('that are not one pattern, or cannot be read, are told whichever is read', () => {
    const told = (source: string, asked: string) =>
      read(source, { size: asked })
        .findings.map(found => toldFinding(found))
        .map(({ code, message }) => [code, message]);
    const renamed = inLarger('data-edge="neck"', 'data-edge="hals"');
    expect(told(renamed, '12')).toEqual([
      [
        'sizes-differ',
        'The sizes 12 and 14 differ in more than their lengths: edges, darts and pleats of the front are not the same.',
      ],
    ]);
    expect(told(renamed, '14').map(([code]) => code)).toEqual(['sizes-differ']);
    const open = inLarger(' data-edge="neck"', '');
    expect(told(open, '12')).toEqual([['size-not-read', 'The size 14 of the drawing cannot be read.']]);
    expect(refusalOf(() => read(open, { size: '14' })).code).toBe('open-outline');
  });

  test('may lie in one another within one piece', () => {
    const nested =
      `<svg xmlns="http://www.w3.org/2000/svg" data-paperhinge="2" ${mm}><g data-piece="front" data-allowance="1">` +
      `<g data-size="12">${edges}</g><g data-size="14">${edges.replaceAll('60 ', '66 ')}</g><path data-line="grain" d="M30 30V80"/></g></svg>`;
    expect(width(nested, { size: '12' })).toBeCloseTo(40, 9);
    expect(width(nested, { size: '14' })).toBeCloseTo(46, 9);
    expect(read(nested, { size: '14' }).pattern.pieces[0]!.lines).toHaveLength(1);
  });
});

test('em and rem of the root count the letters of the root', () => {
  // 10 rem of 20 px are 200 px, 52.917 mm, for 100 units: a rect of 2 rem is 40 units wide.
  const { shapes } = readShapes(
    '<svg xmlns="http://www.w3.org/2000/svg" width="10rem" height="10rem" viewBox="0 0 100 100" font-size="20px"><rect width="2rem" height="10"/></svg>',
  );
  expect(shapes[0]!.boxMm[2]).toBeCloseTo((0.4 * 200 * 25.4) / 96, 9);
});
