import { at, line, type Piece, pathOf } from '@paperhinge/geometry';
import {
  type FontFiles,
  loadTypefaces,
  type PrintOptions,
  printPattern,
  type Typefaces,
} from '@paperhinge/print';
import { beforeAll, describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { shiftPattern } from '../../support/shift.js';
import { toldFinding } from '../../support/told.js';
import { has, rendered, wordsOf } from '../rendered.js';
import { patternOf, polygonPiece, rectangle } from '../simple-pieces.js';

let typefaces: Typefaces | FontFiles;
beforeAll(async () => {
  typefaces = await loadTypefaces(fonts, ['袖ぐり كم 🧵']);
});
const print = (pieces: readonly Piece[], options: Partial<PrintOptions> = {}) =>
  printPattern(patternOf(...pieces), { paper: 'a4', fonts: typefaces, ...options });
const withGrain = (piece: Piece): Piece => ({
  ...piece,
  lines: [{ kind: 'grain', name: 'grain', path: pathOf(line(at(10, 10), at(10, 30))) }],
});

test('forty pieces, a train of 3 m and a tail 2 mm wide come out', async () => {
  const tail = [
    at(0, 0),
    at(120, 0),
    at(120, 90),
    at(63, 92),
    at(61, 700),
    at(59, 700),
    at(57, 92),
    at(0, 90),
  ];
  const many = Array.from({ length: 40 }, (_, i) =>
    rectangle(`piece ${i + 1}`, 60 + 11 * (i % 9), 90 + 7 * i, 8),
  );
  const { pages } = await print([...many, rectangle('train', 900, 3000, 15), polygonPiece('tail', tail, 6)]);
  expect(pages.pieces).toHaveLength(42);
});

test('a coat of sixty pages: bytes grow by less than 1 kB a page', async () => {
  const coat = Array.from({ length: 10 }, (_, i) => rectangle(`panel ${i + 1}`, 420, 900, 15));
  const { pages, pdf } = await print(coat);
  expect(pages.pages.length).toBeGreaterThan(60);
  expect(pdf.length / pages.pages.length).toBeLessThan(1000);
});

describe('findings', () => {
  const said = async (pieces: readonly Piece[]) => (await print(pieces)).findings;

  test('a piece without a grain line is told of, and none is invented', async () => {
    const [finding] = await said([
      rectangle('cuff', 100, 60, 10),
      withGrain(rectangle('pocket', 120, 120, 10)),
    ]);
    expect(finding).toMatchObject({
      code: 'no-grain-printed',
      where: { piece: 'cuff' },
      severity: 'warning',
    });
    expect(await said([withGrain(rectangle('pocket', 120, 120, 10))])).toEqual([]);
  });

  test('no page of the shift has a sliver, however it is laid', async () => {
    for (const arrangement of ['fewest-pages', 'reading-order', 'own-pages'] as const) {
      const { findings } = await printPattern(shiftPattern(), {
        paper: 'letter',
        fonts: typefaces,
        arrangement,
      });
      expect(findings.filter(f => f.code === 'sliver-on-page')).toEqual([]);
    }
  });

  test('a comb whose teeth end wherever a page may begin is told of as such', async () => {
    // Teeth of every length from 200 mm on, 6 mm apart: some tooth always ends just beyond a join.
    const teeth = Array.from({ length: 50 }, (_, i) => [
      at(200 + 6 * i, 20 * i + 10),
      at(200 + 6 * i, 20 * i + 18),
      at(190, 20 * i + 18),
      at(190, 20 * i + 22),
    ]).flat();
    const comb = polygonPiece('comb', [
      at(0, 0),
      at(190, 0),
      at(190, 10),
      ...teeth,
      at(190, 1010),
      at(0, 1010),
    ]);
    const findings = await said([withGrain(comb)]);
    expect(findings.map(f => f.code)).toEqual(['sliver-on-page']);
    expect(findings[0]!.where.piece).toBe('comb');
    expect(toldFinding(findings[0]!).message).toContain('less than 8 mm');
  });
});

describe('what a maker may choose', () => {
  test('initials and date stand on the cover, as given', async () => {
    const { pdf } = await print([rectangle('p', 100, 100, 10)], {
      wearer: 'M. K.',
      date: '25 November 2026',
    });
    const words = wordsOf(pdf);
    expect(words).toContain('for M. K.');
    expect(words).toContain('25 November 2026');
    expect(words.replace(/\s+/g, ' ')).toContain('Print page 1, this one, alone first');
  });

  test('the page map names every piece, also one far too small to hold its name', async () => {
    const names = ['loop', ...Array.from({ length: 12 }, (_, i) => `panel-${i + 1}`)];
    const pieces = names.map(n => (n === 'loop' ? rectangle(n, 22, 12) : rectangle(n, 150, 600, 10)));
    const { pdf, pages } = await print(pieces);
    const covers = pages.pages.filter(p => p.row === 0).length;
    const words = wordsOf(pdf, covers).split(/\s+/);
    // Once on the map and once in the cutting list.
    for (const name of names) expect(words.filter(w => w === name)).toHaveLength(2);
  });

  test('the correction is printed on every page', async () => {
    const { pdf, pages } = await print([rectangle('p', 400, 400, 10)], {
      printed: { across: 49.5, down: 50.4 },
    });
    const corrected = wordsOf(pdf).match(
      /already corrected for this printer \(101\.01 % across, 99\.21 % down\)/g,
    );
    expect(corrected!.length).toBe(pages.pages.length);
  });

  test('every page that shows a piece has its name', async () => {
    const { pdf, pages } = await print([rectangle('gusset', 500, 700, 10)]);
    const tiles = pages.pages.filter(p => p.row > 0).length;
    // Once on the piece and once in the foot line of each page.
    expect(wordsOf(pdf).match(/gusset/g)!.length).toBeGreaterThanOrEqual(2 * tiles);
  });

  test('layers that are hidden are in the file and off', async () => {
    const { pdf } = await print([rectangle('p', 100, 100, 10)], { hidden: ['Names and notes'] });
    expect(wordsOf(pdf)).toContain('Page map');
  });
});

describe.skipIf(!has('pdftoppm'))('in pixels (needs pdftoppm)', () => {
  const ink = async (options: Partial<PrintOptions>) => {
    const [page] = rendered((await print([withGrain(rectangle('p', 150, 200, 12))], options)).pdf, 2, 2, 100);
    return page!.grey.reduce((sum, g) => sum + (255 - g), 0);
  };

  test('grid and tint add ink, hidden words take it away', async () => {
    const plain = await ink({});
    expect(await ink({ grid: true })).toBeGreaterThan(plain * 1.1);
    expect(await ink({ tint: true })).toBeGreaterThan(plain * 1.5);
    expect(await ink({ hidden: ['Names and notes'] })).toBeLessThan(plain * 0.98);
  });
});
