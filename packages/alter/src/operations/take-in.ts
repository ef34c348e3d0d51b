import { type Finding, type Pattern, pieceNamed, walkSeam } from '@paperhinge/geometry';
import { type EdgePosition, withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration } from '../alteration.js';
import { nothingBecame, together } from '../became/became.js';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import { closesLimb, sidesOf } from '../moved-edges/seam-sides.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { edgesSharing, withSeamsGoingOn } from './take-in-matching.js';
import { mostTaken, taperOf } from './take-in-taper.js';
import type { TakeIn } from './take-in-wish.js';
import { saying } from './tellings.js';

/**
 * Takes a seam in by `by` mm over the whole garment. Each edge that is sewn in it moves inwards, square to itself,
 * by its equal share: an edge that stands twice in the garment counts twice, and the edges that follow one another
 * on one side of the seam count as one.
 *
 * With `from` or `to` (the seam's beginning and end where one is left out) the full amount holds up to `from` and
 * grows evenly less to nothing at `to`; `by: [a, b]` is a at `from` and b at `to`; `from` may lie on either side of
 * `to`. With `between` it is nothing at both places, full half way, and runs smoothly to nothing at either. Places
 * are measured on side a and apply at the same share of side b. Neighbouring edges and dart legs run on straight or
 * are cut where the moved edge crosses them. With `matching` the seams that go on from its ends across what crosses it
 * there (a sleeve's underarm seam from a side seam, a skirt's side from a bodice's) are taken in by as much an edge:
 * all along, or to nothing at their far end where this one comes to nothing at its own. Source: common practice, no
 * source.
 *
 * @throws PatternError `unknown-seam`; `position-off-seam`, `seam-end-ambiguous`, `seam-end-unknown`,
 *   `taper-without-length`, `taper-with-between`; `take-in-too-much`; those of `perform`
 */
export const takeIn = (pattern: Pattern, parameters: TakeIn): Alteration =>
  perform(takeInVerb, pattern, parameters);

/** Lets a seam out, see {@link takeIn}. */
export const letOut = (pattern: Pattern, parameters: TakeIn): Alteration =>
  perform(letOutVerb, pattern, parameters);

const fields = {
  seam: field.seam(),
  by: field.lengths(),
  from: field.optional(field.place('seam')),
  to: field.optional(field.place('seam')),
  between: field.optional(field.range('seam')),
  matching: field.optional(field.yesOrNo()),
};
const startsAt = { seam: ['seam'], edge: ['seam'] };

export const takeInForm = formOf<TakeIn>()({
  verb: 'take in',
  does: 'Takes a seam in by an amount in the whole garment, shared by all the edges that are sewn in it; from one place to another it tapers to nothing.',
  fields,
  sentence:
    'Take the {seam} seam in by {by}[, full up to {from}][, to nothing at {to}][, between {between}][, the seams that go on from it too: {matching}]',
  startsAt,
  example: { pattern: 'woven-shift', step: { seam: 'side', by: 40 } },
});
export const takeInVerb = /* @__PURE__ */ verbFrom(takeInForm, (pattern, { matching, ...wish }) =>
  matching ? withSeamsGoingOn(pattern, wish, takeIn) : moveSeam(pattern, wish, 1),
);

export const letOutForm = formOf<TakeIn>()({
  verb: 'let out',
  does: 'Lets a seam out by an amount in the whole garment, shared by all the edges that are sewn in it; from one place to another it tapers to nothing.',
  fields,
  sentence:
    'Let the {seam} seam out by {by}[, full up to {from}][, to nothing at {to}][, between {between}][, the seams that go on from it too: {matching}]',
  startsAt,
  example: { pattern: 'woven-shift', step: { seam: 'side', by: 20, from: 'end', to: '1/2' } },
});
export const letOutVerb = /* @__PURE__ */ verbFrom(letOutForm, (pattern, { matching, ...wish }) =>
  matching ? withSeamsGoingOn(pattern, wish, letOut) : moveSeam(pattern, wish, -1),
);

/** @param inwards 1 to take in, −1 to let out */
function moveSeam(pattern: Pattern, parameters: TakeIn, inwards: 1 | -1): Alteration {
  const seam = seamNamed(pattern, parameters.seam);
  const amounts = typeof parameters.by === 'number' ? [parameters.by] : parameters.by;
  const byMm = mostTaken(parameters);
  const sides = sidesOf(pattern, seam);
  const edges = edgesSharing(pattern, seam);
  const taper = taperOf(pattern, seam, parameters);
  const findings: Finding[] = [];
  let altered = pattern;
  let became = nothingBecame;
  for (const pieceName of new Set(sides.flatMap(side => side.runs.map(r => r.piece)))) {
    const piece = pieceNamed(altered, pieceName);
    const runs = sides.flatMap(side => side.runs.filter(r => r.piece === pieceName));
    const done = moveEdgesInwards(piece, runs, (inwards * byMm) / edges, taper);
    findings.push(...done.findings);
    altered = withPiece(altered, done.piece);
    became = together(became, done.became);
  }
  // Both sides were equal before: if they no longer are, the maker must know from this step.
  const walked = walkSeam(altered, seam);
  if (walkSeam(pattern, seam).matches && !walked.matches)
    findings.push(...walked.findings.filter(f => f.severity === 'fault'));
  return {
    pattern: altered,
    did: whatItDid(parameters, amounts, edges, inwards, closesLimb(pattern, seam)),
    findings,
    became,
  };
}

function whatItDid(
  { seam, from, to, between }: TakeIn,
  amounts: readonly number[],
  edges: number,
  inwards: 1 | -1,
  inLimb: boolean,
) {
  const place = (position: EdgePosition) =>
    'share' in position
      ? saying('share-of-seam', {
          sharePercent: position.share * 100,
          ...(position.from === undefined ? {} : { from: position.from }),
        })
      : saying('distance-on-seam', {
          alongMm: position.mm,
          ...(position.from === undefined ? {} : { from: position.from }),
        });
  return saying(inwards === 1 ? 'took-in' : 'let-out', {
    seam: { seam },
    byMm: amounts,
    eachMm: amounts.map(mm => mm / edges),
    edges,
    inLimb,
    ...(from ? { from: place(from) } : {}),
    ...(to ? { to: place(to) } : {}),
    ...(between ? { between: between.map(place) } : {}),
  });
}
