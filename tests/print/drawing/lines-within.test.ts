import { cuttingLine } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { expect, test } from 'vitest';
import { withLinesWithin } from '../../../packages/print/src/drawing/lines-within.js';
import { level, patternOf, rectangle } from '../../support/polygon-piece.js';

const drawn = (...ends: readonly (readonly [number, number])[]) => {
  const piece = rectangle('panel', 300, 400, { lines: [level('waist', ...ends)] });
  const { lines } = withLinesWithin(piece, cuttingLine(piece, patternOf([piece])).path);
  return lines.map(({ path }) => [pathStart(path).x, pathEnd(path).x]);
};

test('a line across the whole piece stops at its cutting line, 10 mm beyond the edge', () => {
  expect(drawn([-80, 200], [420, 200])).toEqual([[expect.closeTo(-10, 6), expect.closeTo(310, 6)]]);
});

test('a line within the piece, and one wholly outside, stay as they are', () => {
  expect(drawn([20, 200], [250, 200])).toEqual([[20, 250]]);
  expect(drawn([400, 200], [500, 200])).toEqual([[400, 500]]);
});
