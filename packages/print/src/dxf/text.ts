import type { Pattern } from '@paperhinge/geometry';
import { sizesBetween } from '@paperhinge/geometry/internal';
import { plainLine } from '../drawing/lettering.js';

/** Characters of a DXF text line; R12 readers hold 255 bytes. */
const longestText = 250;
/** Characters of a block's name in R12. */
const longestName = 31;

/**
 * A text as an R12 file holds it: one line of printable ASCII, everything else as `\U+XXXX` (UTF-16 units, so a
 * character beyond the first plane is two). What the format would read as a code of its own (backslash, caret, a pair
 * of per cent signs) is taken apart, so that a name shows as it is. A text too long for the format ends in "...".
 */
export function dxfText(text: string): string {
  const letters = [...plainLine(text).replace(/%(?=%)/g, '% ')].map(encoded);
  if (total(letters) <= longestText) return letters.join('');
  while (total(letters) > longestText - 3) letters.pop();
  return `${letters.join('').trimEnd()}...`;
}

/** The size of a pattern, with a hyphen where it lies between two; patterns without a name for it are made to measure. */
export const sizeText = ({ size }: Pattern): string =>
  (size && (sizesBetween(size)?.join('-') ?? size)) || 'ONE';

const total = (parts: readonly string[]): number => parts.reduce((sum, part) => sum + part.length, 0);

function encoded(letter: string): string {
  if (/^[ -~]$/.test(letter) && letter !== '\\' && letter !== '^') return letter;
  return [...Array(letter.length).keys()]
    .map(i => `\\U+${letter.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0')}`)
    .join('');
}

/**
 * Names for blocks: letters, figures, hyphen and underscore in capitals, 31 at most, no two alike ("Ärmel 2" is
 * ARMEL_2). The pieces' own names stand in the blocks as text.
 */
export function blockNames(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map(name => {
    const plain = capitals(name).slice(0, longestName) || 'PIECE';
    let found = plain;
    for (let i = 2; taken.has(found); i++) {
      const end = `_${i}`;
      found = plain.slice(0, longestName - end.length) + end;
    }
    taken.add(found);
    return found;
  });
}

const capitals = (name: string): string =>
  name
    .slice(0, 1000)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toUpperCase()
    .replace(/[^A-Z0-9-]+/g, '_')
    .replace(/^_+|_+$/g, '');
