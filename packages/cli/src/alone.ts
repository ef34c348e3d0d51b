import { link, open, readFile, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { isRunning } from './is-running.js';

/** Holds a folder while the files of one run land in it; says by its number which run that is. */
const lock = '.paperhinge-lock';
/** ms between two looks whether the folder is free. */
const pause = 20;
/** ms after which a lock is no longer believed: files land within milliseconds. */
const patience = 10_000;

/** Does work in a folder while no other run does. */
export async function alone<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const path = join(folder, lock);
  const start = performance.now();
  while (!(await taken(path))) {
    const holder = await holderOf(path);
    const gone = holder !== undefined && holder !== 0 && !isRunning(holder);
    if (gone || performance.now() - start > patience) await unseat(path, holder);
    else await new Promise(resolve => setTimeout(resolve, pause));
  }
  try {
    return await work();
  } finally {
    await rm(path, { force: true });
  }
}

/** Takes the lock if nobody holds it. */
async function taken(path: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx');
    await file.writeFile(String(process.pid));
    await file.close();
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

/** The number of the run that holds the lock; 0 if it has only just taken it, undefined if nobody does. */
async function holderOf(path: string): Promise<number | undefined> {
  try {
    return Number(await readFile(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/** Takes the lock from a run that is gone; where another run took it in the meantime, that one keeps it. */
async function unseat(path: string, holder: number | undefined): Promise<void> {
  const aside = `${path}-${process.pid}`;
  try {
    await rename(path, aside);
    if ((await holderOf(aside)) !== holder) await link(aside, path);
  } catch {
    // Somebody else was quicker.
  } finally {
    await rm(aside, { force: true });
  }
}
