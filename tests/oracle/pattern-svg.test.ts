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
