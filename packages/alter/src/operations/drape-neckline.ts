import { line, type Pattern, type Piece, pathLength, pathOf, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { dot, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { offStraight } from '../hinge/off-straight.js';
import type { Reshaped } from '../moved-edges/chains.js';
import { type Run, recomposed } from '../moved-edges/composed.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { neckOf } from '../neckline/neck-edge.js';
import { armholeOf } from '../redrawn-edges/armhole.js';
import { centreFoot, sideOfCentre } from '../redrawn-edges/centre-side.js';
import { cornerMoved, edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { finding, refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { type SpreadEnd, spread } from './spread.js';

/** Spread a neck into a cowl. */
export interface DrapeNeckline {
  readonly piece: string;
  /** mm that the slashes open along the neck, together, on the piece as drawn; 0: only what the neck is long anyway. */
  readonly by: number;
  /** Default 2. */
  readonly slashes?: number;
  /** Where the slashes end and hinge; absent = all along the armhole. */
  readonly to?: SpreadEnd;
}

/**
 * Spreads a neck into a cowl: slashes from the neck to the armhole, or to another edge, are opened at the neck and
 * hinge at their far ends, every strip rigid; the centre stays and runs on straight, and the neck is drawn straight
 * from the shoulder's end square to it, so that what lies between falls in folds. Deeper folds come of slashes that
 * end lower: at the side, at the waist. The neck wants a facing cut in one with it and the piece lies on the bias.
 * Source: Armstrong, Patternmaking for Fashion Design (1987), cowls [memory].
 *
 * @throws PatternError `unknown-piece`, `no-neck`, `neck-interrupted`, `neck-not-between`, `no-armhole`,
 *   `stand-edge-bent` (the centre), `corner-beyond-edge`, `redrawn-crosses`; those of `spread` and `perform`
 */
export const drapeNeckline = (pattern: Pattern, parameters: DrapeNeckline): Alteration =>
  perform(drapeNecklineVerb, pattern, parameters);

/** Beyond that the strips are narrower than a slash is cut. */
const mostSlashes = 20;

export const drapeNecklineForm = formOf<DrapeNeckline>()({
  verb: 'drape neckline',
  does: 'Slashes a half piece from the neck and spreads it there, then draws the neck straight and square to the centre: a cowl.',
  fields: {
    piece: field.piece(),
    by: field.length(),
    slashes: field.usually(field.count(mostSlashes), 2),
    to: field.optional(
      field.group<SpreadEnd>({ edge: field.edge(), at: field.optional(field.places('edge')) }),
    ),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Drape the neckline of the {piece} into a cowl, spread by {by}[, in {slashes} slashes][ to the {to.edge}][ at {to.at}]',
  startsAt: { piece: ['piece'] },
  example: { pattern: 'woven-shift', step: { piece: 'front', by: '90 mm', slashes: 3 } },
});
export const drapeNecklineVerb = /* @__PURE__ */ verbFrom(drapeNecklineForm, (pattern, parameters) => {
  const { piece: name, by, slashes } = parameters;
  const neck = neckOf(pieceNamed(pattern, name)).name;
  const edge = { piece: name, edge: neck };
  return locating(edge, () => {
    const to = parameters.to ?? { edge: armholeOf(pieceNamed(pattern, name)) };
    const opened =
      by === 0
        ? { pattern, became: nothingBecame, findings: [] }
        : spread(pattern, { piece: name, from: { edge: neck }, to, by, slashes });
    const { reshaped, neckMm, upMm } = levelled(pieceNamed(opened.pattern, name), neck);
    // What the slashes left to be trued at the neck is drawn anew with it.
    const left = opened.findings.filter(({ where }) => where.edge !== neck);
    return {
      pattern: withPiece(opened.pattern, reshaped.piece),
      became: inTurn(opened.became ?? nothingBecame, reshaped.became),
      did: saying('draped-neckline', { piece: { piece: name }, byMm: by, neckMm, upMm }),
      findings: [...left, ...reshaped.findings, finding('note', 'cowl-on-bias', edge, { edge })],
    };
  });
});

/** The neck drawn straight and square to the centre, which is cut or runs on to it. */
function levelled(piece: Piece, neck: string) {
  const ring = edgeInRing(piece, neck);
  const { items, index, run } = ring;
  const step = sideOfCentre(ring);
  const centre = items[(index + step + items.length) % items.length] as Run;
  const where = { piece: piece.name, edge: centre.edge.name };
  const offMm = offStraight(centre.path);
  if (offMm > tolerances.foldTolerance) throw refusal('stand-edge-bent', { edge: where, offMm }, where);
  const [atCentre, atShoulder] =
    step === -1 ? [pathStart(run.path), pathEnd(run.path)] : [pathEnd(run.path), pathStart(run.path)];
  const down = unit(subtract(centreFoot(centre, step), atCentre));
  const downMm = dot(subtract(atShoulder, atCentre), down);
  const corner = cornerMoved(ring, step === -1 ? 'start' : 'end', downMm);
  const path = pathOf(step === -1 ? line(corner.point, atShoulder) : line(atShoulder, corner.point));
  const drawn = withEdgeRedrawn(ring, [{ ...run, path, redrawn: true }], [corner]);
  const reshaped: Reshaped = tidied(piece, recomposed(piece, drawn));
  const edge = { piece: piece.name, edge: neck };
  requireSimple(reshaped.piece, () => refusal('redrawn-crosses', { edge }, edge));
  return { reshaped, neckMm: pathLength(path), upMm: -downMm };
}
