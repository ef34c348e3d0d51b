import { type Finding, type Pattern, pieceNamed } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { together } from '../became/became.js';
import { pieceGone } from '../became/by-names.js';
import { withoutLost } from '../settled.js';
import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';
import { finding, refusal, saying } from './tellings.js';

/** Take a piece out of the pattern. */
export interface RemovePiece {
  readonly piece: string;
}

/**
 * Takes a piece out of the pattern. A seam that it made one side of is gone; one that it shared with other pieces
 * keeps their runs. Findings say which, and which pieces were drafted for its edges. Source: common practice, no
 * source.
 *
 * @throws PatternError `unknown-piece`; `last-piece` where no other would be left; those of `perform`
 */
export const removePiece = (pattern: Pattern, parameters: RemovePiece): Alteration =>
  performSaid(removePieceVerb, pattern, parameters);

export const removePieceForm = formOf<RemovePiece>()({
  verb: 'remove piece',
  does: 'Takes a piece out of the pattern, with the seams it was one side of.',
  fields: { piece: field.piece() },
  leaves: ({ piece }) => ({ removed: [piece] }),
  sentence: 'Remove the {piece}',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'neckband' } },
});
export const removePieceVerb = /* @__PURE__ */ verbFrom(removePieceForm, (pattern, { piece: name }) => {
  const piece = pieceNamed(pattern, name);
  const pieces = pattern.pieces.filter(p => p !== piece);
  if (pieces.length === 0) throw refusal('last-piece', { piece: { piece: name } }, { piece: name });
  const kept = withoutLost({ ...pattern, pieces });
  const orphans = pieces
    .filter(p => p.madeFor?.some(e => e.piece === name))
    .map(
      (p): Finding =>
        finding('warning', 'made-for-removed-piece', { piece: p.name }, { piece: p.name, removed: name }),
    );
  const gone = pattern.seams.filter(seam => !kept.pattern.seams.some(s => s.name === seam.name));
  return {
    pattern: kept.pattern,
    became: together(pieceGone(piece), {
      edges: [],
      things: gone.map(seam => ({ was: { seam: seam.name } })),
    }),
    did: saying('removed-piece', {
      piece: { piece: name },
      seams: gone.length,
    }),
    findings: [...kept.findings, ...orphans],
  };
});
