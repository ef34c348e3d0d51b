import { printPattern } from '@paperhinge/print';
import { expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { refusedWith } from '../refused.js';
import { wordsOf } from '../rendered.js';
import { patternOf, rectangle } from '../simple-pieces.js';

test('a roll is as long as the pieces need, and one page', async () => {
  const { pages, pdf } = await printPattern(shiftPattern(), { paper: 'roll-36', fonts });
  expect(pages.pages).toHaveLength(1);
  expect(pages.paperMm[0]).toBeCloseTo(914.4, 9);
  // Its pieces and the cover have 781,000 mm²: nine tenths of this length is the least there can be.
  expect(pages.paperMm[1]).toBeLessThan(1420);
  expect(pages.pages[0]!.windowMm[3]).toBeCloseTo(pages.paperMm[1] - 20, 9);
  expect(wordsOf(pdf)).toContain('this square is 50 mm');
});

test('on a copy-shop sheet the cover lies beside the pieces, on the first page, and no piece lies on it', async () => {
  const { pages } = await printPattern(shiftPattern(), { paper: 'a0', fonts });
  expect(pages.pages[0]).toMatchObject({
    number: 1,
    row: 0,
    column: 0,
    windowMm: [0, 0, expect.anything(), expect.anything()],
  });
  // The cover is a block of 190 × 277 mm in the first corner; every piece's origin box starts clear of it.
  expect(pages.pages.length).toBeLessThanOrEqual(2);
});

test('on a home printer every page of the file has a window, the cover first', async () => {
  const { pages } = await printPattern(patternOf(rectangle('p', 300, 300)), { paper: 'a4', fonts });
  const [cover, tile] = pages.pages;
  expect(cover).toMatchObject({
    number: 1,
    row: 0,
    column: 0,
    windowMm: [0, 0, 190, 277],
    contentAtMm: [10, 10],
  });
  expect(tile).toMatchObject({ number: 2, row: 1, column: 0, windowMm: [0, 277, 190, 277] });
});

test('a piece in its own millimetres comes to lie inside the windows of its pages', async () => {
  const { pages } = await printPattern(shiftPattern(), { paper: 'letter', fonts });
  for (const { matrix } of pages.pieces) {
    const [a, b, c, d] = matrix;
    expect(a * d - b * c).toBeCloseTo(1, 12);
  }
});

test('a pattern without pieces is refused with a remedy', async () => {
  expect(await refusedWith(printPattern(patternOf(), { paper: 'a4', fonts }))).toMatchObject({
    code: 'nothing-to-print',
    remedy: expect.stringContaining('piece'),
  });
});

test('a pattern in the wrong unit is refused before it fills thousands of pages', async () => {
  const printing = printPattern(patternOf(rectangle('p', 30_000, 40_000)), { paper: 'a4', fonts });
  expect(await refusedWith(printing)).toMatchObject({
    code: 'too-many-pages',
    remedy: expect.stringContaining('unit'),
  });
});

test('a small paper holds squares and advice below one another', async () => {
  const { pages, pdf } = await printPattern(patternOf(rectangle('p', 100, 100)), {
    paper: { width: 148, height: 210 },
    fonts,
    orientation: 'portrait',
  });
  expect(pages.paper).toBe('148x210');
  expect(wordsOf(pdf)).toContain('this square is 2 inches');
});
