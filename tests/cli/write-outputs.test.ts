import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkOutputs, writeOutputs } from '../../packages/cli/src/write-outputs.js';
import { folder } from './folders.js';

describe('writing outputs', () => {
  test('folders are made, files written whole, nothing else left', async () => {
    const out = join(folder(), 'a', 'b');
    await writeOutputs(out, [
      { name: 'one.txt', content: 'one' },
      { name: 'two.bin', content: new Uint8Array([1, 2]) },
    ]);
    expect(readdirSync(out).sort()).toEqual(['one.txt', 'two.bin']);
    expect(readFileSync(join(out, 'one.txt'), 'utf8')).toBe('one');
  });

  test('an earlier output stays if a later file cannot be written', async () => {
    const out = folder();
    writeFileSync(join(out, 'one.txt'), 'earlier');
    await expect(
      writeOutputs(out, [
        { name: 'one.txt', content: 'new' },
        { name: 'no/such/folder.txt', content: 'two' },
      ]),
    ).rejects.toMatchObject({ code: 'output-not-written' });
    expect(readdirSync(out)).toEqual(['one.txt']);
    expect(readFileSync(join(out, 'one.txt'), 'utf8')).toBe('earlier');
  });

  test('a link at an output is replaced, what it leads to stays', async () => {
    const out = folder(),
      other = join(folder(), 'precious.txt');
    writeFileSync(other, 'precious');
    symlinkSync(other, join(out, 'one.txt'));
    await writeOutputs(out, [{ name: 'one.txt', content: 'new' }]);
    expect(readFileSync(other, 'utf8')).toBe('precious');
    expect(readFileSync(join(out, 'one.txt'), 'utf8')).toBe('new');
  });

  test('a folder whose name is longer than the disk takes is refused, and not for what is left to clear', async () => {
    const out = join(folder(), 'n'.repeat(256));
    await expect(writeOutputs(out, [{ name: 'one.txt', content: 'one' }])).rejects.toMatchObject({
      code: 'output-not-written',
      message: expect.stringContaining('ENAMETOOLONG'),
    });
  });

  test.skipIf(!existsSync('/proc/self'))(
    'a file system that takes no folders is refused, and soon',
    async () => {
      await expect(writeOutputs('/proc/out', [{ name: 'one.txt', content: 'one' }])).rejects.toMatchObject({
        code: 'output-not-written',
      });
    },
  );

  test.skipIf(process.getuid?.() === 0)('a folder that may not be written to is refused', async () => {
    const out = folder();
    chmodSync(out, 0o500);
    await expect(writeOutputs(out, [{ name: 'one.txt', content: '' }])).rejects.toMatchObject({
      code: 'output-not-written',
    });
  });
});

describe('before any work is done', () => {
  const names = ['altered.svg', 'record.json'];

  test('an output that is an input is refused, under its own name and through links', async () => {
    const out = folder(),
      input = join(out, 'altered.svg');
    writeFileSync(input, '<svg/>');
    const refused = { code: 'input-would-be-overwritten', where: { file: input } };
    await expect(checkOutputs(out, names, [input])).rejects.toMatchObject(refused);

    const elsewhere = folder();
    symlinkSync(input, join(elsewhere, 'link.svg'));
    linkSync(input, join(elsewhere, 'hard.svg'));
    symlinkSync(out, join(elsewhere, 'out'));
    for (const path of ['link.svg', 'hard.svg', 'out/altered.svg'])
      await expect(checkOutputs(out, names, [join(elsewhere, path)])).rejects.toMatchObject(refused);
    await expect(checkOutputs(join(elsewhere, 'out'), names, [input])).rejects.toMatchObject({
      code: refused.code,
    });
  });

  test('a file where the output folder should be is refused', async () => {
    const file = join(folder(), 'file');
    writeFileSync(file, 'x');
    await expect(checkOutputs(file, names, [])).rejects.toMatchObject({ code: 'output-not-a-folder' });
    await expect(checkOutputs(join(file, 'below'), names, [])).rejects.toMatchObject({
      code: 'output-not-a-folder',
    });
  });

  test('a folder where an output should be is refused', async () => {
    const out = folder();
    mkdirSync(join(out, 'record.json'));
    await expect(checkOutputs(out, names, [])).rejects.toMatchObject({ code: 'output-is-a-folder' });
  });

  test('a folder that is not there yet is not made by looking', async () => {
    const out = join(folder(), 'new');
    await checkOutputs(out, names, []);
    expect(existsSync(out)).toBe(false);
  });
});
