import { lstat, mkdir, open, readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { commandRefusal } from '@paperhinge/sheet/words';
import { alone } from './alone.js';
import { isRunning } from './is-running.js';

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
  const own = await statusOf(folder);
  if (own && !own.isDirectory())
    throw commandRefusal('output-not-a-folder', { onTheWay: false }, { file: folder });
  if (!own) await firstFolderAbove(folder);
  const read = (await Promise.all(inputs.map(statusOf))).filter(status => status !== undefined);
  for (const name of names) {
    const file = join(folder, name);
    const there = await statusOf(file);
    if (there?.isDirectory()) throw commandRefusal('output-is-a-folder', {}, { file });
    if (there && read.some(input => input.ino === there.ino && input.dev === there.dev))
      throw commandRefusal('input-would-be-overwritten', {}, { file });
  }
}

async function firstFolderAbove(path: string): Promise<void> {
  for (let at = resolve(path); ; at = dirname(at)) {
    const status = await statusOf(at);
    if (status?.isDirectory() || (!status && dirname(at) === at)) return;
    if (status) throw commandRefusal('output-not-a-folder', { onTheWay: true }, { file: path });
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

/** Files on their way wait in a hidden folder of their run, named after its process. */
const waiting = /^\.paperhinge-(\d+)-\d+$/;
let runs = 0;

/**
 * Writes files together: all of them whole into a hidden folder beside their places, then each to its place, one run
 * at a time. The last of them vouches for the others: an earlier one of its name is taken away before the first lands,
 * and it lands last, so that a run that is killed at any moment never leaves it beside files of another run. If
 * anything fails before the first lands, what stood there still stands. What a killed run left waiting is cleared by
 * the next. A link at a file's place is replaced, not followed.
 * @throws PatternError `output-not-written`
 */
export async function writeOutputs(folder: string, outputs: readonly Output[]): Promise<void> {
  const own = join(folder, `.paperhinge-${process.pid}-${++runs}`);
  const clear = () => rm(own, { recursive: true, force: true });
  // Who is stopped ends the step that is begun, landing above all, begins no other, and clears.
  let stopped = false,
    begun: Promise<unknown> = Promise.resolve();
  const step = <T>(work: () => Promise<T>): Promise<T> => {
    if (stopped) return new Promise<never>(() => undefined);
    const done = work();
    begun = done.catch(() => undefined);
    return done;
  };
  const interrupted = (signal: NodeJS.Signals) => {
    stopped = true;
    void begun.then(clear).finally(() => process.exit(signal === 'SIGINT' ? 130 : 143));
  };
  process.once('SIGINT', interrupted).once('SIGTERM', interrupted);
  try {
    await step(() => makeFolder(resolve(folder)));
    await step(clear);
    await step(() => mkdir(own));
    // By number: a name may be as long as a name can be.
    for (const [i, { content }] of outputs.entries())
      await step(() => writeWhole(join(own, String(i)), content));
    await step(() => alone(folder, () => land(folder, own, outputs)));
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === undefined) throw error;
    throw commandRefusal('output-not-written', { system: code }, { file: folder });
  } finally {
    // Where nothing can be written nothing can be cleared either: why has been told, and the next run clears.
    await clear().catch(() => undefined);
    process.off('SIGINT', interrupted).off('SIGTERM', interrupted);
  }
}

/** The same of files told by their paths, folder by folder; the last file vouches for those beside it. */
export async function writeTogether(
  files: readonly { readonly path: string; readonly content: string | Uint8Array }[],
): Promise<void> {
  const folders = [...new Set(files.map(({ path }) => dirname(path)))];
  for (const folder of folders)
    await writeOutputs(
      folder,
      files
        .filter(({ path }) => dirname(path) === folder)
        .map(({ path, content }) => ({ name: basename(path), content })),
    );
}

async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
}

async function land(folder: string, own: string, outputs: readonly Output[]): Promise<void> {
  await clearAbandoned(folder);
  // Places that cannot be taken are found before anything is taken away.
  for (const { name } of outputs) await lstat(dirname(join(folder, name)));
  const vouching = outputs.at(-1);
  if (vouching && outputs.length > 1) await rm(join(folder, vouching.name), { force: true });
  for (const [i, { name }] of outputs.entries()) await rename(join(own, String(i)), join(folder, name));
}

/** What runs left waiting that are no more. */
async function clearAbandoned(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    const pid = Number(waiting.exec(name)?.[1] ?? process.pid);
    if (pid !== process.pid && !isRunning(pid))
      await rm(join(folder, name), { recursive: true, force: true });
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
