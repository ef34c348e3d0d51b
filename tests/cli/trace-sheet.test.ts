import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { command, demo } from './command.js';
import { folder } from './folders.js';

const skirt = demo('sheets/skirt-by-figures.yaml');

test('a sheet of measured points becomes a pattern that measures and sews as its figures say', async () => {
  const pattern = join(folder(), 'skirt.svg');
  const { code, stdout } = await command('trace', skirt, '-o', pattern);
  expect([code, stdout]).toEqual([0, `2 pieces in ${pattern}\n`]);
  const { pieces, seams } = JSON.parse((await command('measure', pattern, '--json')).stdout);
  expect(pieces.front.edges.centre.lengthMm).toBe(620);
  expect(pieces.back.edges.centre.lengthMm).toBe(610);
  expect(seams.side.matches).toBe(true);
});

test('it is altered, checked and printed without a drawing', async () => {
  const dir = folder();
  const { code, stdout } = await command('alter', skirt, '-o', dir, '--json');
  expect(code).toBe(0);
  const { after, findings } = JSON.parse(stdout);
  expect(after.seams.side.matches).toBe(true);
  expect(findings.filter((found: { severity: string }) => found.severity !== 'note')).toEqual([]);
});

test('what is for pictures is refused with a sheet', async () => {
  const { code, stderr } = await command('trace', skirt, '-o', join(folder(), 'x.svg'), '--dpi', '300');
  expect(code).toBe(2);
  expect(stderr).toContain('a sheet of measured points, has its scale in its own figures');
});

test('a fault of the figures is told at its line', async () => {
  const dir = folder();
  const path = join(dir, 'one.yaml');
  writeFileSync(
    path,
    'pieces:\n  one:\n    points: { A: [0, 0], B: [9, 0] }\n    edges: { top: [A, B], end: [B, C] }\n',
  );
  const { code, stderr } = await command('trace', path, '-o', join(dir, 'x.svg'));
  expect(code).toBe(2);
  expect(stderr).toContain('one.yaml:3:');
});
