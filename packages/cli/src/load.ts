import { dirname, isAbsolute, join } from 'node:path';
import { type Finding, locating, type Pattern, readPattern } from '@paperhinge/geometry';
import { readSheet, type Sheet } from '@paperhinge/sheet';
import { readInput, utf8 } from './read-input.js';

/** @throws PatternError, SheetFaults: what is wrong with the file or the sheet */
export async function loadSheet(path: string): Promise<Sheet> {
  const text = utf8(await readInput(path, 'sheet', { file: path }), 'sheet', path);
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
  const bytes = await readInput(file, 'pattern', { file: sheet.file, ...sheet.places.pattern });
  return readPattern(bytes, { file, pieces: sheet.pieces });
}

/** A pattern by itself, or read as a sheet says. @throws PatternError */
export async function loadPattern(file: string, sheet?: Sheet): Promise<Loaded> {
  const bytes = await readInput(file, 'pattern', { file });
  return readPattern(bytes, { file, ...(sheet ? { pieces: sheet.pieces } : {}) });
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
