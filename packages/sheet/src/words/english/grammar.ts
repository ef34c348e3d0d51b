import type { Thing } from '@paperhinge/geometry';
import { plainName, shownName } from '../names.js';
import type { Grammar } from '../say.js';

/** "a", "a and b", "a, b and c". */
export const list = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

/** What is named on a piece: "side", "bust dart", "waist line". */
function part({ edge, dart, pleat, line, mark, notch }: Thing): string | undefined {
  if (edge !== undefined) return plainName(edge);
  if (dart !== undefined) return noun(dart, 'dart');
  if (pleat !== undefined) return noun(pleat, 'pleat');
  if (line !== undefined) return noun(line, 'line');
  if (mark !== undefined) return noun(mark, 'mark');
  if (notch !== undefined) return noun(notch, 'notch');
  return undefined;
}

/** The word is left out where the name already ends in it: "centre line", not "centre line line". */
function noun(name: string, word: string): string {
  const plain = plainName(name);
  return plain.toLowerCase().endsWith(word) ? plain : `${plain} ${word}`;
}

/** What stands by itself: a seam, a cloth, a fastening. */
function apart({ seam, fabric, fastening }: Thing): string {
  if (seam !== undefined) return noun(seam, 'seam');
  return plainName(fabric ?? fastening ?? '');
}

export const grammar: Grammar = {
  language: 'en',
  decimalSign: '.',
  thing: thing => {
    const named = part(thing);
    if (thing.piece === undefined) return `the ${named ?? apart(thing)}`;
    return named === undefined
      ? `the ${plainName(thing.piece)}`
      : `the ${named} of the ${plainName(thing.piece)}`;
  },
  shortly: thing => {
    const piece = thing.piece === undefined ? '' : plainName(thing.piece),
      own = part(thing) ?? apart(thing);
    // "front edge" of the front is "the front edge", not "the front front edge".
    return own.toLowerCase().startsWith(`${piece.toLowerCase()} `)
      ? own
      : [piece, own].filter(word => word !== '').join(' ');
  },
  list,
  under: length => `less than ${length}`,
  quoted: name => `"${shownName(name)}"`,
};
