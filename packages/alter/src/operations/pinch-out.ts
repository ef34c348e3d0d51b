import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import { dartsOf, type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { distance, identity, rotation } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { inTurn } from '../became/in-turn.js';
import { intakeOf } from '../darts/mouth.js';
import { pivotOf } from '../darts/pivot.js';
import { withRestSetBack } from '../darts/rest-set-back.js';
import { refusal, saying } from '../darts/tellings.js';
import { alterSoThat } from '../goal/alter-so-that.js';
import { dartAngle } from '../hinge/assemble.js';
import { pointOfEnd } from '../hinge/cut.js';
import { cutToDart } from '../hinge/cut-to-dart.js';
import { dartNamed } from '../hinge/dart-named.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import { swing } from '../hinge/swing.js';
import { type Across, acrossSeams, placeGiven } from '../matching/across-seam.js';
import { nothingToMatch } from '../matching/done-to-each.js';
import { stepsInTurn } from '../matching/in-turn.js';
import { capEased, capSeams, differenceIn } from '../sleeves/cap-eased.js';
import * as field from '../verb/fields.js';
import type { AnyVerb } from '../verb/form.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Take what gapes at an edge into a dart. */
export interface PinchOut {
  readonly piece: string;
  /** The neck, the armhole, or whichever edge stands away. */
  readonly edge: string;
  /** Absent = the middle. */
  readonly at?: EdgePosition;
  /** mm pinched out of the edge there, as drawn: of a piece on the fold half of what gapes across the body. */
  readonly by: number;
  /** The dart that takes it. */
  readonly into: string;
  /** Name of a point mark that all turns about; absent = the dart's point. */
  readonly pivot?: string;
  /** As much out of what the edge is sewn to there. */
  readonly matching?: boolean;
}

/**
 * Takes out what gapes at a neck or an armhole: a wedge, `by` mm wide at the edge and nothing at the dart's point, is
 * folded away there, and the dart opens by the wedge's angle 2 asin(by / 2R), R being the distance from the edge to
 * the point. Both sides of the fold stay rigid, so the legs keep their lengths and the sum of angles about the point
 * is kept. Cut across the fold, the edge loses up to `by`; it bends there until it is trued. Turning about a mark, the
 * legs are drawn to it first, and the point is set back afterwards as far as it was. With `matching` the edge that it
 * is sewn to there loses as much, into that piece's dart of the same name or its only one; a sleeve's cap is lowered
 * until its seam has the ease it had. Source: Armstrong, Patternmaking for Fashion Design (1987), contouring [memory].
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `unknown-dart`, `unknown-mark`, `pinch-too-wide`,
 *   `pivot-out-of-reach`, `slash-leaves-piece`, `slash-crosses-dart`, `slash-too-short`, `overlap-too-wide`,
 *   `outline-tangled`; those of `perform` and `resolvePosition`
 */
export const pinchOut = (pattern: Pattern, parameters: PinchOut): Alteration =>
  perform(pinchOutVerb, pattern, parameters);

export const pinchOutForm = formOf<PinchOut>()({
  verb: 'pinch out',
  does: 'Folds out what gapes at a neck or an armhole, to nothing at the point of a dart, which opens by as much.',
  fields: {
    piece: field.piece(),
    edge: field.edge(),
    at: field.optional(field.place('edge')),
    by: field.size(),
    into: field.dart(),
    pivot: field.optional(field.mark()),
    matching: field.optional(field.yesOrNo()),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Pinch {by} out of the {edge} of the {piece}[ at {at}] into its {into} dart[, turning about the {pivot}][, out of what it is sewn to as well: {matching}]',
  startsAt: { edge: ['piece', 'edge'], dart: ['piece', 'into'] },
  example: {
    pattern: 'darted-dress',
    step: { piece: 'front', edge: 'neck', at: '1/2', by: '12 mm', into: 'bust', pivot: 'bust point' },
  },
});
export const pinchOutVerb = /* @__PURE__ */ verbFrom(pinchOutForm, (pattern, { matching, ...wish }) =>
  matching ? withPartners(pattern, wish) : pinched(pattern, wish),
);

function pinched(pattern: Pattern, parameters: PinchOut): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const { edge, at = { share: 0.5 }, by, into } = parameters;
  const where = { piece: piece.name, edge };
  return locating(where, () => {
    const before = dartNamed(piece, into);
    const pivot = pivotOf(piece, parameters) ?? before.apex;
    const drawn = pivot === before.apex ? piece : withLegsTo(piece, before, pivot);
    const end = { edge, along: resolvePosition(drawn, edge, at) };
    const cutPiece = cutToDart(drawn, end, into);
    const slashMm = distance(pointOfEnd(drawn, end), pivot);
    if (by > slashMm) throw refusal('pinch-too-wide', { edge: where, byMm: by, slashMm }, where);
    const holding = holdingSection(cutPiece);
    // The dart opens where closing it would turn the other way.
    const closing = Math.sign(dartAngle(dartNamed(drawn, into)));
    const turn = -closing * 2 * Math.asin(by / (2 * slashMm));
    const turned = rotation(cutPiece.beside[0]!.left === holding ? -turn : turn, pivot);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : turned));
    const swung = swing(cutPiece, motions, holding);
    const done = withRestSetBack(swung.piece, before, pivot);
    return {
      pattern: withPiece(pattern, done.piece),
      became: inTurn(swung.became, done.became),
      did: saying('pinched-out', {
        edge: where,
        alongMm: end.along,
        byMm: by,
        angleDeg: inDegrees(Math.abs(turn)),
        dart: { dart: into },
        formerMm: intakeOf(before),
        intakeMm: intakeOf(dartNamed(done.piece, into)),
      }),
      findings: [...openingFindings(piece.name, swung), ...done.findings],
    };
  });
}

function withPartners(pattern: Pattern, wish: PinchOut): Alteration {
  const place = placeGiven(pattern, wish, wish.at);
  const partners = acrossSeams(pattern, place).flatMap(there => partnerStep(pattern, wish, there) ?? []);
  const done = stepsInTurn(pattern, [now => pinchOut(now, wish), ...partners]);
  return partners.length > 0 ? done : { ...done, findings: [...done.findings, nothingToMatch(wish.piece)] };
}

/** What is done to the other side of a seam; nothing where it was made for the edge, or has no dart to take it. */
function partnerStep(
  pattern: Pattern,
  { into, pivot }: PinchOut,
  { piece: name, edge, at, seam }: Across,
): ((now: Pattern) => Alteration) | undefined {
  const piece = pieceNamed(pattern, name);
  const cap = capSeams(pattern).find(one => one.seam === seam && one.sleeve === name);
  if (cap) return now => capEased(now, seam.name, name, differenceIn(pattern, seam));
  const darts = dartsOf(piece);
  const dart = darts.find(one => one.name === into) ?? (darts.length === 1 ? darts[0] : undefined);
  if (!dart || (piece.madeFor ?? []).length > 0) return undefined;
  const hasPivot = piece.marks.some(mark => mark.name === pivot);
  // Cut at other angles, the two edges would not lose the same by the same fold: it is as wide as brings them together.
  const by = { soThat: { of: 'seam-ease', seam: seam.name }, is: differenceIn(pattern, seam) };
  const likewise = { piece: name, edge, at: { mm: at }, by, into: dart.name };
  return now => alterSoThat(pinchOutVerb as AnyVerb, now, { ...likewise, ...(hasPivot ? { pivot } : {}) });
}
