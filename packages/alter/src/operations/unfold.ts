import {
  type EdgeRef,
  edgeNames,
  locating,
  outlinePath,
  type Pattern,
  type Piece,
  pieceNamed,
  signedArea,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { withoutLostRuns } from '../edit/seam-runs.js';
import { openedLines, openedMarks, openedNotches } from '../unfold/lying-on.js';
import { type Fate, openedOutline } from '../unfold/mirrored-outline.js';
import { openedSeams } from '../unfold/opened-seams.js';

/** Open a piece about its fold into a whole one. */
export interface Unfold {
  readonly piece: string;
}

/**
 * Opens a half piece about its straight fold into a whole one of exactly twice the area, cut singly. Edges that met
 * the fold run on across it under their own names; the others get a mirrored copy named `NAME-other`, as do darts,
 * notches, lines and marks. Seams follow.
 *
 * @throws PatternError `unknown-piece`, `no-fold`, `several-folds`, `fold-not-straight`
 */
export function unfold(pattern: Pattern, { piece: name }: Unfold): Alteration {
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
    const area = signedArea(outlinePath(whole.outline));
    const copies = edgeNames(whole).length - edgeNames(piece).length + 1;
    return {
      pattern: kept.pattern,
      did: `unfolded ${name} about ${opened.fold.name}: ${(area / 100).toFixed(1)} cm² in one piece, ${copies} mirrored edges named "-other"`,
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
