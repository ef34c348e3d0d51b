import { PatternError, readShapes } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { refusalOf } from '../../support/told.js';
import { codesIn, inMillimetres, shapesIn } from './in-millimetres.js';

const box = (source: string) => readShapes(source).shapes[0]!.boxMm.map(v => Number(v.toFixed(6)));
const svg = (attributes: string, content: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${content}</svg>`;
const square = '<rect width="10" height="10"/>';
const pixel = 25.4 / 96;

describe('the shapes', () => {
  test('a rectangle, with round corners too', () => {
    const [sharp, round, wide] = shapesIn(
      '<rect id="a" x="1" y="2" width="30" height="20"/><rect width="30" height="20" rx="5"/><rect width="30" height="20" rx="40" ry="4"/>',
    );
    expect(sharp).toMatchObject({ element: 'rect', id: 'a', closed: true, lengthMm: 100, areaMm2: 600 });
    expect(sharp!.boxMm).toEqual([1, 2, 30, 20]);
    expect(round!.lengthMm).toBeCloseTo(2 * 20 + 2 * 10 + 2 * Math.PI * 5, 6);
    expect(round!.areaMm2).toBeCloseTo(600 - (4 - Math.PI) * 25, 6);
    // rx is held to half the width: the corners meet.
    expect(wide!.areaMm2).toBeCloseTo(600 - (4 - Math.PI) * 15 * 4, 6);
  });

  test('circle and ellipse', () => {
    const [circle, ellipse] = shapesIn(
      '<circle cx="50" cy="60" r="10"/><ellipse cx="50" cy="60" rx="100" ry="60"/>',
    );
    expect(circle!.lengthMm).toBeCloseTo(20 * Math.PI, 6);
    expect(circle!.areaMm2).toBeCloseTo(100 * Math.PI, 5);
    expect(circle!.boxMm.map(v => Number(v.toFixed(6)))).toEqual([40, 50, 20, 20]);
    // Perimeter of the ellipse with semi-axes 100 and 60: 510.539977267963 [derived].
    expect(ellipse!.lengthMm).toBeCloseTo(510.539977267963, 6);
    expect(ellipse!.closed).toBe(true);
  });

  test('line, polyline and polygon', () => {
    const shapes = shapesIn(
      '<line x2="3" y2="4"/><polyline points="0,0 10,0 10 10"/><polygon points="0 0, 10 0, 10 10"/>',
    );
    expect(shapes.map(s => [s.element, s.closed])).toEqual([
      ['line', false],
      ['polyline', false],
      ['polygon', true],
    ]);
    expect(shapes.map(s => s.lengthMm)).toEqual([5, 20, 20 + Math.hypot(10, 10)]);
    expect(shapes.map(s => s.areaMm2)).toEqual([0, 0, 50]);
  });

  test('shapes of no size are not shown, faulty values are findings', () => {
    expect(
      shapesIn(
        '<rect width="0" height="5"/><circle r="0"/><path d=""/><ellipse rx="3" ry="0"/><polygon points=""/>',
      ),
    ).toEqual([]);
    expect(codesIn('<rect width="-4" height="5"/>')).toEqual(['attribute-not-understood']);
    expect(codesIn('<polyline points="0 0 5 5 7"/>')).toEqual(['path-data-broken']);
    expect(codesIn('<path d="M5 5"/>')).toEqual(['shape-empty']);
  });

  test('area is that of the closed strokes together, and a shape is closed only if all are', () => {
    const [ring, mixed] = shapesIn(
      '<path d="M0 0H10V10H0Z M2 2V8H8V2Z"/><path d="M0 0H10V10H0Z M20 20 L30 20"/>',
    );
    expect(ring).toMatchObject({ closed: true, areaMm2: 100 - 36 });
    expect(mixed).toMatchObject({ closed: false, areaMm2: 100, lengthMm: 50 });
  });
});

// SVG 2, chapter 8; 1 in = 96 px [read]. The fitted sizes are [derived].
describe('units and viewports', () => {
  test.each([
    ['', 10 * pixel],
    ['viewBox="0 0 100 100"', 10 * pixel],
    ['width="100%" height="100%" viewBox="0 0 100 100"', 10 * pixel],
    ['width="600mm" height="800mm" viewBox="0 0 600 800"', 10],
    ['width="10cm" height="10cm" viewBox="0 0 50 50"', 20],
    ['width="1in" height="1in" viewBox="0 0 10 10"', 25.4],
    ['width="96" height="96px" viewBox="0 0 10 10"', 25.4],
    ['width="72pt" height="6pc" viewBox="0 0 10 10"', 25.4],
    ['width="100mm" viewBox="0 0 100 200"', 10],
    ['height="200mm" viewBox="0 0 100 200"', 10],
  ])('with %s a side of 10 is %d mm', (attributes, mm) => {
    const [, , width, height] = box(svg(attributes, square));
    expect(width).toBeCloseTo(mm, 6);
    expect(height).toBeCloseTo(mm, 6);
  });

  test('lengths have units, and percentages are of the viewport', () => {
    const of = (content: string) => box(svg('width="200mm" height="100mm" viewBox="0 0 200 100"', content));
    expect(of('<rect x="25%" y="50%" width="10%" height="10%"/>')).toEqual([50, 50, 20, 10]);
    expect(of('<circle r="10%"/>')[2]).toBeCloseTo(0.2 * Math.sqrt((200 ** 2 + 100 ** 2) / 2), 6);
    // Within the viewBox a millimetre is 96/25.4 units, whatever a unit is outside.
    expect(of('<rect width="1in" height="2pc"/>')).toEqual([0, 0, 96, 32]);
    expect(of('<rect font-size="20" width="2em" height="2ex"/>')).toEqual([0, 0, 40, 20]);
  });

  test.each([
    ['', [50, 0, 10, 10]],
    ['preserveAspectRatio="xMinYMin meet"', [0, 0, 10, 10]],
    ['preserveAspectRatio="xMaxYMid"', [100, 0, 10, 10]],
    ['preserveAspectRatio="xMidYMid slice"', [0, -50, 20, 20]],
    ['preserveAspectRatio="xMidYMax slice"', [0, -100, 20, 20]],
    ['preserveAspectRatio="none"', [0, 0, 20, 10]],
  ])('a square viewBox in a wide viewport %s', (preserve, expected) => {
    expect(box(svg(`width="200mm" height="100mm" viewBox="0 0 100 100" ${preserve}`, square))).toEqual(
      expected,
    );
  });

  test('the viewBox’s corner is the viewport’s origin', () => {
    expect(box(svg('width="100mm" height="100mm" viewBox="-50 20 100 100"', square))).toEqual([
      50, -20, 10, 10,
    ]);
  });

  test('a nested svg has a viewport of its own', () => {
    const nested =
      '<svg x="10" y="20" width="50" height="50" viewBox="0 0 10 10"><rect width="50%" height="1"/></svg>';
    expect(box(inMillimetres(nested))).toEqual([10, 20, 25, 5]);
  });
});

describe('transforms', () => {
  const at = (transform: string) =>
    box(inMillimetres(`<g transform="${transform}"><rect width="10" height="20"/></g>`));

  test.each([
    ['translate(5)', [5, 0, 10, 20]],
    ['translate(5 -6)', [5, -6, 10, 20]],
    ['scale(2)', [0, 0, 20, 40]],
    ['scale(2,3)', [0, 0, 20, 60]],
    ['rotate(90)', [-20, 0, 20, 10]],
    ['rotate(90 10 0)', [-10, -10, 20, 10]],
    ['rotate(-90,0,0)', [0, -10, 20, 10]],
    ['skewX(45)', [0, 0, 30, 20]],
    ['skewY(45)', [0, 0, 10, 30]],
    ['matrix(0 1 -1 0 30 40)', [10, 40, 20, 10]],
    ['translate(5),scale(2) , translate(1 1)', [7, 2, 20, 40]],
    ['none', [0, 0, 10, 20]],
    ['', [0, 0, 10, 20]],
  ])('%s', (transform, expected) => {
    expect(at(transform)).toEqual(expected);
  });

  test('they nest, on every element', () => {
    const content =
      '<g transform="translate(100)"><a transform="scale(2)"><rect transform="rotate(90)" width="10" height="20"/></a></g>';
    expect(box(inMillimetres(content))).toEqual([60, 0, 40, 20]);
  });

  test('as a style with CSS units, and about an origin', () => {
    const styled = (style: string) => box(inMillimetres(`<rect style="${style}" width="10" height="20"/>`));
    expect(styled('transform: translate(5px, 1in)')).toEqual([5, 96, 10, 20]);
    expect(styled('transform: rotate(0.25turn)')).toEqual([-20, 0, 20, 10]);
    expect(styled('transform: rotate(90deg); transform-origin: 10px 0')).toEqual([-10, -10, 20, 10]);
    const attribute = '<rect transform="scale(2)" transform-origin="10 20" width="10" height="20"/>';
    expect(box(inMillimetres(attribute))).toEqual([-10, -20, 20, 40]);
  });

  test('one that is not understood is left out, with a finding', () => {
    for (const transform of ['rotate(1 2)', 'translate(1 2', 'spin(3)', 'matrix(1 2 3)', 'scale()'])
      expect(codesIn(`<rect transform="${transform}" width="1" height="1"/>`)).toEqual([
        'attribute-not-understood',
      ]);
    expect(codesIn('<rect style="transform: translate(50%, 0)" width="1" height="1"/>')).toEqual([
      'attribute-not-understood',
    ]);
  });
});

describe('use', () => {
  const target = '<defs><rect id="a" width="10" height="10"/></defs>';

  test('shows its target where it stands, in document order', () => {
    const shapes = shapesIn(
      `${target}<circle r="1"/><use href="#a" x="5" y="6"/><use xlink:href="#a" transform="scale(2)" x="5"/>`,
    );
    expect(shapes.map(s => s.element)).toEqual(['circle', 'rect', 'rect']);
    expect(shapes[1]).toMatchObject({ id: 'a', boxMm: [5, 6, 10, 10] });
    expect(shapes[2]).toMatchObject({ boxMm: [10, 0, 20, 20] });
  });

  test('of a symbol with a viewBox, sized by the use', () => {
    const symbol = '<symbol id="s" viewBox="0 0 10 10"><rect width="5" height="10"/></symbol>';
    expect(shapesIn(symbol)).toEqual([]);
    const [shape] = shapesIn(`${symbol}<use href="#s" x="100" width="50" height="50"/>`);
    expect(shape!.boxMm).toEqual([100, 0, 25, 50]);
  });

  test('of groups and of other uses', () => {
    const content =
      '<defs><g id="g" transform="translate(1)"><use href="#r"/></g><rect id="r" width="2" height="2"/></defs><use href="#g" x="10"/>';
    expect(shapesIn(content)[0]!.boxMm).toEqual([11, 0, 2, 2]);
  });

  test('of what is missing, outside or itself is a finding', () => {
    expect(codesIn('<use href="#none"/>')).toEqual(['reference-missing']);
    expect(codesIn('<use href="other.svg#a"/>')).toEqual(['reference-outside']);
    expect(codesIn('<use/>')).toEqual(['reference-outside']);
    expect(codesIn('<use id="u" href="#u"/>')).toEqual(['reference-loop']);
    expect(codesIn('<g id="g"><rect width="1" height="1"/><use href="#g"/></g>')).toEqual(['reference-loop']);
    expect(
      codesIn('<defs><g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g></defs><use href="#a"/>'),
    ).toEqual(['reference-loop']);
  });
});

describe('what is not shown', () => {
  test('is left out: not displayed, not visible, defs and their like', () => {
    expect(shapesIn(`<g display="none">${square}</g><g style="display:none">${square}</g>`)).toEqual([]);
    expect(
      shapesIn(`<g visibility="hidden">${square}<rect visibility="visible" width="1" height="1"/></g>`),
    ).toHaveLength(1);
    expect(
      shapesIn(
        `<defs>${square}</defs><clipPath>${square}</clipPath><mask>${square}</mask><marker>${square}</marker><pattern>${square}</pattern>`,
      ),
    ).toEqual([]);
    expect(codesIn(`<g display="none">${square}</g>`)).toEqual(['hidden-left-out']);
  });

  test('is told by simple rules of a style sheet too; others are a finding', () => {
    const sheet = (rules: string) =>
      `<style>${rules}</style><rect class="st0 b" id="r" width="1" height="1"/>`;
    expect(shapesIn(sheet('.st0{display:none}'))).toEqual([]);
    expect(shapesIn(sheet('rect.b, circle { visibility : hidden }'))).toEqual([]);
    expect(shapesIn(sheet('#r{display:none}'))).toEqual([]);
    expect(shapesIn(sheet('.st0{display:none} #r{display:inline}'))).toHaveLength(1);
    expect(shapesIn(sheet('.other{display:none} .st0{fill:red}'))).toHaveLength(1);
    expect(codesIn(sheet('g > .st0{display:none}'))).toEqual(['style-rule-left-out']);
  });

  test('texts and pictures are one finding', () => {
    expect(codesIn('<text>a</text><text>b</text><image href="x.png"/>')).toEqual(['text-left-out']);
  });

  test('of a switch the first that can be shown is taken', () => {
    const content =
      '<switch><rect requiredExtensions="http://x" width="1" height="1"/><rect systemLanguage="de" width="2" height="2"/><rect width="3" height="3"/><rect width="4" height="4"/></switch>';
    expect(shapesIn(content).map(s => s.boxMm[2])).toEqual([3]);
  });
});

test('a drawing with prefixed SVG elements is read, elements of other languages are passed over', () => {
  const source =
    '<s:svg xmlns:s="http://www.w3.org/2000/svg" xmlns:x="http://example.org"><s:circle r="1"/><x:circle r="1"/></s:svg>';
  expect(readShapes(source).shapes).toHaveLength(1);
});

test('a wrong unit is a clear error', () => {
  const source = svg(
    'width="1000in" height="1000in" viewBox="0 0 1 1"',
    '<rect id="r" width="10" height="10"/>',
  );
  expect(refusalOf(() => readShapes(source, { file: 'big.svg' }))).toMatchObject({
    code: 'coordinate-out-of-range',
    remedy: expect.stringContaining('unit'),
    where: { file: 'big.svg', line: 1, column: expect.any(Number) },
  });
});

test('XML that is no drawing is refused', () => {
  expect(() => readShapes('<html/>')).toThrow(PatternError);
  expect(() => readShapes('<svg')).toThrow(expect.objectContaining({ code: 'not-xml' }));
});
