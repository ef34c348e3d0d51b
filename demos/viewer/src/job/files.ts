import type { Laid } from './lessons.js';
import { valuesOf } from './written.js';

// What is dropped, pasted or picked: told by what is in it, never by its name alone. Nothing of it is put into the page
// as markup: drawings go through the library's own reader, texts are shown as text.

/** Why a file cannot be laid on the table; each has its words. */
export type NotLaid = 'too large' | 'not understood' | 'no pattern';

export interface Found {
  readonly pattern?: { readonly name: string; readonly text: string };
  readonly sheet?: string;
  /** The sheet's file. */
  readonly sheetName?: string;
  /** A drawing of another program, to be traced. */
  readonly dxf?: { readonly name: string; readonly text: string };
  /** Printed pages, to be traced. */
  readonly pdf?: File;
  /** Photographs of pieces, to be traced. */
  readonly pictures?: readonly File[];
  /** A record, from which its sheet can be had. */
  readonly record?: string;
}

/** Bytes: larger than any drawing of a garment. */
const largest = 30e6;

/** What several files are together: a pattern, a sheet, both, or a bundle of both. */
export async function found(files: readonly File[]): Promise<Found | { readonly not: NotLaid }> {
  let all: Found = {};
  for (const file of files) {
    if (file.size > largest) return { not: 'too large' };
    const start = new Uint8Array(await file.slice(0, 1024).arrayBuffer());
    if (isPicture(start)) {
      all = { ...all, pictures: [...(all.pictures ?? []), file] };
      continue;
    }
    if (isPdf(start)) {
      all = { ...all, pdf: file };
      continue;
    }
    const one = foundIn(file.name, await file.text());
    if ('not' in one) return one;
    all = { ...all, ...one };
  }
  return all;
}

/** How a PNG and a JPEG begin. */
const isPicture = ([a, b, c]: Uint8Array): boolean =>
  (a === 0x89 && b === 0x50 && c === 0x4e) || (a === 0xff && b === 0xd8 && c === 0xff);

/** A PDF says so within its first kilobyte. */
const isPdf = (start: Uint8Array): boolean => String.fromCharCode(...start).includes('%PDF-');

/** How DXF begins: with a remark, or with its first section. */
const isDxf = (start: string): boolean => /^(999[\r\n]|0[ \t]*\r?\n\s*SECTION)/.test(start);

/** A sheet that names no drawing and gives pieces by measured points. */
export function givesItsPieces(sheet: string): boolean {
  const { pattern, pieces } = valuesOf(sheet) ?? {};
  if (pattern !== undefined || typeof pieces !== 'object' || pieces === null) return false;
  return Object.values(pieces).some(
    piece => typeof piece === 'object' && piece !== null && 'points' in piece,
  );
}

/** A file's name without its kind. */
export const stemOf = (name: string): string => name.replace(/\.[^.]*$/, '');

/** What one text is. */
export function foundIn(name: string, text: string): Found | { readonly not: NotLaid } {
  const start = text.trimStart();
  if (start.startsWith('<')) return { pattern: { name: name || 'pattern.svg', text } };
  if (start.startsWith('{')) return inJson(start);
  if (isDxf(start)) return { dxf: { name, text } };
  const values = valuesOf(text) ?? {};
  return 'steps' in values || 'pattern' in values || givesItsPieces(text)
    ? { sheet: text, sheetName: name }
    : { not: 'not understood' };
}

function inJson(text: string): Found | { readonly not: NotLaid } {
  try {
    const value = JSON.parse(text) as Record<string, unknown>;
    const { paperhinge, pattern, sheet } = value as Partial<Bundle>;
    if (paperhinge === 'bundle' && typeof pattern?.text === 'string' && typeof sheet === 'string')
      return { pattern: { name: String(pattern.name), text: pattern.text }, sheet };
    if ('before' in value && 'after' in value) return { record: text };
    return 'steps' in value ? { sheet: text } : { not: 'not understood' };
  } catch {
    return { not: 'not understood' };
  }
}

/** One file with all of a garment: what is sent to a friend. */
interface Bundle {
  readonly paperhinge: 'bundle';
  readonly pattern: { readonly name: string; readonly text: string };
  readonly sheet: string;
}
export const bundleOf = ({ patternName, pattern, sheet }: Laid): string =>
  JSON.stringify(
    { paperhinge: 'bundle', pattern: { name: patternName, text: pattern }, sheet } satisfies Bundle,
    null,
    2,
  );

/** A new sheet for a pattern that comes without one. */
export const emptySheet = (patternName: string): string =>
  `pattern: ${JSON.stringify(patternName)}\nunit: cm\nsteps: []\n`;
