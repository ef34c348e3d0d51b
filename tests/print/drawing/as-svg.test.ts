import { cuttingLine, pathLength, readShapes } from '@paperhinge/geometry';
import { transformedPath } from '@paperhinge/geometry/paths';
import { toPathData } from '@paperhinge/geometry/svg';
import { printPattern } from '@paperhinge/print';
import { expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { patternOf, rectangle } from '../simple-pieces.js';

test('the sheet as SVG is in millimetres, and the cutting lines lie where the record says', async () => {
  const pattern = patternOf(rectangle('panel', 150, 220, 12));
  const { sheetSvg, pages } = await printPattern(pattern, { paper: 'a4', fonts });
  const svg = sheetSvg();
  expect(svg).toMatch(/width="190mm" height="554mm" viewBox="0 0 190 554"/);
  const [a, b, c, d, e, f] = pages.pieces[0]!.matrix;
  const placed = transformedPath(cuttingLine(pattern.pieces[0]!).path, { a, b, c, d, e, f });
  expect(svg).toContain(`${toPathData(placed)} Z`);
});

test('an SVG reader measures the printed cutting line as long as it is', async () => {
  const pattern = shiftPattern();
  const { sheetSvg } = await printPattern(pattern, { paper: 'a4', fonts });
  const { shapes } = readShapes(sheetSvg());
  const sleeve = pattern.pieces.find(p => p.name === 'sleeve')!;
  const length = pathLength(cuttingLine(sleeve, pattern).path);
  expect(shapes.some(s => Math.abs(s.lengthMm - length) < 0.001)).toBe(true);
});

test('hostile names become text', async () => {
  const pattern = patternOf(rectangle('x', 200, 200, 10, { title: '<a href="javascript:1">&' }));
  const { sheetSvg } = await printPattern({ ...pattern, name: '</title><script>' }, { paper: 'a4', fonts });
  expect(sheetSvg()).not.toMatch(/<a |<script/);
});
