import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { PatternError } from '@paperhinge/geometry';

export interface Output {
  /** Of the file, without a folder. */
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * Looks before any work is done whether these files can be written to a folder. An input is never overwritten,
 * whatever links lead to it.
 * @throws PatternError `output-not-a-folder`, `output-is-a-folder`, `input-would-be-overwritten`
 */
export async function checkOutputs(
  folder: string,
  names: readonly string[],
  inputs: readonly string[],
): Promise<void> {
  const fault = (code: string, path: string, message: string, remedy: string) =>
    new PatternError(code, { message, remedy, where: { file: path } });
  const own = await statusOf(folder);
  if (own && !own.isDirectory())
    throw fault('output-not-a-folder', folder, 'This is a file, not a folder.', 'Give the name of a folder.');
  if (!own) await firstFolderAbove(folder);
  const read = (await Promise.all(inputs.map(statusOf))).filter(status => status !== undefined);
  for (const name of names) {
    const path = join(folder, name);
    const there = await statusOf(path);
    if (there?.isDirectory())
      throw fault(
        'output-is-a-folder',
        path,
        'A folder stands where this file is to be written.',
        'Give another output folder.',
      );
    if (there && read.some(input => input.ino === there.ino && input.dev === there.dev))
      throw fault(
        'input-would-be-overwritten',
        path,
        'This output would overwrite an input.',
        'Give another output folder.',
      );
  }
}

async function firstFolderAbove(path: string): Promise<void> {
  for (let at = resolve(path); ; at = dirname(at)) {
    const status = await statusOf(at);
    if (status?.isDirectory() || (!status && dirname(at) === at)) return;
    if (status)
      throw new PatternError('output-not-a-folder', {
        message: 'The output folder cannot be made: a file stands on the way to it.',
        remedy: 'Give another output folder.',
        where: { file: path },
      });
  }
}

/** What a path leads to, links followed; undefined if to nothing. */
async function statusOf(path: string) {
  try {
    // Inode numbers of some file systems are beyond what a double holds.
    return await stat(path, { bigint: true });
  } catch {
    return undefined;
  }
}

/**
 * Writes files whole or not at all: each under a passing name beside its place, and all of them renamed once the last
 * is written. If anything fails before that, what stood there still stands. A link at a file's place is replaced, not
 * followed.
 * @throws PatternError `output-not-written`
 */
export async function writeOutputs(folder: string, outputs: readonly Output[]): Promise<void> {
  const passing = outputs.map(({ name }) => join(folder, `.${name}.${process.pid}.part`));
  const clear = () => Promise.all(passing.map(path => rm(path, { force: true })));
  const interrupted = (signal: NodeJS.Signals) =>
    void clear().finally(() => process.exit(signal === 'SIGINT' ? 130 : 143));
  process.once('SIGINT', interrupted).once('SIGTERM', interrupted);
  try {
    await makeFolder(resolve(folder));
    // A run that was killed may have left some under the same number.
    await clear();
    for (const [i, { content }] of outputs.entries()) {
      const file = await open(passing[i]!, 'wx');
      try {
        await file.writeFile(content);
        await file.sync();
      } finally {
        await file.close();
      }
    }
    for (const [i, { name }] of outputs.entries()) await rename(passing[i]!, join(folder, name));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    throw new PatternError('output-not-written', {
      message: `The output folder could not be written to (${code}).`,
      remedy: 'Check who may write there and whether the disk is full.',
      where: { file: folder },
    });
  } finally {
    await clear();
    process.off('SIGINT', interrupted).off('SIGTERM', interrupted);
  }
}

/** Folder by folder: node's own recursive `mkdir` never ends where a file system refuses, as /proc does. */
async function makeFolder(path: string): Promise<void> {
  if (await statusOf(path)) return;
  await makeFolder(dirname(path));
  try {
    await mkdir(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
}
