import { readFileSync } from 'node:fs';
import { type Piece, readPattern } from '@paperhinge/geometry';
import { type PagesJson, printPattern } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { wordsOf } from '../rendered.js';
import { patternOf, rectangle } from '../simple-pieces.js';
import { randomGarment } from './random-garments.js';

const tilesOf = ({ pages }: PagesJson) => pages.filter(p => p.kind === 'tile');
const printed = async (...pieces: readonly Piece[]) =>
  (await printPattern(patternOf(...pieces), { paper: 'a4' })).pages;
const cut = (fabric: string) => ({ cutting: { count: 1, mirrored: false, fabric } });

/** How large each sheet is once its pages are joined, mm. */
function sheetSizes(pages: PagesJson): readonly (readonly [number, number])[] {
  const tiles = tilesOf(pages);
  return [...new Set(tiles.map(t => t.sheet))].map(sheet => {
    const own = tiles.filter(t => t.sheet === sheet).map(t => t.windowMm);
    const size = (from: 0 | 1, length: 2 | 3) =>
      Math.max(...own.map(w => w[from] + w[length])) - Math.min(...own.map(w => w[from]));
    return [size(0, 2), size(1, 3)];
  });
}

test('twenty panels are dealt onto sheets that can be handled', async () => {
  const pages = await printed(
    ...Array.from({ length: 20 }, (_, i) => rectangle(`panel ${i + 1}`, 300, 700, 10)),
  );
  const sizes = sheetSizes(pages);
  expect(sizes.length).toBeGreaterThan(2);
  for (const [w, h] of sizes) {
    expect(Math.min(w, h)).toBeLessThanOrEqual(1250);
    expect(Math.max(w, h)).toBeLessThanOrEqual(1650);
  }
});

test('a piece that is larger itself has a sheet as large as it needs', async () => {
  const [size] = sheetSizes(await printed(rectangle('train', 900, 3000, 15)));
  expect(Math.max(...size!)).toBeGreaterThan(3000);
});

test('each cloth has a sheet of its own', async () => {
  const pages = await printed(
    rectangle('front', 60, 60, 10, cut('main')),
    rectangle('lining', 60, 60, 10, cut('lining')),
    rectangle('back', 60, 60, 10, cut('main')),
  );
  expect(tilesOf(pages).map(t => [t.sheet, t.label])).toEqual([
    [1, 'A1'],
    [2, 'B1'],
  ]);
});

test('pages are joined to pages of their own sheet alone', async () => {
  const { pdf } = await printPattern(
    patternOf(rectangle('front', 60, 60, 10, cut('main')), rectangle('lining', 60, 60, 10, cut('lining'))),
    { paper: 'a4' },
  );
  expect(wordsOf(pdf)).not.toContain('glue');
});

test('a page that no line crosses is one that any blank sheet can take the place of', async () => {
  const blank = tilesOf(await printed(rectangle('cape', 700, 1000))).filter(t => t.blank);
  // A page shows 190 × 277 mm; the title lies on one of those inside, which is not printed for it.
  expect(blank.length).toBeGreaterThan(1);
  for (const {
    windowMm: [x, , w],
  } of blank) {
    expect(x).toBeGreaterThan(0);
    expect(x + w).toBeLessThan(700);
  }
});

describe('turning never costs pages', () => {
  test.each([3, 11])('garment %i', async seed => {
    const garment = { ...randomGarment(seed) };
    const pattern = { ...garment, pieces: garment.pieces.slice(0, 4) };
    const count = async (turning: 'none' | 'half' | 'quarter' | 'any') =>
      tilesOf((await printPattern(pattern, { paper: 'a4', turning })).pages).length;
    const [none, half, quarter, any] = [
      await count('none'),
      await count('half'),
      await count('quarter'),
      await count('any'),
    ];
    expect([half <= none, quarter <= half, any <= quarter]).toEqual([true, true, true]);
  });
});

test('a corrected printer’s scale stands in the figures', async () => {
  const { pages } = await printPattern(patternOf(rectangle('cuff', 100, 60)), {
    paper: 'a4',
    printed: { across: 49, down: 50 },
  });
  expect(pages.scale).toEqual({ across: 1.020408, down: 1 });
});

test('equal gores, which once ended without pages, are printed', async () => {
  const file = new URL('gores.svg', import.meta.url);
  const { pages } = await printPattern(readPattern(readFileSync(file, 'utf8')).pattern, { paper: 'a4' });
  expect(pages.pieces).toHaveLength(8);
});
