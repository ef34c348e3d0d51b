import { type PrintOptions, printPattern } from '@paperhinge/print';
import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { has, type Pixels, perMm, rendered } from '../rendered.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const pattern = patternOf(rectangle('panel', 150, 220, 10));
const printed = (options: Partial<PrintOptions> = {}) =>
  printPattern(pattern, { paper: 'a4', fonts, ...options });

/** The sides in mm of the upright squares on a page: pairs of vertical strokes as long as they are apart. */
function squaresOn(page: Pixels, least: number, most: number): readonly { width: number; height: number }[] {
  const strokes: { x: number; from: number; to: number }[] = [];
  for (let x = 0; x < page.width; x++) {
    let from = -1;
    for (let y = 0; y <= page.height; y++) {
      const dark = y < page.height && page.grey[y * page.width + x]! < 160;
      if (dark && from < 0) from = y;
      if (!dark && from >= 0) {
        const long = (y - from) / perMm;
        if (long > least && long < most) strokes.push({ x, from, to: y });
        from = -1;
      }
    }
  }
  // A stroke a quarter of a mm wide is two or three columns of dots; its middle is what is measured.
  const merged = strokes
    .filter((s, i) => i === 0 || s.x - strokes[i - 1]!.x > 3)
    .map(first => {
      const own = strokes.filter(s => s.x >= first.x && s.x - first.x <= 3);
      return { ...first, x: own.reduce((sum, s) => sum + s.x, 0) / own.length };
    });
  const stroke = 0.25;
  return merged
    .flatMap((a, i) => merged.slice(i + 1).map(b => [a, b] as const))
    .filter(([a, b]) => Math.abs(a.from - b.from) <= 2 && Math.abs(b.x - a.x - (a.to - a.from)) < 3.5 * perMm)
    .map(([a, b]) => ({ width: (b.x - a.x) / perMm, height: (a.to - a.from) / perMm - stroke }));
}

describe.skipIf(!has('pdftoppm'))('the test squares in pixels (needs pdftoppm)', () => {
  test('on the first page one square measures 50 mm and one 2 in, both ways', async () => {
    const [page] = rendered((await printed()).pdf, 1, 1);
    const [metric, inches] = squaresOn(page!, 49, 52);
    for (const [square, side] of [
      [metric, 50],
      [inches, 50.8],
    ] as const) {
      expect(Math.abs(square!.width - side)).toBeLessThan(0.1);
      expect(Math.abs(square!.height - side)).toBeLessThan(0.2);
    }
  });

  for (const [across, down] of [
    [49.5, 50.4],
    [51, 48.5],
  ] as const)
    test(`a printer that made the square ${across} × ${down} mm is corrected, so that it comes out at 50`, async () => {
      const [page] = rendered((await printed({ printed: { across, down } })).pdf, 1, 1);
      const found = squaresOn(page!, 47, 54).map(s => ({
        width: (s.width * across) / 50,
        height: (s.height * down) / 50,
      }));
      const [metric] = found;
      expect(Math.abs(metric!.width - 50)).toBeLessThan(0.1);
      expect(Math.abs(metric!.height - 50)).toBeLessThan(0.2);
    });

  test('the corrected pages show smaller windows, and the record says so', async () => {
    const { pages } = await printed({ printed: { across: 49.5, down: 50.4 } });
    const [, , w, h] = pages.pages[1]!.windowMm;
    expect(w).toBeCloseTo((190 * 49.5) / 50, 9);
    expect(h).toBeCloseTo((277 * 50.4) / 50, 9);
  });
});

describe('the file', () => {
  // Source: check-values §8 [derived]: A4 is 595.275591 × 841.889764 pt.
  test.each([
    ['a4', 595.275591, 841.889764],
    ['letter', 612, 792],
    ['legal', 612, 1008],
    ['tabloid', 792, 1224],
    ['a0', 2383.937008, 3370.393701],
  ])('a page of %s is exact to 1e-6 pt', async (paper, width, height) => {
    const doc = await PDFDocument.load((await printed({ paper, orientation: 'portrait' })).pdf, {
      updateMetadata: false,
    });
    for (const page of doc.getPages()) {
      expect(page.getMediaBox()).toEqual({ x: 0, y: 0, width, height });
      expect(page.node.get(PDFName.of('UserUnit'))).toBeUndefined();
    }
  });

  test('a sheet larger than 200 in is written in larger units', async () => {
    const doc = await PDFDocument.load(
      (await printed({ paper: { width: 914.4, height: 6000 }, orientation: 'portrait' })).pdf,
      { updateMetadata: false },
    );
    const page = doc.getPage(0);
    const unit = Number(page.node.get(PDFName.of('UserUnit'))?.toString());
    expect(unit).toBe(2);
    expect(page.getHeight() * unit).toBeCloseTo((6000 * 72) / 25.4, 4);
  });

  test('asks the viewer not to scale, and says its title and language', async () => {
    const doc = await PDFDocument.load((await printed()).pdf, { updateMetadata: false });
    expect(doc.catalog.getViewerPreferences()?.getPrintScaling()).toBe('None');
    expect(doc.getTitle()).toBe('Test (A4)');
    expect(doc.catalog.get(PDFName.of('Lang'))?.toString()).toContain('en');
    expect(doc.getCreationDate()).toBeUndefined();
  });
});
