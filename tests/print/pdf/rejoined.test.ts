import { cuttingLine, pathLength } from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { type Affine, apply } from '@paperhinge/geometry/plane';
import { type PagesJson, type PrintOptions, printPattern } from '@paperhinge/print';
import { beforeAll, describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { holds, near, onPage, runAcross } from '../rejoining.js';
import { darkAt, has, type Pixels, perMm, rendered } from '../rendered.js';

const pattern = shiftPattern();
const affine = ([a, b, c, d, e, f]: PagesJson['pieces'][number]['matrix']): Affine => ({ a, b, c, d, e, f });

/** Each way of printing, and by how much the paper is stretched against the sheet, across and down. */
const variants: readonly (readonly [string, Partial<PrintOptions>, number, number])[] = [
  ['A4', { paper: 'a4' }, 1, 1],
  ['letter', { paper: 'letter' }, 1, 1],
  ['A4 on its side, edge to edge', { orientation: 'landscape', overlap: 0 }, 1, 1],
  ['A3 with wide margins', { paper: 'a3', margins: { top: 20, right: 8, bottom: 25, left: 14 } }, 1, 1],
  [
    'legal on its side, pieces turned any way',
    { paper: 'legal', orientation: 'landscape', turning: 'any' },
    1,
    1,
  ],
  [
    'tabloid upright, in reading order',
    { paper: 'tabloid', orientation: 'portrait', arrangement: 'reading-order' },
    1,
    1,
  ],
  [
    'a size of one’s own, edge to edge, corrected',
    { paper: { width: 500, height: 400 }, overlap: 0, printed: { across: 51, down: 49 } },
    50 / 51,
    50 / 49,
  ],
  ['A0 as one sheet', { paper: 'a0' }, 1, 1],
  ['A4, the printer corrected', { printed: { across: 49.5, down: 50.4 } }, 50 / 49.5, 50 / 50.4],
];

describe.skipIf(!has('pdftoppm'))(
  'pages rendered by poppler and put together by the record (needs pdftoppm)',
  () => {
    for (const [name, options, across, down] of variants)
      describe(name, () => {
        let pages: PagesJson, pixels: readonly Pixels[];
        beforeAll(async () => {
          const printed = await printPattern(pattern, { paper: 'a4', ...options, fonts });
          pages = printed.pages;
          pixels = rendered(printed.pdf);
        });

        test('every page of the file stands in the record, in order', () => {
          expect(pixels).toHaveLength(pages.pages.length);
          expect(pages.pages.map(p => p.number)).toEqual(pixels.map((_, i) => i + 1));
          const [w, h] = pages.paperMm;
          for (const p of pixels) {
            expect(Math.abs(p.width - w * perMm)).toBeLessThanOrEqual(1);
            expect(Math.abs(p.height - h * perMm)).toBeLessThanOrEqual(1);
          }
        });

        test('the cutting line lies within 0.1 mm of its place on every page that shows it', () => {
          let seen = 0,
            missing = 0;
          const offsets: number[] = [];
          for (const { piece: name, matrix } of pages.pieces) {
            const piece = pattern.pieces.find(p => p.name === name)!;
            const line = cuttingLine(piece, pattern);
            const folds = new Set(
              piece.outline.parts.filter(p => p.type === 'edge' && p.kind === 'fold').map(p => p.name),
            );
            for (const stretch of line.stretches.filter(s => !folds.has(s.of))) {
              const length = pathLength(stretch.path);
              for (let along = 3; along < length - 3; along += 7) {
                const p = apply(affine(matrix), pointAlong(stretch.path, along));
                const q = apply(affine(matrix), pointAlong(stretch.path, along + 0.01));
                const n = Math.hypot(q.x - p.x, q.y - p.y);
                const normal = { x: -(q.y - p.y) / n, y: (q.x - p.x) / n };
                const showing = pages.pages
                  .map(page => [page, onPage(page, p.x, p.y, 1.5, across, down)] as const)
                  .filter(([, at]) => at);
                for (const [page, at] of showing) {
                  const run = runAcross(pixels[page.number - 1]!, at!.x, at!.y, normal);
                  if (!run) missing++;
                  // Where a notch or a match mark touches the line, its run is no measure of the line's place.
                  else if (run.width < 0.8) offsets.push(run.offset);
                  seen++;
                }
              }
            }
          }
          expect(missing).toBe(0);
          expect(seen).toBeGreaterThan(500);
          expect(offsets.length / seen).toBeGreaterThan(0.95);
          expect(Math.max(...offsets)).toBeLessThan(0.1);
        });

        test('every place of a cutting line is shown by some page', () => {
          for (const { piece: name, matrix } of pages.pieces) {
            const { path } = cuttingLine(pattern.pieces.find(p => p.name === name)!, pattern);
            for (let along = 0; along < pathLength(path); along += 5) {
              const p = apply(affine(matrix), pointAlong(path, along));
              expect(pages.pages.some(page => onPage(page, p.x, p.y, 0))).toBe(true);
            }
          }
        });

        test('away from the pieces and from the strips at the edges the tiles are blank', () => {
          const outlines = pages.pieces.map(({ piece: name, matrix }) => {
            const { path } = cuttingLine(pattern.pieces.find(p => p.name === name)!, pattern);
            const length = pathLength(path);
            return Array.from({ length: 900 }, (_, i) =>
              apply(affine(matrix), pointAlong(path, (i * length) / 900)),
            );
          });
          const inside = (x: number, y: number) =>
            outlines.some(points => near(points, x, y, 3) || holds(points, x, y));
          for (const page of pages.pages.filter(p => p.row > 0)) {
            const [wx, wy, w, h] = page.windowMm;
            let stray = 0;
            for (let x = 18; x < w - 20; x += 0.8)
              for (let y = 18; y < h - 20; y += 0.8) {
                const px = Math.round((page.contentAtMm[0] + x * across) * perMm),
                  py = Math.round((page.contentAtMm[1] + y * down) * perMm);
                if (darkAt(pixels[page.number - 1]!, px, py) && !inside(wx + x, wy + y)) stray++;
              }
            expect(stray).toBe(0);
          }
        });
      });
  },
);
