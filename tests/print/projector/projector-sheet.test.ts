import { execFileSync } from 'node:child_process';
import { at, type Pattern } from '@paperhinge/geometry';
import { loadTypefaces, projectorSheet } from '@paperhinge/print';
import { drawPattern } from '@paperhinge/print/drawing';
import { PDFDocument, PDFName, type PDFNumber } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { has, inFolder, type Pixels, rendered, wordsOf } from '../rendered.js';
import { patternOf, polygonPiece, rectangle } from '../simple-pieces.js';

const dpi = 127;
/** Dots to a mm. */
const perMm = dpi / 25.4;
const pocket = patternOf(rectangle('pocket', 120, 140, 10));

const greyAt = (page: Pixels, xMm: number, yMm: number): number =>
  page.grey[Math.floor(yMm * perMm) * page.width + Math.floor(xMm * perMm)]!;

/** Middles in mm of the strokes over 128 (or under it, on light ground) along a level, between two places. */
function strokesAlong(page: Pixels, y: number, from: number, to: number, dark: boolean): readonly number[] {
  const row = Math.round(y * perMm) * page.width;
  const inked = (x: number) => page.grey[row + x]! > 200 === dark && page.grey[row + x]! < 100 !== dark;
  const middles: number[] = [];
  let start = -1;
  for (let x = Math.round(from * perMm); x <= to * perMm; x++) {
    if (inked(x) && start < 0) start = x;
    if (!inked(x) && start >= 0) {
      middles.push((start + x) / 2 / perMm);
      start = -1;
    }
  }
  return middles;
}

describe.skipIf(!has('pdftoppm')).each(['dark', 'light'] as const)(
  'a sheet on %s ground, rendered (needs pdftoppm)',
  ground => {
    const dark = ground === 'dark';
    const sheet = projectorSheet(pocket, { ground, fonts });
    const page = sheet.then(({ pdf }) => rendered(pdf, 1, 1, dpi)[0]!);

    test('has that ground from edge to edge', async () => {
      const { pages } = await sheet;
      const [width, height] = pages.paperMm;
      for (const [x, y] of [
        [1, 1],
        [width - 1, 1],
        [1, height - 1],
        [width - 1, height - 1],
      ] as const)
        expect(greyAt(await page, x, y)).toBe(dark ? 0 : 255);
    });

    test('shows the square to measure within a dot of its 250 mm', async () => {
      // A level near the square's top, where its diagonals are near its sides.
      const [left, , , right] = strokesAlong(await page, 60, 20, 295, dark);
      expect(Math.abs(right! - left! - 250)).toBeLessThan(1 / perMm);
    });

    test('shows a piece’s cutting line where the record says, thick enough to follow', async () => {
      const { pages } = await sheet;
      const [a, b, c, d, e, f] = pages.pieces[0]!.matrix;
      const onSheet = (x: number, y: number) => ({ x: a * x + c * y + e, y: b * x + d * y + f });
      const left = onSheet(-10, 33),
        right = onSheet(130, 33);
      const [from, to] = [Math.min(left.x, right.x), Math.max(left.x, right.x)];
      const strokes = strokesAlong(await page, left.y, from - 4, to + 4, dark);
      expect(Math.abs(strokes[0]! - from)).toBeLessThan(1 / perMm);
      expect(Math.abs(strokes.at(-1)! - to)).toBeLessThan(1 / perMm);
      for (const off of [-0.6, 0, 0.6]) expect(greyAt(await page, left.x + off, left.y) > 128).toBe(dark);
    });
  },
);

test('a pattern in inches has squares of inch mats', async () => {
  const { pages, pdf } = await projectorSheet({ ...pocket, unit: 'in' }, { ground: 'dark', fonts });
  expect(pages.testSquareMm).toBe(254);
  if (has('pdftotext')) expect(wordsOf(pdf)).toContain('measures 10 in on every');
});

test('the same pattern gives the same bytes', async () => {
  const typefaces = await loadTypefaces(fonts, [JSON.stringify(shiftPattern())]);
  const once = await projectorSheet(shiftPattern(), { ground: 'light', fonts: typefaces });
  expect((await projectorSheet(shiftPattern(), { ground: 'light', fonts: typefaces })).pdf).toEqual(once.pdf);
});

