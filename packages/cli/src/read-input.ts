import { constants } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { PatternError, type Where } from '@paperhinge/geometry';
import { commandRefusal } from '@paperhinge/sheet/words';

/** Bytes. Beyond any pattern or sheet; the readers have bounds of their own below it. */
export const largestInput = 64_000_000;
/** Bytes read in one go. */
const chunk = 1 << 20;

/** What an input is to the maker. */
export type Input = 'sheet' | 'pattern' | 'picture' | 'record';

/**
 * The bytes of an input file. Only ordinary files are read, and no more of them than an input can have: a folder, a
 * device or a pipe is refused, and a file that grows while it is read ends there.
 *
 * @param where to tell faults: the file itself, or the line that names it
 * @throws PatternError `file-not-found`, `file-not-readable`, `not-a-file`, `file-empty`, `input-too-large`
 */
export async function readInput(path: string, what: Input, where: Where): Promise<Uint8Array> {
  let handle: FileHandle | undefined;
  try {
    // Not to wait for a pipe that nobody writes to.
    handle = await open(path, constants.O_RDONLY | constants.O_NONBLOCK);
    const status = await handle.stat();
    if (!status.isFile()) throw commandRefusal('not-a-file', { what, folder: status.isDirectory() }, where);
    const bytes = status.size > largestInput ? undefined : await boundedBytes(handle);
    if (bytes === undefined)
      throw commandRefusal('input-too-large', { what, mostMegabytes: largestInput / 1e6 }, where);
    if (bytes.length === 0) throw commandRefusal('file-empty', { what }, where);
    return bytes;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (error instanceof PatternError || code === undefined) throw error;
    throw refusalOf(code, what, where);
  } finally {
    await handle?.close();
  }
}

/** All bytes, or undefined if there are more than any input has; a file may say it is empty and never end. */
async function boundedBytes(handle: FileHandle): Promise<Uint8Array | undefined> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { bytesRead, buffer } = await handle.read(new Uint8Array(chunk), 0, chunk);
    if (bytesRead === 0) return Buffer.concat(chunks, length);
    chunks.push(buffer.subarray(0, bytesRead));
    length += bytesRead;
    if (length > largestInput) return undefined;
  }
}

function refusalOf(system: string, what: Input, where: Where): PatternError {
  if (system === 'EACCES' || system === 'EPERM') return commandRefusal('file-not-readable', { what }, where);
  if (system === 'EISDIR') return commandRefusal('not-a-file', { what, folder: true }, where);
  if (notThere.has(system)) return commandRefusal('file-not-found', { what }, where);
  return commandRefusal('file-not-readable', { what, system }, where);
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
export function utf8(bytes: Uint8Array, what: Input, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw commandRefusal('not-utf-8', { what }, { file });
  }
}
