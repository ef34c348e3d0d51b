// What every command that writes one file makes of the name it is given: the job done, or a refusal with what to write.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fileToWrite, type Held } from '../../packages/cli/src/file-to-write.js';
import { refusalOf } from '../support/told.js';

const heldBy: readonly (readonly [Held, string, string])[] = [
  ['pages', 'pdf', 'svg'],
  ['frame', 'pdf', 'svg'],
  ['drawing', 'svg', 'pdf'],
  ['picture', 'png', 'jpg'],
  ['sheet', 'yaml', 'svg'],
];

describe.each(heldBy)('a file that holds %s', (held, own, other) => {
  test('keeps its own ending, however it is written, and takes it where it has none', () => {
    for (const name of ['a', 'a b', 'front.v2', '.hidden', '-'])
      expect(fileToWrite(join('out', name), held)).toBe(`out/${name}.${own}`);
    for (const name of [`a.${own}`, `A.${own.toUpperCase()}`]) expect(fileToWrite(name, held)).toBe(name);
  });
  test('is not called as another kind is', () => {
    const told = refusalOf(() => fileToWrite(`out/x.${other}`, held));
    expect(told.code).toBe('output-of-another-kind');
    expect(told.remedy).toContain(`x.${own}`);
  });
  test.each(['', ' ', 'out/', 'out/ ', '.', 'out/..'])('and not %o, which names no file', path => {
    const told = refusalOf(() => fileToWrite(path, held));
    expect([told.code, told.remedy]).toEqual([
      'output-unnamed',
      expect.stringMatching(new RegExp(`such as (out/)?\\w+\\.${own}\\.`)),
    ]);
  });
  test('nor as a folder that is there, but by a name in it', () => {
    const folder = mkdtempSync(join(tmpdir(), 'paperhinge-folder-'));
    const told = refusalOf(() => fileToWrite(folder, held));
    expect(told.code).toBe('output-unnamed');
    expect(told.remedy).toMatch(new RegExp(`such as .*${basename(folder)}/\\w+\\.${own}\\.`));
    expect(fileToWrite(join(folder, `x.${own}`), held)).toBe(join(folder, `x.${own}`));
    rmSync(folder, { recursive: true });
  });
});