test('every piece lies wholly on the one page', async () => {
  const pattern = shiftPattern();
  const { pages } = await projectorSheet(pattern, { ground: 'dark', fonts });
  expect(pages.pages).toHaveLength(1);
  const [width, height] = pages.paperMm;
  for (const [i, { matrix }] of pages.pieces.entries()) {
    const [a, b, c, d, e, f] = matrix;
    const drawings = drawPattern(pattern, { width: (text, size) => text.length * size });
    for (const { x, y } of drawings[i]!.silhouette.flat()) {
      expect(Math.abs(a * x + c * y + e - width / 2)).toBeLessThan(width / 2 - 29);
      expect(Math.abs(b * x + d * y + f - height / 2)).toBeLessThan(height / 2 - 29);
    }
  }
});

describe('a page with a side beyond 14,400 units', () => {
  const train: Pattern = patternOf(rectangle('train', 900, 9000, 10));

  test('has a larger unit, and keeps its true size', async () => {
    const { pdf, pages } = await projectorSheet(train, { ground: 'dark', fonts });
    const page = (await PDFDocument.load(pdf, { updateMetadata: false })).getPage(0);
    const unit = (page.node.get(PDFName.of('UserUnit')) as PDFNumber).asNumber();
    expect(unit).toBeGreaterThan(1);
    expect(Math.max(page.getWidth(), page.getHeight())).toBeLessThanOrEqual(14_400);
    expect((page.getHeight() * unit * 25.4) / 72).toBeCloseTo(pages.paperMm[1], 3);
    expect((page.getWidth() * unit * 25.4) / 72).toBeCloseTo(pages.paperMm[0], 3);
  });

  test.skipIf(!has('qpdf'))('passes qpdf (needs qpdf)', async () => {
    const { pdf } = await projectorSheet(train, { ground: 'dark', fonts });
    const said = inFolder(pdf, (_, file) => execFileSync('qpdf', ['--check', file], { encoding: 'utf8' }));
    expect(said).toContain('No syntax or stream encoding errors found');
  });
});

test('words along seams are 12 mm high, and read the right way up', async () => {
  const { pdf } = await projectorSheet(shiftPattern(), { ground: 'light', fonts });
  expect(wordsOf(pdf)).toContain('waist');
  const measure = { width: (text: string, size: number) => text.length * size * 0.5 };
  const smallest = (enlarged: number) =>
    Math.min(
      ...drawPattern(shiftPattern(), { ...measure, enlarged })
        .flatMap(d => d.drawing.inks)
        .flatMap(ink => (ink.kind === 'text' ? [ink.size] : [])),
    );
  // From the foot of a g to the head of an H.
  expect(smallest(5.2) * (0.72 + 0.21)).toBeGreaterThanOrEqual(12);
  expect(smallest(1)).toBeLessThan(3);
});

test('tiny pieces and names of any kind are no hindrance', async () => {
  const name = '<b>袖👗\u0000\u202e'.repeat(30);
  const tab = polygonPiece(name, [at(0, 0), at(6, 0), at(6, 4), at(0, 4)], 1, { title: name });
  const { pdf } = await projectorSheet({ ...patternOf(tab), name }, { ground: 'dark', fonts });
  if (has('pdftotext')) expect(wordsOf(pdf)).toContain('袖');
});

test('a pattern without pieces is refused', async () => {
  await expect(projectorSheet(patternOf(), { ground: 'dark', fonts })).rejects.toMatchObject({
    code: 'nothing-to-print',
  });
});

test('no fold lies on a line of the grid', async () => {
  const half = rectangle('half', 300, 400, 10);
  const parts = half.outline.parts.map((p, i) =>
    p.type === 'edge' && i === 3 ? { ...p, kind: 'fold' as const, allowance: 0 } : p,
  );
  const { pages } = await projectorSheet(patternOf({ ...half, outline: { parts } }), {
    ground: 'dark',
    fonts,
  });
  const { matrix } = pages.pieces[0]!;
  const square = 30 + 0.5;
  const off = (((matrix[4] - square) % 50) + 50) % 50;
  expect(Math.min(off, 50 - off)).toBeGreaterThanOrEqual(9);
});

test('pieces are turned half round to save cloth, but not on cloth with a nap', async () => {
  const wedge = (name: string) => polygonPiece(name, [at(0, 0), at(60, 0), at(400, 900), at(0, 900)]);
  const wedges = patternOf(wedge('one'), wedge('two'), wedge('three'), wedge('four'));
  const turns = async (nap: boolean) => {
    const fabrics = [{ name: 'main', role: 'main' as const, nap }];
    const { pages } = await projectorSheet({ ...wedges, fabrics }, { ground: 'dark', fonts });
    return pages.pieces.map(({ matrix: [a, b] }) => [a, b]);
  };
  expect(await turns(false)).toContainEqual([-1, expect.closeTo(0, 9)]);
  for (const [a, b] of await turns(true)) {
    expect(a).toBe(1);
    expect(b).toBeCloseTo(0, 12);
  }
});
