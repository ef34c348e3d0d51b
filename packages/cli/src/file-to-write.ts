import { basename, extname } from 'node:path';
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
 * @throws PatternError `output-unnamed`: empty, or a folder's; `output-of-another-kind`: it ends as other files do
 */
export function fileToWrite(path: string, holds: Held): string {
  const own: readonly string[] = endings[holds];
  const name = /[\\/]$/.test(path) ? '' : basename(path).trim();
  if (name === '' || name === '.' || name === '..')
    throw commandRefusal('output-unnamed', { such: `${examples[holds]}${own[0]}` });
  const ending = extname(name);
  if (own.includes(ending.toLowerCase())) return path;
  if (!known.has(ending.toLowerCase())) return `${path}${own[0]}`;
  const write = `${basename(name, ending)}${own[0]}`;
  throw commandRefusal('output-of-another-kind', { holds, ending, write });
}

const examples: Readonly<Record<Held, string>> = {
  pages: 'pages',
  frame: 'frame',
  drawing: 'pattern',
  picture: 'seen',
  sheet: 'sheet',
};
