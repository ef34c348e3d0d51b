import {
  codeCells,
  codeSide,
  framePapers,
  targetCell,
  targetIndex,
  targetPlaces,
} from '@paperhinge/geometry/trace';
import { photoFrame } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { darkAt, has, perMm, rendered, wordsOf } from '../rendered.js';

test('the same sheets are the same bytes', async () => {
  const [a, b] = [await photoFrame({ paper: 'a4', sheets: 4 }), await photoFrame({ paper: 'a4', sheets: 4 })];
  expect(Buffer.from(a).equals(Buffer.from(b))).toBe(true);
});

describe.skipIf(!has('pdftoppm'))('as printed (needs pdftoppm)', () => {
  test.each(['a4', 'letter'] as const)(
    'every cell of every target stands in its place on %s',
    async paper => {
      const { width, height } = framePapers[paper];
      const pages = rendered(await photoFrame({ paper, sheets: 5 }), 4, 5);
      expect(pages).toHaveLength(2);
      for (const [k, page] of pages.entries()) {
        expect(Math.abs(page.width - width * perMm)).toBeLessThan(2);
        expect(Math.abs(page.height - height * perMm)).toBeLessThan(2);
        const dark = (x: number, y: number) =>
          darkAt(page, Math.floor((width / 2 + x) * perMm), Math.floor((height / 2 + y) * perMm));
        for (const [place, { x, y }] of targetPlaces.entries()) {
          const cells = codeCells(targetIndex({ paper, number: 4 + k }, place));
          for (let row = -1; row <= codeSide; row++)
            for (let column = -1; column <= codeSide; column++) {
              const inside = row >= 0 && column >= 0 && row < codeSide && column < codeSide;
              // The middle and near the four corners of each cell: no hairlines, nothing grown.
              for (const [u, v] of [
                [0.5, 0.5],
                [0.06, 0.06],
                [0.94, 0.06],
                [0.06, 0.94],
                [0.94, 0.94],
              ] as const)
                expect(dark(x + (column + 1 + u) * targetCell, y + (row + 1 + v) * targetCell)).toBe(
                  !(inside && cells[row * codeSide + column]),
                );
            }
          for (const [u, v] of [
            [-0.5, 18],
            [36.5, 18],
            [18, -0.5],
            [18, 36.5],
          ] as const)
            expect(dark(x + u, y + v)).toBe(false);
        }
      }
    },
  );

  test('each sheet has a square of 50 mm to check, and says which it is', async () => {
    const pdf = await photoFrame({ paper: 'a4', sheets: 6 });
    const [page] = rendered(pdf, 2, 2);
    // Along the middle of the square's height: its two upright sides, 50 mm apart.
    const row = Math.round(140 * perMm);
    const sides: number[] = [];
    for (let x = 50 * perMm; x < 112 * perMm; x++)
      if (darkAt(page!, x, row) && !darkAt(page!, x - 1, row)) sides.push(x);
    expect(Math.abs(sides.at(-1)! - sides[0]! - 50 * perMm)).toBeLessThanOrEqual(1);
    expect(wordsOf(pdf)).toContain('Photo frame 2 of 6');
  });
});
