import { execFileSync } from 'node:child_process';
import { chmodSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PatternError } from '@paperhinge/geometry';
import { expect, test } from 'vitest';
import { readInput, utf8 } from '../../packages/cli/src/read-input.js';
import { told } from '../support/told.js';
import { folder } from './folders.js';

const reading = (path: string) => readInput(path, 'sheet', { file: path });

test('an ordinary file is read', async () => {
  const path = join(folder(), 'a');
  writeFileSync(path, 'abc');
  expect(utf8(await reading(path), 'sheet', path)).toBe('abc');
});

test.each([
  ['nothing', () => join(folder(), 'none'), 'file-not-found', 'The sheet does not exist.'],
  [
    'a path through a file',
    () => join(fileWith('x'), 'below'),
    'file-not-found',
    'The sheet does not exist.',
  ],
  [
    'a name too long for any file',
    () => join(folder(), 'a'.repeat(5000)),
    'file-not-found',
    'The sheet does not exist.',
  ],
  ['a name with a zero byte', () => 'a\0b', 'file-not-found', 'The sheet does not exist.'],
  ['a folder', () => folder(), 'not-a-file', 'The sheet is a folder.'],
  ['a device without end', () => '/dev/zero', 'not-a-file', 'The sheet is not an ordinary file.'],
  ['an empty file', () => fileWith(''), 'file-empty', 'The sheet is empty.'],
])('%s is refused', async (_, path, code, message) => {
  const error: PatternError = await reading(path()).catch(e => e);
  expect({ code: error.code, message: told(error).message }).toEqual({ code, message });
});

test.skipIf(process.platform === 'win32')(
  'a pipe that nobody writes to is refused instead of waited for',
  async () => {
    const path = join(folder(), 'pipe');
    execFileSync('mkfifo', [path]);
    await expect(reading(path)).rejects.toMatchObject({ code: 'not-a-file' });
  },
);

test.skipIf(process.getuid?.() === 0)('a file that may not be read is refused', async () => {
  const path = fileWith('x');
  chmodSync(path, 0);
  await expect(reading(path)).rejects.toMatchObject({ code: 'file-not-readable' });
});

test('a file beyond any input is refused unread', async () => {
  const path = fileWith('x');
  truncateSync(path, 64_000_001);
  await expect(reading(path)).rejects.toMatchObject({
    code: 'input-too-large',
    facts: { mostMegabytes: 64 },
  });
});

test('bytes that are not UTF-8 are refused', () => {
  expect(() => utf8(new Uint8Array([0x61, 0xff]), 'sheet', 'a.yaml')).toThrow(
    expect.objectContaining({
      code: 'not-utf-8',
      where: { file: 'a.yaml' },
    }),
  );
});

function fileWith(text: string): string {
  const path = join(folder(), 'file');
  writeFileSync(path, text);
  return path;
}
