import { printPattern } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { windowsFor } from '../../../packages/print/src/place/field.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const tiles = async (width: number, height: number, options: Partial<Parameters<typeof printPattern>[1]>) => {
  const { pages } = await printPattern(patternOf(rectangle('panel', width, height)), {
    paper: 'a4',
    fonts,
    turning: 'half',
    ...options,
  });
  return pages.pages.filter(p => p.row > 0).length;
};

// Source: check-values §8 [derived]: a 600 × 800 mm piece with 10 mm margins.
describe('a piece of 600 × 800 mm', () => {
  test.each([
    ['a4', 'portrait', 0, 12],
    ['letter', 'portrait', 0, 16],
    ['a4', 'landscape', 0, 15],
    ['a4', 'portrait', 15, 12],
  ] as const)(
    'on %s %s with an overlap of %i mm takes %i pages',
    async (paper, orientation, overlap, count) => {
      expect(await tiles(600, 800, { paper, orientation, overlap })).toBe(count);
    },
  );
});

test('n windows of p mm that share o mm show n (p − o) + o mm: the count is ceil((L − o) / (p − o))', () => {
  expect(windowsFor(600, 190, 15)).toBe(Math.ceil(585 / 175));
  expect(windowsFor(800, 277, 15)).toBe(Math.ceil(785 / 262));
  for (const n of [1, 2, 5]) {
    expect(windowsFor(n * 180 + 10, 190, 10)).toBe(n);
    expect(windowsFor(n * 180 + 10.001, 190, 10)).toBe(n + 1);
  }
});

test('a piece that just fits one page takes one', async () => {
  expect(await tiles(188, 275, { paper: 'a4' })).toBe(1);
});

test('the orientation that needs fewer pages is taken', async () => {
  const { pages } = await printPattern(patternOf(rectangle('band', 270, 180)), {
    paper: 'a4',
    fonts,
    turning: 'half',
  });
  expect(pages.paperMm).toEqual([297, 210]);
});

test('pages without any part of a piece are left out', async () => {
  // An L of two strips: the page in the inner corner stays empty.
  const corner = [
    [0, 0],
    [150, 0],
    [150, 700],
    [520, 700],
    [520, 800],
    [0, 800],
  ] as const;
  const { polygonPiece } = await import('../simple-pieces.js');
  const { pages } = await printPattern(
    patternOf(
      polygonPiece(
        'corner',
        corner.map(([x, y]) => ({ x, y })),
      ),
    ),
    { paper: 'a4', fonts },
  );
  const tileCount = pages.pages.filter(p => p.row > 0).length;
  expect(tileCount).toBeLessThanOrEqual(5);
});
