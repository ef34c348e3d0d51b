import { type Finding, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import { edgeParts, withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration, Redrawn } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { andPartners } from '../matching/and-partners.js';
import { moveHem } from '../moved-edges/move-hem.js';
import { shortenAtLine } from '../moved-edges/shorten-at-line.js';

import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';
import { saying } from './tellings.js';

/** Shorten or lengthen pieces at the hem or at a drawn line. Amount in mm, 0 or more. */
export interface Shorten {
  readonly pieces: readonly string[];
  /** `hem`, or the name of a line of each piece. */
  readonly at: string;
  readonly by: number;
  /** The same to the pieces that the changed edges are sewn to. */
  readonly matching?: boolean;
}

/**
 * Shortens pieces by `by` mm along the grain.
 *
 * At the hem: it moves, and it and its neighbours run on straight or are cut at their crossing. At a line: the part
 * away from the neck (or cap) moves, and each edge the line crosses is sheared square to the grain so that its two
 * parts meet. With `matching` the same is done to every piece that an edge is sewn to which this changed, and so on
 * round the garment. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`; `no-hem`, `several-hems`; `unknown-line`; `shorten-beyond-piece`;
 *   `line-off-piece`, `line-through-corner`, `line-crosses-edge-twice`; `grain-across`; `dart-legs-differ`; those of
 *   `perform`
 */
export const shorten = (pattern: Pattern, parameters: Shorten): Alteration =>
  performSaid({ verb: 'shorten', fields, alter: shortened }, pattern, parameters);

/** Lengthens pieces, see {@link shorten}. */
export const lengthen = (pattern: Pattern, parameters: Shorten): Alteration =>
  performSaid({ verb: 'lengthen', fields, alter: lengthened }, pattern, parameters);

const fields = {
  pieces: field.pieces(),
  at: field.drawnLine('pieces', ['hem']),
  by: field.length(),
  matching: field.optional(field.yesOrNo()),
};
const startsAt = { piece: ['pieces'], edge: ['pieces', 'at'], line: ['pieces', 'at'], table: [] };

export const shortenForm = /* @__PURE__ */ formOf<Shorten>()({
  verb: 'shorten',
  does: 'Cuts length off at the hem, or folds it out at a line.',
  fields,
  sentence: 'Shorten the {pieces} at the {at} by {by}[, what is sewn to them too: {matching}]',
  startsAt,
  example: { pattern: 'woven-shift', step: { pieces: ['front', 'back'], at: 'hem', by: 210 } },
});
export const shortenVerb = /* @__PURE__ */ verbFrom(shortenForm, shortened);

export const lengthenForm = /* @__PURE__ */ formOf<Shorten>()({
  verb: 'lengthen',
  does: 'Adds length at the hem, or spreads the pattern at a line.',
  fields,
  sentence: 'Lengthen the {pieces} at the {at} by {by}[, what is sewn to them too: {matching}]',
  startsAt,
  example: { pattern: 'woven-shift', step: { pieces: ['sleeve'], at: 'hem', by: 40 } },
});
export const lengthenVerb = /* @__PURE__ */ verbFrom(lengthenForm, lengthened);

function shortened(pattern: Pattern, parameters: Shorten): Redrawn {
  return changeLength(pattern, parameters, parameters.by);
}

function lengthened(pattern: Pattern, parameters: Shorten): Redrawn {
  return changeLength(pattern, parameters, -parameters.by);
}

/** @param by mm taken off; negative: added */
function changeLength(pattern: Pattern, { pieces, at, matching }: Shorten, by: number): Redrawn {
  const { names, done } = andPartners(
    pattern,
    [...new Set(pieces)],
    piece => matching === true && canChange(piece, at),
    all => changedAll(pattern, all, at, by),
  );
  const did = saying('shortened', { pieces: names.map(piece => ({ piece })), at, byMm: by });
  return { ...done, did };
}

const canChange = (piece: Piece, at: string): boolean =>
  at === 'hem'
    ? edgeParts(piece).some(edge => edge.kind === 'hem')
    : piece.lines.some(line => line.name === at);

function changedAll(
  pattern: Pattern,
  names: readonly string[],
  at: string,
  by: number,
): Omit<Redrawn, 'did'> {
  const findings: Finding[] = [];
  let altered = pattern;
  let became = nothingBecame;
  for (const name of names) {
    const piece = pieceNamed(altered, name);
    const done = at === 'hem' ? moveHem(piece, by) : shortenAtLine(piece, at, by);
    findings.push(...done.findings);
    altered = withPiece(altered, done.piece);
    became = together(became, done.became);
  }
  return { pattern: altered, findings, became };
}
