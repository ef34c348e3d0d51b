import { statSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { commandRefusal } from '@paperhinge/sheet/words';

/** The endings of what a file holds; one without takes the first. */
const endings = {
  pages: ['.pdf', '.dxf'],
  frame: ['.pdf'],
  drawing: ['.svg'],
  picture: ['.png'],
  sheet: ['.yaml', '.yml'],
} as const;
/** What a file to be written holds. */
export type Held = keyof typeof endings;

/** Endings by which other programs know what a file holds. */
const known: ReadonlySet<string> = new Set(
  [
    ...Object.values(endings).flat(),
    ...'.jpg .jpeg .gif .webp .tif .tiff .ps .eps .ai .html .json .plt .hpgl .txt'.split(' '),
  ].map(String),
);

/**
 * The path of a file that is to be written, with an ending that says what it holds.
 * @throws PatternError `output-unnamed`: empty, or a folder that is there; `output-of-another-kind`: it ends as other files do
 */
export function fileToWrite(path: string, holds: Held): string {
  const own: readonly string[] = endings[holds];
  const such = `${examples[holds]}${own[0]}`;
  if (path.trim() === '') throw commandRefusal('output-unnamed', { such });
  const name = basename(path).trim();
  if (/[\\/]\s*$/.test(path) || ['', '.', '..'].includes(name) || isFolder(path))
    throw commandRefusal('output-unnamed', { such: join(path.trim(), such) });
  const ending = extname(name);
  if (own.includes(ending.toLowerCase())) return path;
  if (!known.has(ending.toLowerCase())) return `${path}${own[0]}`;
  const write = `${basename(name, ending)}${own[0]}`;
  throw commandRefusal('output-of-another-kind', { holds, ending, write });
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    // Not there, or not to be reached: whoever writes it says so.
    return false;
  }
}

const examples: Readonly<Record<Held, string>> = {
  pages: 'pages',
  frame: 'frame',
  drawing: 'pattern',
  picture: 'seen',
  sheet: 'sheet',
};
