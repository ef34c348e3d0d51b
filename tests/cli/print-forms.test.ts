import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

const pattern = demo('patterns/woven-shift.svg');

describe('paperhinge print --projector', () => {
  test.each(['dark', 'light'])('writes one sheet on %s ground and says how large it is', async ground => {
    const file = join(folder(), 'shift.pdf');
    const { code, stdout, stderr } = await command('print', pattern, '--projector', ground, '-o', file);
    // Long work is told of.
    expect(stderr.replace(/^.* …\n/gm, '')).toBe('');
    expect(code).toBe(0);
    expect(stdout).toMatch(/^1 page of [\d /]+ in × [\d /]+ in for a projector in .*shift\.pdf\n$/);
    expect(readFileSync(file, 'latin1').slice(0, 5)).toBe('%PDF-');
  });

  test('tells where everything lies in the same shape as pages', async () => {
    const file = join(folder(), 'shift.pdf');
    const { stdout } = await command('print', pattern, '--projector', 'dark', '-o', file, '--json');
    const { pages, pieces, paperMm } = JSON.parse(stdout);
    expect(pages).toMatchObject([
      { number: 1, row: 0, column: 0, windowMm: [0, 0, ...paperMm], contentAtMm: [0, 0] },
    ]);
    expect(pieces.map((p: { piece: string }) => p.piece)).toEqual(['front', 'back', 'sleeve', 'neckband']);
  });

  test('shows half pieces opened out, or all of them mirrored; on a dark ground unless told otherwise', async () => {
    const home = folder();
    const shown = async (...args: string[]) => {
      const done = await command('print', pattern, ...args, '-o', join(home, 'shift.pdf'), '--json');
      expect(done.code).toBe(0);
      return JSON.parse(done.stdout) as { paperMm: [number, number]; pieces: { matrix: number[] }[] };
    };
    const drawn = await shown('--projector', 'light');
    const openedOut = await shown('--show', 'opened-out');
    const mirrored = await shown('--show', 'mirrored', '--projector', 'light');
    const area = ({ paperMm: [width, height] }: typeof drawn) => width * height;
    const turns = ({ pieces }: typeof drawn) =>
      pieces.map(({ matrix: [a, b, c, d] }) => Math.sign(a! * d! - b! * c!));
    // Front and back are drawn as halves on the fold; whole they take more room.
    expect(area(openedOut)).toBeGreaterThan(1.3 * area(drawn));
    expect(turns(mirrored)).toEqual(turns(drawn).map(turn => -turn));
  });

  test.each([
    [['--show', 'mirrored', '--paper', 'a4'], /'--show <how>' cannot be used with option '--paper <paper>'/],
    [['--projector', 'grey'], /'grey' is invalid.*dark, light/],
    [
      ['--projector', 'dark', '--paper', 'a4'],
      /'--projector <ground>' cannot be used with option '--paper <paper>'/,
    ],
  ])('%j is refused in one line', async (args, words) => {
    const home = folder();
    const { code, stderr, stdout } = await command('print', pattern, ...args, '-o', join(home, 'p.pdf'));
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(/^paperhinge: [^\n]*\n$/);
    expect(stderr).toMatch(words);
    expect(readdirSync(home)).toEqual([]);
  });
});

describe('paperhinge print -o FILE.dxf', () => {
  test.each(['shift.dxf', 'SHIFT.DXF'])('writes the interchange file %s', async name => {
    const file = join(folder(), name);
    const { code, stdout, stderr } = await command('print', pattern, '-o', file);
    // Long work is told of.
    expect(stderr.replace(/^.* …\n/gm, '')).toBe('');
    expect(code).toBe(0);
    expect(stdout).toBe(`4 pieces in ${file}\n`);
    expect(readFileSync(file, 'latin1')).toMatch(/^ {2}0\r\nSECTION\r\n[\s\S]*EOF\r\n$/);
  });

  test('tells which block holds which piece, and the layers', async () => {
    const { stdout } = await command('print', pattern, '-o', join(folder(), 'shift.dxf'), '--json');
    expect(JSON.parse(stdout)).toMatchObject({
      interchange: 'dxf',
      unit: 'mm',
      layers: { boundary: '1', sewLines: '14' },
      pieces: [
        { piece: 'front', block: 'FRONT' },
        { piece: 'back' },
        { piece: 'sleeve' },
        { piece: 'neckband' },
      ],
    });
  });

  test.each([
    ['--paper', 'a4'],
    ['--projector', 'dark'],
  ])('%s %s does not go with it', async (...args) => {
    const home = folder();
    const { code, stderr } = await command('print', pattern, ...args, '-o', join(home, 'p.dxf'));
    expect(code).toBe(2);
    expect(stderr).toBe(
      'paperhinge: A DXF file has neither paper nor projector: Leave out --paper and --projector, or give an output that ends in .pdf.\n',
    );
    expect(readdirSync(home)).toEqual([]);
  });
});
