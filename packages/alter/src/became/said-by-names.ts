import type { EdgeRef, Notch, Pattern, Piece } from '@paperhinge/geometry';
import type { Alteration, Said } from '../alteration.js';
import { hasEdge } from '../edge-refs.js';
import { becameByNames } from './by-names.js';
import type { Step } from './run.js';
import { followPlace } from './things.js';

/**
 * An alteration that says what became of what: by names and lengths where it did not, and with its notches carried.
 * So operations written outside the project come out the same as ours.
 */
export function saidByNames(before: Pattern, alteration: Alteration): Said {
  const { pattern: after, became } = alteration;
  if (became) return { ...alteration, became };
  const known = becameByNames(before, after);
  return { ...alteration, became: known, pattern: withNotchesCarried({ before, after, became: known }) };
}

/** Notches that a step left where they were although their edge changed, carried with it. */
function withNotchesCarried({ before, after, became }: Step): Pattern {
  const pieces = after.pieces.map(piece => {
    const untouched = before.pieces.find(p => p.name === piece.name)?.notches ?? [];
    const notches = piece.notches.flatMap((notch): readonly Notch[] => {
      if (!untouched.includes(notch)) return hasEdge(after, onPiece(piece, notch)) ? [notch] : [];
      return followPlace(became, { piece: piece.name, edge: notch.edge, at: notch.at }).map(({ edge, at }) =>
        at === notch.at ? notch : { ...notch, edge, at },
      );
    });
    return notches.every((notch, i) => notch === piece.notches[i]) && notches.length === piece.notches.length
      ? piece
      : { ...piece, notches };
  });
  return { ...after, pieces };
}

const onPiece = ({ name }: Piece, { edge }: Notch): EdgeRef => ({ piece: name, edge });
