import { at, line, type Pattern, type Piece, pathOf } from '@paperhinge/geometry';
import { printPattern } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { patternOf, rectangle } from '../simple-pieces.js';
import { gluedStrips, grainsOnJoins } from './grains-on-joins.js';

/** A page of A4 shows 190 × 277 mm and shares 10 with its neighbour: the first strip lies 180 to 190 mm from the left. */
const withGrainAt = (x: number, width = 400, height = 250): Piece => ({
  ...rectangle('panel', width, height),
  lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(x, 80), at(x, height - 80))) }],
});
const printed = (pattern: Pattern, overlap = 10) =>
  printPattern(pattern, { paper: 'a4', turning: 'none', orientation: 'portrait', overlap });
const shafts = (svg: string) =>
  [...svg.matchAll(/<path class="grain" fill="none"[^>]* d="M ?([-\d.]+)[ ,]([-\d.]+)[^"]*"/g)].map(m =>
    m.slice(1).map(Number),
  );

test.each([10, 0])(
  'a grain line drawn where pages join, overlapping by %i mm, is moved off the join',
  async overlap => {
    // Wherever the piece comes to lie, some of these were on a join: the sheet is the same, but for the grain.
    for (let x = 20; x < 400; x += 6) {
      const result = await printed(patternOf(withGrainAt(x)), overlap);
      expect(gluedStrips(result.pages).length).toBeGreaterThan(0);
      expect(grainsOnJoins(result, 4), `drawn at ${x} mm`).toBe(0);
    }
  },
);

test('it stays parallel, within its piece, and no farther off than it must', async () => {
  let movedLines = 0;
  for (let x = 20; x < 400; x += 10) {
    const result = await printed(patternOf(withGrainAt(x)));
    const [[drawn]] = shafts(result.sheetSvg()) as [[number]];
    const [a, b, c, d, e] = result.pages.pieces[0]!.matrix;
    expect([a, b, c, d]).toEqual([1, 0, 0, 1]);
    const off = Math.abs(drawn - e - x);
    if (off > 0.001) movedLines++;
    // Half a strip, and what is kept beside it.
    expect(off).toBeLessThanOrEqual(10 / 2 + 6);
  }
  expect(movedLines).toBeGreaterThan(1);
});

test('one that lies clear stays where it was drawn', async () => {
  const result = await printed(patternOf(withGrainAt(60, 120, 250)));
  const [[x]] = shafts(result.sheetSvg()) as [[number]];
  expect(x - result.pages.pieces[0]!.matrix[4]).toBeCloseTo(60, 3);
});

describe('a piece too narrow to move its grain line off a join lies elsewhere', () => {
  const strap = (width: number): Piece => ({
    ...rectangle('strap', width, 250),
    lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(width / 2, 50), at(width / 2, 200))) }],
  });
  // Beside a panel of this width there is room on its page, but where the next page is glued on.
  const garment = (width: number) =>
    patternOf(rectangle('panel', 188 - 7 - width, 270), rectangle('other panel', 185, 275), strap(width));

  test.each(['fewest-pages', 'reading-order', 'own-pages'] as const)('laid as %s', async arrangement => {
    for (const width of [9, 13, 16, 19]) {
      const result = await printPattern(garment(width), {
        paper: 'a4',
        turning: 'none',
        orientation: 'portrait',
        arrangement,
      });
      expect(grainsOnJoins(result, 3), `strap of ${width} mm`).toBe(0);
    }
  });
});
