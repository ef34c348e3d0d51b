import type { ClothNeeded } from '@paperhinge/print/cloth';
import { expect, test } from 'vitest';
import { writtenReport } from '../../../packages/print/src/report/written.js';
import { patternOf, rectangle } from '../simple-pieces.js';

const pattern = patternOf(rectangle('band', 100, 100, 10));
const lay = (way: 'open' | 'folded', lengthMm: number, buyMm: number): ClothNeeded['lays'][number] => ({
  way,
  acrossMm: 670,
  lengthMm,
  buyMm,
  laid: [],
});
const rows = (lays: ClothNeeded['lays'], language: 'en' | 'de' = 'en') =>
  writtenReport({
    pattern,
    language,
    unit: 'cm',
    cloth: [{ cloth: 'main', widthMm: 1400, lays, tooWide: [] }],
  })
    .sections.find(s => s.id === 'cloth')!
    .blocks.flatMap(b => (b.kind === 'table' ? b.rows : []));

test('ways that take as much are one row', () => {
  const lays = [lay('folded', 60, 100), lay('open', 60, 100)];
  expect(rows(lays)).toEqual([
    ['main fabric', '140 cm', 'folded lengthwise or opened out, both ways the same', '0.06 m', '0.1 m'],
  ]);
  expect(rows(lays, 'de').map(row => row[2])).toEqual(['längs gefaltet oder offen, beides gleich']);
});

test('ways that differ are a row each, and so is one alone', () => {
  expect(rows([lay('open', 1100, 1200), lay('folded', 1400, 1500)]).map(row => row.slice(3))).toEqual([
    ['1.1 m', '1.2 m'],
    ['1.4 m', '1.5 m'],
  ]);
  expect(rows([lay('open', 60, 100)])[0]![2]).toMatch(/^opened out, one layer/);
});
