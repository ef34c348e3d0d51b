import { at } from '@paperhinge/geometry';
import { translation } from '@paperhinge/geometry/plane';
import { paperOf, printPattern } from '@paperhinge/print';
import { describe, expect, test } from 'vitest';
import { fonts } from '../../../packages/cli/src/fonts.js';
import { pageFormat } from '../../../packages/print/src/pages/format.js';
import { joinsOf } from '../../../packages/print/src/pages/joins.js';
import type { SheetPiece, Tile } from '../../../packages/print/src/pages/layout.js';
import { pageLabel, planPages } from '../../../packages/print/src/pages/plan.js';
import { refusedWith } from '../refused.js';
import { patternOf, rectangle } from '../simple-pieces.js';

describe('what no printer can do is refused with a remedy', () => {
  const print = (options: object) =>
    printPattern(patternOf(rectangle('p', 50, 50)), { paper: 'a4', fonts, ...options });
  test.each([
    ['unknown-paper', { paper: 'a9' }, 'a4'],
    ['unknown-paper', { paper: 'constructor' }, 'a4'],
    ['paper-size', { paper: { width: 20, height: 30 } }, 'mm'],
    ['paper-size', { paper: { width: Number.NaN, height: 300 } }, 'mm'],
    ['margins-too-wide', { margins: 80 }, '10 mm'],
    ['margins-too-wide', { margins: -1 }, '10 mm'],
    ['overlap-out-of-range', { overlap: 120 }, '10 mm'],
    ['correction-out-of-range', { printed: { across: 47, down: 50 } }, '100 %'],
    ['correction-out-of-range', { printed: { across: 0, down: 50 } }, '100 %'],
  ])('%s for %j', async (code, options, remedy) => {
    expect(await refusedWith(print(options))).toMatchObject({
      code,
      remedy: expect.stringContaining(remedy),
    });
  });
});

test('papers are known by name in any case', () => {
  expect(paperOf('A4')).toEqual({ name: 'a4', width: 210, height: 297 });
  expect(paperOf('Letter').width).toBeCloseTo(215.9, 9);
});

test('pages are labelled by row letter and column number, past Z too', () => {
  expect([0, 25, 26, 701, 702].map(row => pageLabel({ row, column: 0 }))).toEqual([
    'A1',
    'Z1',
    'AA1',
    'ZZ1',
    'AAA1',
  ]);
});

describe('joins', () => {
  const format = pageFormat(paperOf('a4'), 'portrait');
  const cells = Array.from({ length: 4 }, (_, row) =>
    Array.from({ length: 5 }, (_, column) => ({ row, column })),
  ).flat();
  const tiles = cells.map((own): Tile => {
    const corner = { x: own.column * 180, y: own.row * 267 };
    return { ...own, own, sheet: 0, corner };
  });
  const square: SheetPiece = { piece: 'square', copy: 1, matrix: translation(at(0, 0)), polygons: [], tiles };
  const { pages } = planPages({ format, pieces: [square], blocks: [] }, 1);
  const joins = joinsOf(pages, format);

  test('both pages at a join know it by one name, and no two joins share one', () => {
    const names: string[] = [];
    for (const page of pages) {
      const { right, below } = joins.get(page.label) ?? {};
      if (right) {
        expect(joins.get(page.neighbours.right!)!.left).toBe(right);
        names.push(right.name);
      }
      if (below) {
        expect(joins.get(page.neighbours.below!)!.above).toBe(below);
        names.push(below.name);
      }
    }
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBe(4 * 4 + 3 * 5);
  });

  test('marks of a page that could be confused stand at different places', () => {
    for (const page of pages.filter(p => p.kind === 'tile')) {
      const own = joins.get(page.label) ?? {};
      if (own.left && own.right) expect(own.left.places[0]).not.toBe(own.right.places[0]);
    }
  });

  test('a neighbour shows on from the join: windows overlap by the glue strip', () => {
    const labelled = (label: string) => pages.find(p => p.label === label)!;
    expect(labelled('A2').window[0] - labelled('A1').window[0]).toBe(180);
    expect(labelled('B1').window[1] - labelled('A1').window[1]).toBe(267);
  });
});
