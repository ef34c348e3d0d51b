import {
  type EdgeRef,
  edgeNames,
  locating,
  type Pattern,
  type Piece,
  pieceNamed,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { withoutLostRuns } from '../edit/seam-runs.js';
import { openedLines, openedMarks, openedNotches } from '../unfold/lying-on.js';
import { type Fate, openedOutline } from '../unfold/mirrored-outline.js';
import { openedSeams } from '../unfold/opened-seams.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { saying } from './tellings.js';

/** Open a piece about its fold into a whole one. */
export interface Unfold {
  readonly piece: string;
}

/**
 * Opens a half piece about its straight fold into a whole one of exactly twice the area, cut singly. Edges that met
 * the fold run on across it under their own names; the others get a mirrored copy named `NAME-other`, as do darts,
 * notches, lines and marks. Seams follow.
 *
 * @throws PatternError `unknown-piece`, `no-fold`, `several-folds`, `fold-not-straight`; those of `perform`
 */
export const unfold = (pattern: Pattern, parameters: Unfold): Alteration =>
  perform(unfoldVerb, pattern, parameters);

export const unfoldVerb = verbOf<Unfold>()({
  verb: 'unfold',
  does: 'Opens a half piece out about its fold into a whole one, cut singly; each mirrored edge gets a name of its own.',
  fields: { piece: field.piece() },
  leaves: ({ piece }) => ({ changed: [piece], seams: 'unknown' }),
  sentence: 'Open out the {piece} about its fold',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'front' } },
  alter: openedOut,
});

function openedOut(pattern: Pattern, { piece: name }: Unfold): Alteration {
  const piece = pieceNamed(pattern, name);
  return locating({ piece: name }, () => {
    const opened = openedOutline(piece);
    const { notches, findings } = openedNotches(piece, opened);
    const whole = {
      ...piece,
      outline: opened.outline,
      notches,
      lines: openedLines(piece, opened),
      marks: openedMarks(piece, opened),
      cutting: { ...piece.cutting, mirrored: false },
    };
    const followed = openedSeams(name, pattern.seams, opened.fates);
    const pieces = pattern.pieces.map(p => (p === piece ? whole : madeForBothHalves(p, name, opened.fates)));
    const kept = withoutLostRuns({ ...pattern, pieces, seams: followed.seams });
    return {
      pattern: kept.pattern,
      did: saying('unfolded', {
        piece: { piece: name },
        fold: { edge: opened.fold.name },
        copies: edgeNames(whole).length - edgeNames(piece).length + 1,
      }),
      findings: [...findings, ...followed.findings, ...kept.findings],
    };
  });
}

/** What was made for an edge that stood on both halves is made for its mirrored copy as well. */
function madeForBothHalves(piece: Piece, opened: string, fates: ReadonlyMap<string, Fate>): Piece {
  const others = (piece.madeFor ?? []).flatMap((ref): readonly EdgeRef[] => {
    const fate = ref.piece === opened ? fates.get(ref.edge) : undefined;
    return fate && 'other' in fate ? [{ piece: opened, edge: fate.other }] : [];
  });
  return others.length === 0 ? piece : { ...piece, madeFor: [...piece.madeFor!, ...others] };
}
