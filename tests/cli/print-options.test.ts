import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writePattern } from '@paperhinge/geometry';
import type { PagesJson } from '@paperhinge/print';
import { beforeEach, describe, expect, test } from 'vitest';
import { shiftPattern } from '../support/shift.js';
import { command } from './command.js';
import { folder } from './folders.js';

let home: string, shift: string;
beforeEach(() => {
  home = folder();
  shift = join(home, 'shift.svg');
  writeFileSync(shift, writePattern(shiftPattern()));
});
const out = () => join(home, 'out.pdf');
const printed = async (...options: string[]): Promise<PagesJson> => {
  const { stdout, code } = await command('print', shift, '-o', out(), '--json', ...options);
  expect(code).toBe(0);
  return JSON.parse(stdout);
};

describe('what a maker may choose of the pages', () => {
  test('several papers make a file each, and the record one entry each', async () => {
    const { stdout, code } = await command('print', shift, '-o', out(), '--json', '--paper', 'a3,24 x 36 in');
    expect(code).toBe(0);
    const all: readonly PagesJson[] = JSON.parse(stdout);
    expect(all.map(p => p.paper)).toEqual(['a3', '609.6x914.4']);
    expect(readdirSync(home).sort()).toEqual(['out-609.6x914.4.pdf', 'out-a3.pdf', 'shift.svg']);
  });

  test('margins, orientation and joining edge to edge', async () => {
    const { pages, paperMm } = await printed(
      ...['--orientation', 'landscape', '--margins', '12,8,1 cm,1/2 in', '--edge-to-edge'],
    );
    expect(paperMm).toEqual([297, 210]);
    expect(pages[0]!.contentAtMm).toEqual([12.7, 12]);
    const [, , w, h] = pages[0]!.windowMm;
    expect(w).toBeCloseTo(297 - 8 - 12.7, 9);
    expect(h).toBeCloseTo(210 - 12 - 10, 9);
    for (const { windowMm, column, row } of pages.filter(p => p.row > 0)) {
      expect(windowMm[0]).toBeCloseTo(w * column, 9);
      expect(windowMm[1]).toBeCloseTo(h * row, 9);
    }
  });

  test('what the square measured, of 50 mm or of 2 in', async () => {
    const metric = await printed('--measured', '49.5,50.4');
    const inches = await printed('--measured', '1.98 in,2.016 in');
    expect(metric.pages[0]!.windowMm[2]).toBeCloseTo((190 * 49.5) / 50, 9);
    expect(inches.pages[0]!.windowMm[2]).toBeCloseTo((190 * 49.5) / 50, 9);
  });

  test('each piece on pages of its own; pieces not turned', async () => {
    const { pieces } = await printed('--arrange', 'own-pages', '--turn', 'none');
    // The neckband's grain runs across its drawing: it is stood upright as a piece, as ever.
    for (const { matrix } of pieces.filter(p => p.piece !== 'neckband'))
      expect(matrix.slice(0, 4)).toEqual([1, 0, 0, 1].map(n => expect.closeTo(n, 12)));
  });

  test('the large sheet as a drawing, too', async () => {
    await printed(
      '--large-sheet',
      '--grid',
      '--tint',
      '--notches',
      'snips',
      '--hide',
      'stitching-lines,marks',
    );
    const svg = readFileSync(join(home, 'out.svg'), 'utf8');
    expect(svg).toContain('class="tint"');
    expect(svg).toContain('class="snip"');
  });

  test.each([
    ['--overlap', 'wide', '"overlap" is not a length'],
    ['--turn', 'over', '"turn" is none of its choices'],
    ['--margins', '1,2', '"margins" is neither one length nor four'],
    ['--measured', '49', '"measured" is not what a square measured both ways'],
    ['--measured', '44,50', 'more than 5 % from 50 mm'],
    ['--paper', '20 x', '"paper" is not a size of paper'],
    ['--paper', '20 x 20', 'cannot be printed on'],
    ['--hide', 'everything', '"hide" is none of its choices'],
  ])('%s %s is refused in one line', async (option, value, words) => {
    const { code, stderr } = await command('print', shift, '-o', out(), option, value);
    expect(code).toBe(2);
    expect(stderr).toContain(words);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(readdirSync(home)).toEqual(['shift.svg']);
  });
});

test('a sheet’s print mapping says the same', async () => {
  writeFileSync(
    join(home, 'sheet.yaml'),
    `pattern: shift.svg
steps:
print:
  paper: 500 x 700 mm
  overlap: edge to edge
  arrange: reading order
  measured: [50.2, 49.9]
  large sheet: yes
  initials: M. K.
  date: 2026-11-25
`,
  );
  const { code, stdout } = await command(
    'alter',
    join(home, 'sheet.yaml'),
    '-o',
    join(home, 'made'),
    '--json',
  );
  expect(code).toBe(0);
  const [pages] = JSON.parse(stdout).pages;
  expect(pages.paper).toBe('500x700');
  expect(readdirSync(join(home, 'made')).sort()).toEqual([
    'altered.svg',
    'pages-500x700.pdf',
    'record.json',
    'report.html',
    'sheet-500x700.svg',
  ]);
  const report = readFileSync(join(home, 'made', 'report.html'), 'utf8');
  expect(report).toContain('for M. K.');
  expect(report).toContain('2026-11-25');
});
