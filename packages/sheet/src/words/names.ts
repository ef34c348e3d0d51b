/** How much of a name stands in a sentence: enough to find it by, too little to leak a file. */
const shownCharacters = 40;

/** Printable characters only, cut at 40. */
export function shownName(name: string): string {
  const printable = [...name.slice(0, 2 * shownCharacters + 2)].map(c =>
    /[\p{C}\p{Zl}\p{Zp}]/u.test(c) ? '�' : c,
  );
  const shown = printable.slice(0, shownCharacters).join('');
  return `${shown}${printable.length > shownCharacters ? '…' : ''}`;
}

/** A name of a file as a word of a sentence: `side-upper` is "side upper". */
export const plainName = (name: string): string =>
  shownName(name)
    .replace(/(?<=[\p{L}\p{N}])[-_]+(?=[\p{L}\p{N}])/gu, ' ')
    .trim();
