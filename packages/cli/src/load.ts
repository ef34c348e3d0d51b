import { readFileSync, statSync } from 'node:fs';
import { dirname, isAbsolute, join } from 'node:path';
import { type Finding, type Pattern, readPattern, type Where } from '@paperhinge/geometry';
import { locating } from '@paperhinge/geometry/sayings';
import type { Included, Sheet } from '@paperhinge/sheet';
import { commandRefusal, refuseSheet } from '@paperhinge/sheet/words';
import { kindOfFile } from './kind-of-file.js';
import { largestInput, readInput, utf8 } from './read-input.js';

/** @throws PatternError, SheetFaults: what is wrong with the file or the sheet */
export async function loadSheet(path: string): Promise<Sheet> {
  const bytes = await readInput(path, 'sheet', { file: path });
  const kind = kindOfFile(bytes);
  if (kind !== undefined && kind !== 'sheet') throw refuseSheet(kind, { file: path, line: 1, column: 1 });
  const text = utf8(bytes, 'sheet', path);
  const { readSheet } = await import('@paperhinge/sheet');
  return readSheet(text, { file: path, included: includedSheet });
}

/** A sheet that another includes, by where it lies from that one's folder; undefined where none can be read. */
const includedSheet: Included = (path, from) => {
  const file = isAbsolute(path) ? path : join(dirname(from), path);
  const status = statSync(file, { throwIfNoEntry: false });
  if (!status?.isFile() || status.size > largestInput) return undefined;
  return { file, text: utf8(readFileSync(file), 'sheet', file) };
};

/** Where a sheet's pattern lies, seen from here; undefined where all its pieces are measured ones. */
export function patternPath({ pattern, file }: Sheet): string | undefined {
  if (pattern === undefined || isAbsolute(pattern)) return pattern;
  return join(dirname(file), pattern);
}

export interface Loaded {
  readonly pattern: Pattern;
  readonly findings: readonly Finding[];
}

/** The pattern of a sheet, read as the sheet says. @throws PatternError */
export async function loadPatternOf(sheet: Sheet): Promise<Loaded> {
  const file = patternPath(sheet);
  const bytes = file && (await drawingBytes(file, { file: sheet.file, ...sheet.places.pattern }));
  const { patternOfSheet } = await import('@paperhinge/sheet');
  return patternOfSheet(sheet, bytes || undefined, file ?? sheet.file);
}

/** A pattern by itself, or with all that a sheet says of it. @throws PatternError */
export async function loadPattern(file: string, sheet?: Sheet): Promise<Loaded> {
  const bytes = await drawingBytes(file, { file });
  return sheet ? asToldBy(sheet, bytes, file) : readPattern(bytes, { file });
}

/** A drawing as a sheet says it is to be read, with what the sheet adds to it. @throws PatternError */
export async function asToldBy(sheet: Sheet, bytes: Uint8Array, file: string): Promise<Loaded> {
  const { laidOver, patternOfSheet } = await import('@paperhinge/sheet');
  const read = patternOfSheet(sheet, bytes, file);
  const { pattern, findings } = laidOver(read.pattern, sheet);
  return { pattern, findings: [...read.findings, ...findings] };
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
