// Closed forms for patterns as they stand in a file: written as SVG, read, measured. Each figure is worked out here
// from the rule it tests, none from the library.
import { measurePattern, type PatternMeasures, readPattern } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';

const measured = (pieces: string, seams: object = {}): PatternMeasures =>
  measurePattern(
    readPattern(
      `<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="600mm" viewBox="0 0 600 600">
      <metadata>${JSON.stringify({ seams })}</metadata>${pieces}</svg>`,
    ).pattern,
  );

const radians = Math.PI / 180;
const cot = (angle: number) => 1 / Math.tan(angle);

describe('a seam that another line runs on across is pressed open at its end', () => {
  // The seam `top` ends at (200, 0); the unsewn edge `crossing` leaves there at the interior angle. Both other ends are square.
  const panel = (name: string, degrees: number): string => {
    const cos = Math.cos(degrees * radians),
      sin = Math.sin(degrees * radians);
    const [x, y] = [200 - 100 * cos, 100 * sin];
    return `<g data-piece="${name}">
      <path data-edge="top" data-allowance="12" d="M0 0H200"/>
      <path data-edge="crossing" data-allowance="10" d="M200 0 L${x} ${y}"/>
      <path data-edge="rest" data-kind="raw" d="M${x} ${y}l${-30 * sin} ${-30 * cos}L0 300V0"/></g>`;
  };
  const sewn = { join: { a: 'one.top from crossing', b: 'two.top from crossing' } };
  const bands = 12 * 200 + 10 * 100;
  test.each([50, 60, 74, 106, 120, 149])(
    'at %d° its end is the mirror image of the crossing line',
    degrees => {
      const phi = degrees * radians;
      const { areaMm2, cuttingLine } = measured(panel('one', degrees) + panel('two', degrees), sewn).pieces
        .one!;
      // The crossing line meets the seam's tangent b / sin φ beyond the corner, its image the parallel a cot φ nearer.
      const foot = 10 / Math.sin(phi),
        tip = foot - 12 * cot(phi);
      expect(cuttingLine.areaMm2 - areaMm2 - bands).toBeCloseTo((12 * (foot + tip)) / 2 + 50 * cot(phi), 6);
    },
  );
  test.each([76, 90, 104])('at %d° it is mitred', degrees => {
    const phi = degrees * radians;
    const { areaMm2, cuttingLine } = measured(panel('one', degrees) + panel('two', degrees), sewn).pieces
      .one!;
    const kite = (10 * 12 + ((10 * 10 + 12 * 12) / 2) * Math.cos(phi)) / Math.sin(phi);
    expect(cuttingLine.areaMm2 - areaMm2 - bands).toBeCloseTo(kite, 6);
  });
  test('only at the end where it runs on, also when one edge lies at both ends', () => {
    // Equilateral, sides of 200: `rim` is two of them. Rims follow one another only over the corner at (200, 0).
    const triangle = (name: string) =>
      `<g data-piece="${name}" data-allowance="10"><path data-edge="base" d="M0 0H200"/>
        <path data-edge="rim" d="M200 0L100 ${100 * Math.sqrt(3)}L0 0"/></g>`;
    const strip =
      '<g data-piece="strip" data-allowance="0"><path data-outline="" d="M0 300H1000V400H0Z"/></g>';
    const { areaMm2, cuttingLine } = measured(triangle('one') + triangle('two') + strip, {
      base: { a: 'one.base from start', b: 'two.base from start' },
      rim: {
        a: ['one.rim from end', 'two.rim from start', 'strip.edge-4 from start'],
        b: 'strip.edge-1 from start',
      },
    }).pieces.one!;
    const sixty = 60 * radians;
    const foot = 10 / Math.sin(sixty),
      tip = foot - 10 * cot(sixty);
    const mitred = 100 * cot(sixty / 2),
      pressedOpen = (10 * (foot + tip)) / 2 + 50 * cot(sixty);
    expect(cuttingLine.areaMm2 - areaMm2 - 6000).toBeCloseTo(2 * mitred + pressedOpen, 6);
  });
});

describe('at a flat inner corner the wider parallel runs on until it crosses the narrower', () => {
  // The sides leave (150, 100) at 210° of cloth; the other three are raw and square to their neighbours.
  const dent = (first: number, second: number): PatternMeasures['pieces'][string] => {
    const [x, y] = [150 + 150 * Math.cos(30 * radians), 100 - 150 * Math.sin(30 * radians)];
    return measured(`<g data-piece="dent">
      <path data-edge="first" data-allowance="${first}" d="M0 100H150"/>
      <path data-edge="second" data-allowance="${second}" d="M150 100L${x} ${y}"/>
      <path data-edge="rest" data-kind="raw" d="M${x} ${y}l100 ${200 * Math.sin(60 * radians)}L0 400V100"/></g>`)
      .pieces.dent!;
  };
  // The overlap of the two bands is a kite; where one runs on instead, the same sum gives less than nothing.
  const kite = (a: number, b: number): number =>
    (a * b - ((a * a + b * b) / 2) * Math.cos(30 * radians)) / Math.sin(30 * radians);
  test.each([
    [10, 10],
    [7, 10],
    [10, 7],
    [15, 10],
  ])('allowances of %d and %d mm', (first, second) => {
    const { areaMm2, cuttingLine } = dent(first, second);
    expect(cuttingLine.areaMm2 - areaMm2).toBeCloseTo(150 * (first + second) - kite(first, second), 6);
  });
  test('as far as a mitre reaches', () => {
    const over = ({ areaMm2, cuttingLine }: PatternMeasures['pieces'][string]) =>
      cuttingLine.areaMm2 - areaMm2;
    // 3 and 20 mm would cross 34 mm along the narrower side, within 2.5 × 20; none and 20 mm cross at 40 mm.
    expect(over(dent(3, 20))).toBeCloseTo(150 * 23 - kite(3, 20), 6);
    expect(over(dent(0, 20))).toBeCloseTo(150 * 20 - kite(0, 20), 6);
  });
});
