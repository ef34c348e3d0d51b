import type { Thing } from '@paperhinge/geometry';
import { plainName, shownName } from '../names.js';
import type { Grammar } from '../say.js';

/** `other NAME` is what the mirrored half of an opened piece is called by. */
const quoted = (name: string): string => {
  const [, own] = /^other (.+)$/.exec(name) ?? [];
  return own === undefined ? `„${plainName(name)}“` : `„${plainName(own)}“ (andere Hälfte)`;
};

/** Without an article, so that it stands in any case: `Kante „side“`. */
function part({ edge, dart, pleat, line, mark, notch }: Thing): string | undefined {
  if (edge !== undefined) return `Kante ${quoted(edge)}`;
  if (dart !== undefined) return `Abnäher ${quoted(dart)}`;
  if (pleat !== undefined) return `Falte ${quoted(pleat)}`;
  if (line !== undefined) return `Linie ${quoted(line)}`;
  if (mark !== undefined) return `Punkt ${quoted(mark)}`;
  if (notch !== undefined) return `Passzeichen ${quoted(notch)}`;
  return undefined;
}

function apart({ seam, fabric, fastening }: Thing): string {
  if (seam !== undefined) return `Naht ${quoted(seam)}`;
  if (fabric !== undefined) return `Stoff ${quoted(fabric)}`;
  return `Verschluss ${quoted(fastening ?? '')}`;
}

export const grammar: Grammar = {
  language: 'de',
  decimalSign: ',',
  thing: thing => {
    const named = part(thing);
    if (thing.piece === undefined) return named ?? apart(thing);
    return named === undefined ? `Teil ${quoted(thing.piece)}` : `${named} von ${quoted(thing.piece)}`;
  },
  shortly: ({ piece, ...rest }) => {
    const own = Object.values(rest).find(name => name !== undefined);
    return [piece, own]
      .filter(name => name !== undefined)
      .map(plainName)
      .join(' ');
  },
  list: items => (items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} und ${items.at(-1)}`),
  under: length => `unter ${length}`,
  quoted: name => `„${shownName(name)}“`,
};
