import { constants } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { PatternError, type Where } from '@paperhinge/geometry';

/** Bytes. Beyond any pattern or sheet; the readers have bounds of their own below it. */
const largestInput = 64_000_000;

/**
 * The bytes of an input file. Only ordinary files are read: a folder, a device or a pipe is refused.
 *
 * @param what it is to the maker: "sheet" or "pattern"
 * @param where to tell faults: the file itself, or the line that names it
 * @throws PatternError `file-not-found`, `file-not-readable`, `not-a-file`, `file-empty`, `file-too-large`
 */
export async function readInput(path: string, what: string, where: Where): Promise<Uint8Array> {
  const fault = (code: string, message: string, remedy: string) =>
    new PatternError(code, { message, remedy, where });
  let handle: FileHandle | undefined;
  try {
    // Not to wait for a pipe that nobody writes to.
    handle = await open(path, constants.O_RDONLY | constants.O_NONBLOCK);
    const status = await handle.stat();
    if (status.isDirectory()) throw fault('not-a-file', `The ${what} is a folder.`, 'Give the file itself.');
    if (!status.isFile())
      throw fault('not-a-file', `The ${what} is not an ordinary file.`, 'Give a file on disk.');
    if (status.size > largestInput)
      throw fault(
        'file-too-large',
        `The ${what} is over ${largestInput / 1e6} MB.`,
        `Give a ${what}; they are far smaller.`,
      );
    const bytes = await handle.readFile();
    if (bytes.length === 0)
      throw fault('file-empty', `The ${what} is empty.`, `Give a ${what} with something in it.`);
    return bytes;
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (error instanceof PatternError || code === undefined) throw error;
    if (code === 'EACCES' || code === 'EPERM')
      throw fault('file-not-readable', `The ${what} may not be read.`, 'Check who may read the file.');
    if (code === 'EISDIR') throw fault('not-a-file', `The ${what} is a folder.`, 'Give the file itself.');
    if (notThere.has(code))
      throw fault('file-not-found', `The ${what} does not exist.`, 'Check its name and its folder.');
    throw fault(
      'file-not-readable',
      `The ${what} could not be read (${code}).`,
      'Check the file and its disk.',
    );
  } finally {
    await handle?.close();
  }
}

const notThere: ReadonlySet<string> = new Set([
  'ENOENT',
  'ENOTDIR',
  'ENAMETOOLONG',
  'ELOOP',
  'ERR_INVALID_ARG_VALUE',
  'ENXIO',
]);

/** The text of a file in UTF-8. @throws PatternError `not-utf-8` */
export function utf8(bytes: Uint8Array, what: string, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new PatternError('not-utf-8', {
      message: `The ${what} is not text in UTF-8.`,
      remedy: 'Save it as plain text in UTF-8.',
      where: { file },
    });
  }
}
