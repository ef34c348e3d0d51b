import type { Laid } from './lessons.js';
import { valuesOf } from './written.js';

// What is dropped, pasted or picked: told by what is in it, never by its name alone. Nothing of it is put into the page
// as markup: drawings go through the library's own reader, texts are shown as text.

/** Why a file cannot be laid on the table; each has its words. */
export type NotLaid = 'too large' | 'picture' | 'pdf' | 'record' | 'not understood' | 'no pattern';

interface Found {
  readonly pattern?: { readonly name: string; readonly text: string };
  readonly sheet?: string;
}

/** Bytes: larger than any drawing of a garment. */
const largest = 30e6;

/** What several files are together: a pattern, a sheet, both, or a bundle of both. */
export async function found(files: readonly File[]): Promise<Found | { readonly not: NotLaid }> {
  let all: Found = {};
  for (const file of files) {
    if (file.size > largest) return { not: 'too large' };
    const one = foundIn(file.name, await file.text());
    if ('not' in one) return one;
    all = { ...all, ...one };
  }
  return all;
}

/** What one text is. */
export function foundIn(name: string, text: string): Found | { readonly not: NotLaid } {
  const head = text.slice(0, 16);
  if (head.startsWith('%PDF')) return { not: 'pdf' };
  if (/^(.PNG|GIF8|BM|RIFF|II\*|MM)|^\ufffd\ufffd\ufffd/.test(head)) return { not: 'picture' };
  const start = text.trimStart();
  if (start.startsWith('<')) return { pattern: { name: name || 'pattern.svg', text } };
  if (start.startsWith('{')) return inJson(start);
  const values = valuesOf(text) ?? {};
  return 'steps' in values || 'pattern' in values ? { sheet: text } : { not: 'not understood' };
}

function inJson(text: string): Found | { readonly not: NotLaid } {
  try {
    const value = JSON.parse(text) as Record<string, unknown>;
    const { paperhinge, pattern, sheet } = value as Partial<Bundle>;
    if (paperhinge === 'bundle' && typeof pattern?.text === 'string' && typeof sheet === 'string')
      return { pattern: { name: String(pattern.name), text: pattern.text }, sheet };
    if ('before' in value && 'after' in value) return { not: 'record' };
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
