import { dirname, isAbsolute, join } from 'node:path';
import { type Finding, locating, type Pattern, readPattern, type Where } from '@paperhinge/geometry';
import type { Sheet } from '@paperhinge/sheet';
import { commandRefusal, refuseSheet } from '@paperhinge/sheet/words';
import { kindOfFile } from './kind-of-file.js';
import { readInput, utf8 } from './read-input.js';

/** @throws PatternError, SheetFaults: what is wrong with the file or the sheet */
export async function loadSheet(path: string): Promise<Sheet> {
  const bytes = await readInput(path, 'sheet', { file: path });
  const kind = kindOfFile(bytes);
  if (kind !== undefined && kind !== 'sheet') throw refuseSheet(kind, { file: path, line: 1, column: 1 });
  const text = utf8(bytes, 'sheet', path);
  const { readSheet } = await import('@paperhinge/sheet');
  return readSheet(text, { file: path });
}

/** Where a sheet's pattern lies, seen from here. */
export const patternPath = (sheet: Sheet): string =>
  isAbsolute(sheet.pattern) ? sheet.pattern : join(dirname(sheet.file), sheet.pattern);

export interface Loaded {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
}

/** The pattern of a sheet, read with the sheet's `pieces`. @throws PatternError */
export async function loadPatternOf(sheet: Sheet): Promise<Loaded> {
  const file = patternPath(sheet);
  const bytes = await drawingBytes(file, { file: sheet.file, ...sheet.places.pattern });
  return readPattern(bytes, { file, pieces: sheet.pieces });
}

/** A pattern by itself, or read as a sheet says. @throws PatternError */
export async function loadPattern(file: string, sheet?: Sheet): Promise<Loaded> {
  const bytes = await drawingBytes(file, { file });
  return readPattern(bytes, { file, ...(sheet ? { pieces: sheet.pieces } : {}) });
}

/** The bytes of a drawing. @throws PatternError `not-a-pattern` where it begins like something else, and `readInput`'s */
export async function drawingBytes(file: string, where: Where): Promise<Uint8Array> {
  const bytes = await readInput(file, 'pattern', where);
  const looksLike = kindOfFile(bytes);
  if (looksLike !== undefined && looksLike !== 'drawing')
    throw commandRefusal('not-a-pattern', { looksLike }, where);
  return bytes;
}

/** Does work on what a file held; an error that knows no file is told as of this one. */
export async function inFile<T>(file: string, work: () => T | Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    return locating({ file }, () => {
      throw error;
    });
  }
}
