import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PatternError } from '@paperhinge/geometry';
import { describe, expect, test } from 'vitest';
import { writeOutputs } from '../../packages/cli/src/write-outputs.js';
import { told } from '../support/told.js';
import { demo } from './command.js';
import { folder } from './folders.js';

const dist = (file: string) => new URL(`../../packages/cli/dist/${file}`, import.meta.url);
const names = ['pattern.svg', 'pages.pdf', 'record.json'];
const set = (tag: string) => names.map(name => ({ name, content: tag.repeat(2000) }));
const tagIn = (home: string, name: string) => readFileSync(join(home, name), 'utf8')[0];

/** A process that writes sets of one tag after another, as fast as it can. */
function writer(home: string, tag: string, times: number): ChildProcess {
  const code = `import { writeOutputs } from ${JSON.stringify(dist('write-outputs.js').href)};
for (let i = 0; i < ${times}; i++)
  await writeOutputs(${JSON.stringify(home)}, ${JSON.stringify(names)}.map(name => ({ name, content: ${JSON.stringify(tag)}.repeat(2000) })));`;
  return spawn(process.execPath, ['--input-type=module', '-e', code], { stdio: 'ignore' });
}
const ended = (child: ChildProcess) => new Promise(resolve => child.once('exit', resolve));

describe('files of one run land together', () => {
  test('two runs into one folder, over and over, end with the files of one', async () => {
    const home = folder();
    await Promise.all(['a', 'b', 'c'].map(tag => ended(writer(home, tag, 8))));
    expect(readdirSync(home).sort()).toEqual([...names].sort());
    expect(new Set(names.map(name => tagIn(home, name))).size).toBe(1);
  });

  test('two runs of one process do, too', async () => {
    const home = folder();
    await Promise.all(['a', 'b', 'c', 'd'].map(tag => writeOutputs(home, set(tag))));
    expect(readdirSync(home).sort()).toEqual([...names].sort());
    expect(new Set(names.map(name => tagIn(home, name))).size).toBe(1);
  });

  test('a run that is killed at any moment leaves no record beside files of another', async () => {
    const home = folder();
    await writeOutputs(home, set('z'));
    for (let i = 0; i < 12; i++) {
      const child = writer(home, String.fromCharCode(97 + i), 1000);
      await new Promise(resolve => setTimeout(resolve, 60 + i * 17));
      child.kill('SIGKILL');
      await ended(child);
      if (existsSync(join(home, 'record.json')))
        expect(new Set(names.map(name => tagIn(home, name))).size).toBe(1);
    }
    // What they left is gone with the next run.
    await writeOutputs(home, set('y'));
    expect(readdirSync(home).sort()).toEqual([...names].sort());
    expect(names.map(name => tagIn(home, name))).toEqual(['y', 'y', 'y']);
  });

  test('a name as long as a name can be', async () => {
    const home = folder(),
      name = `${'n'.repeat(251)}.svg`;
    await writeOutputs(home, [{ name, content: 'x' }]);
    expect(readdirSync(home)).toEqual([name]);
  });

  test('a longer one is told as such', async () => {
    const name = `${'n'.repeat(252)}.svg`;
    await expect(writeOutputs(folder(), [{ name, content: 'x' }])).rejects.toSatisfy(
      (error: PatternError) => told(error).remedy === 'Give it a shorter name after -o.',
    );
  });
});

describe.skipIf(process.platform === 'win32')('where the answer goes', () => {
  const main = fileURLToPath(dist('main.js'));
  const shell = (line: string) =>
    spawnSync('bash', ['-c', `set -o pipefail; ${line}`], {
      encoding: 'utf8',
      env: {
        ...process.env,
        COMMAND: `${process.execPath} ${main}`,
        PATTERN: demo('patterns/woven-shift.svg'),
      },
    });

  test('a reader that has seen enough ends nothing', () => {
    expect(shell('$COMMAND measure $PATTERN | head -c 1').status).toBe(0);
    expect(shell('$COMMAND measure $PATTERN 2>&1 | head -c 1').status).toBe(0);
    expect(shell('$COMMAND check no-such-file 2>&1 >/dev/null | head -c 1').status).toBe(2);
  });

  test('closed streams end nothing', () => {
    expect(shell('$COMMAND measure $PATTERN >&-').status).toBe(0);
    expect(shell('$COMMAND measure $PATTERN 2>&-').status).toBe(0);
  });

  test.skipIf(!existsSync('/dev/full'))(
    'a full disk is told, and never ends as if the garment would not sew',
    () => {
      const { status, stderr } = shell('$COMMAND measure $PATTERN > /dev/full');
      expect(status).toBe(2);
      expect(stderr).toContain('paperhinge: The answer could not be written (ENOSPC): ');
      expect(shell('$COMMAND check no-such-file 2> /dev/full').status).toBe(2);
    },
  );
});
