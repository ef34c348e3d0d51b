import { edgeNames, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import { boundsOfPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import type { Became } from '../became/became.js';
import { laidAside } from '../derive/free-place.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { centreLineOf, openedEdges, openedLines, openedMarks, openedNotches } from '../unfold/lying-on.js';
import { type OpenedOutline, openedOutline } from '../unfold/mirrored-outline.js';
import { openedSeams } from '../unfold/opened-seams.js';
import { refusal } from '../unfold/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { saying } from './tellings.js';

/** Open a piece about its fold into a whole one. */
export interface Unfold {
  readonly piece: string;
}

/**
 * Opens a half piece about its straight fold into a whole one of exactly twice the area, cut singly. Edges that met
 * the fold run on across it under their own names; the others get a mirrored copy named `other NAME`, as do darts,
 * notches, lines and marks. Seams follow. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `no-fold`, `several-folds`, `unfold-not-straight`, `unfolded-overlaps`; those of `perform`
 */
export const unfold = (pattern: Pattern, parameters: Unfold): Alteration =>
  perform(unfoldVerb, pattern, parameters);

export const unfoldForm = formOf<Unfold>()({
  verb: 'unfold',
  does: 'Opens a half piece out about its fold into a whole one, cut singly; each mirrored edge gets a name of its own.',
  fields: { piece: field.piece() },
  leaves: ({ piece }) => ({ changed: [piece], seams: 'unknown' }),
  sentence: 'Open out the {piece} about its fold',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'front' } },
});
export const unfoldVerb = /* @__PURE__ */ verbFrom(unfoldForm, openedOut);

function openedOut(pattern: Pattern, { piece: name }: Unfold): Alteration {
  const piece = pieceNamed(pattern, name);
  return locating({ piece: name }, () => {
    const opened = openedOutline(piece);
    const became = openedBecame(piece, opened);
    const whole = {
      ...piece,
      outline: opened.outline,
      notches: openedNotches(piece, became),
      lines: openedLines(piece, opened),
      marks: openedMarks(piece, opened),
      cutting: { ...piece.cutting, mirrored: false },
    };
    requireSimple(whole, () => refusal('unfolded-overlaps', { piece: { piece: name } }, { piece: name }));
    const followed = openedSeams(name, pattern.seams, opened.fates);
    const laid = withRoom(pattern, piece, whole);
    const pieces = pattern.pieces.map(p => (p === piece ? laid : p));
    return {
      pattern: { ...pattern, pieces, seams: followed.seams },
      became,
      did: saying('unfolded', {
        piece: { piece: name },
        fold: { edge: opened.fold.name },
        copies: edgeNames(whole).length - edgeNames(piece).length + 1,
      }),
      findings: followed.findings,
    };
  });
}

/** Moved to a free place where its new half would lie on other pieces in the drawing. */
function withRoom(pattern: Pattern, half: Piece, whole: Piece): Piece {
  const others = pattern.pieces.filter(p => p !== half);
  const over = (piece: Piece): readonly Piece[] => others.filter(other => liesOn(piece, other));
  // What lay on one another before was drawn so.
  if (over(whole).length <= over(half).length) return whole;
  return laidAside({ ...pattern, pieces: others }, whole);
}

function liesOn(one: Piece, other: Piece): boolean {
  const a = boundsOfPath(outlinePath(one.outline)),
    b = boundsOfPath(outlinePath(other.outline));
  const apart = a.max.x <= b.min.x || b.max.x <= a.min.x || a.max.y <= b.min.y || b.max.y <= a.min.y;
  return !apart;
}

/** The fold is a line now. */
function openedBecame(piece: Piece, opened: OpenedOutline): Became {
  const fold = { piece: piece.name, edge: opened.fold.name };
  return {
    edges: openedEdges(piece, opened),
    things: [{ was: fold, now: { piece: piece.name, line: centreLineOf(opened.fold) } }],
  };
}
