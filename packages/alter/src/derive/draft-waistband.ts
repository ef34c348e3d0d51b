import { type EdgeRef, type Pattern, type Piece, pieceNamed, type TakenUp } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { bandMarks, withEdgeMarks } from './band-marks.js';
import { drafted } from './drafted.js';
import { freePlace } from './free-place.js';
import { hemsAsSeams } from './hems-as-seams.js';
import { type LaidAlong, laidAlong, requireOneStretch } from './laid-along.js';
import { lappedBand } from './lapped-band.js';
import { ringSeam, seamAlong } from './sewn-on.js';
import { takePlace } from './take-place.js';
import { allowanceFindings, takenAllowance } from './taken-allowance.js';
import { refusal, saying } from './tellings.js';

/** A waistband or cuff that closes over itself, folded or of two layers, straight or shaped. Lengths in mm. */
export interface DraftWaistband {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  /** Finished. */
  readonly width: number;
  /** Finished length between its laps; absent: that of its edges. What they are longer is taken up. */
  readonly length?: number;
  readonly takenUp?: TakenUp;
  /** Beyond its first end and its last; default 0. */
  readonly overlap?: number;
  readonly underlap?: number;
  /** Finished length of its far edge between its laps, where it follows the body; absent: straight. */
  readonly farEdge?: number;
  /** Default: folded where it is straight. */
  readonly cut?: 'folded' | 'in two';
  /** Default yes. */
  readonly interfaced?: boolean;
  readonly fabric?: string;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts a waistband. On paper: a strip as long as the waist with its darts closed, an overlap and an underlap drawn on
 * at its two ends, and twice as wide as it is when finished, to be folded lengthwise; where it is shaped, a part of a
 * ring with the waist as its sewn edge and the body's girth where it ends as its far edge, cut in two layers. Marked
 * where seams and folds meet it, and where its edge is taken up, both in quarters. Where it neither over- nor underlaps and goes all round, its ends are sewn together.
 * Nothing of the garment moves; a hem that it is sewn to becomes a seam. Common practice, no source.
 *
 * @throws PatternError `edges-do-not-join`, `shaped-band-folded`, `shaped-band-too-steep`, `drafted-along-itself`;
 *   `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftWaistband = (pattern: Pattern, parameters: DraftWaistband): Alteration =>
  perform(draftWaistbandVerb, pattern, parameters);

/** Drafts cuffs, see {@link draftWaistband}: a pair, where left and right have a ring each. */
export const draftCuff = (pattern: Pattern, parameters: DraftWaistband): Alteration =>
  perform(draftCuffVerb, pattern, parameters);

const fields = {
  name: field.newName(),
  along: field.edgesOfPieces(),
  width: field.size(),
  length: field.optional(field.size()),
  takenUp: field.usually(field.choice('eased', 'gathered', 'stretched', 'pleated'), 'eased'),
  overlap: field.usually(field.length(), 0),
  underlap: field.usually(field.length(), 0),
  farEdge: field.optional(field.size()),
  cut: field.optional(field.choice('folded', 'in two')),
  interfaced: field.usually(field.yesOrNo(), true),
  fabric: field.optional(field.cloth()),
  allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
};
const startsAt = { edge: ['along'], table: [] };
const more =
  '{width} wide when finished[, {length} long][, the edge {taken up}][, overlapping by {overlap}][, underlapping by {underlap}][, its far edge {far edge}][, cut {cut}][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]';

export const draftWaistbandForm = formOf<DraftWaistband>()({
  verb: 'draft waistband',
  does: 'Drafts a waistband, straight and folded or shaped and cut in two, with laps to close it over one another.',
  fields,
  leaves: drafted,
  sentence: `Draft a waistband "{name}" for {along}, ${more}`,
  startsAt,
  example: {
    pattern: 'yoke-skirt',
    step: { name: 'waistband', along: ['front yoke.waist', 'back yoke.waist'], width: 35, underlap: 30 },
  },
});
export const draftWaistbandVerb = /* @__PURE__ */ verbFrom(draftWaistbandForm, (pattern, parameters) =>
  drawn(pattern, parameters, 'band'),
);

export const draftCuffForm = formOf<DraftWaistband>()({
  verb: 'draft cuff',
  does: 'Drafts cuffs, folded or cut in two, straight or shaped, to which a wider sleeve is gathered, eased or pleated, with laps to button them.',
  fields,
  leaves: drafted,
  sentence: `Draft a cuff "{name}" for {along}, ${more}`,
  startsAt,
  example: {
    pattern: 'woven-shift',
    step: {
      name: 'cuff',
      along: ['sleeve.hem'],
      width: 60,
      length: 220,
      overlap: 20,
      'taken up': 'gathered',
    },
  },
});
export const draftCuffVerb = /* @__PURE__ */ verbFrom(draftCuffForm, (pattern, parameters) =>
  drawn(pattern, parameters, 'cuff'),
);

type Whole = DraftWaistband &
  Required<Pick<DraftWaistband, 'overlap' | 'underlap' | 'takenUp' | 'interfaced'>>;

function drawn(given: Pattern, parameters: Whole, role: 'band' | 'cuff'): Alteration {
  const { name, overlap, underlap, width } = parameters;
  const along = distinctEdges(parameters.along);
  const { pattern, findings: turned } = hemsAsSeams(given, along, name, parameters.allowance);
  const laid = laidAlong(pattern, along);
  requireOneStretch(laid, name);
  const piece = bandPiece(pattern, { ...parameters, along }, laid, role);
  const sewnMm = parameters.length ?? laid.edgeMm;
  const rings = overlap + underlap === 0 ? ringSeam(name, laid) : undefined;
  const sewn = { ...seamAlong(name, laid, sewnMm - laid.edgeMm), takenUp: parameters.takenUp };
  const placed = takePlace(pattern, piece, sewn, rings);
  const spread = parameters.length !== undefined;
  const allowanceMm = takenAllowance(pattern, along);
  const folded = isFolded(parameters);
  const derived: Derived = {
    name,
    kind: role === 'cuff' ? 'cuff' : 'strip',
    lengthMm: overlap + sewnMm + underlap + 2 * allowanceMm,
    widthMm: (folded ? 2 : 1) * width + 2 * allowanceMm,
    fabric: piece.cutting.fabric,
    along,
    edgeMm: laid.edgeMm,
    ...(laid.count > 1 ? { count: laid.count } : {}),
    figures: {
      joinMm: rings ? allowanceMm : 0,
      allowanceMm,
      finishedWidthMm: width,
      sewnMm,
      overlapMm: overlap,
      underlapMm: underlap,
    },
  };
  const { lengthMm, widthMm } = derived;
  return {
    pattern: spread
      ? withEdgeMarks(placed.pattern, laid.chains, bandMarks(laid, sewnMm), name)
      : placed.pattern,
    did: saying('drafted-lapped', {
      piece: name,
      count: piece.cutting.count,
      edgeMm: laid.edgeMm,
      sewnMm,
      lengthMm,
      widthMm,
      overlapMm: overlap,
      underlapMm: underlap,
      folded,
      replaced: placed.replaced,
    }),
    findings: [...turned, ...allowanceFindings(pattern, along, name), ...placed.findings],
    derived: [derived],
  };
}

const isFolded = ({ cut, farEdge }: DraftWaistband): boolean =>
  (cut ?? (farEdge ? 'in two' : 'folded')) === 'folded';

function bandPiece(pattern: Pattern, wish: Whole, laid: LaidAlong, role: 'band' | 'cuff'): Piece {
  const { name, along, width, farEdge } = wish;
  const sewn = wish.length ?? laid.edgeMm;
  const folded = isFolded(wish);
  const ratio = farEdge === undefined ? 1 : farEdge / sewn;
  if (folded && farEdge !== undefined) throw refusal('shaped-band-folded', { piece: name });
  const whole = sewn + wish.overlap + wish.underlap;
  // Half a ring and more would lie over itself.
  if (Math.abs(1 - ratio) * whole > Math.PI * width)
    throw refusal('shaped-band-too-steep', { piece: name, sewnMm: sewn, farMm: farEdge!, widthMm: width });
  return lappedBand({
    name,
    role,
    madeFor: along,
    place: freePlace(pattern, name),
    fabric: wish.fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric,
    overlap: wish.overlap,
    sewn,
    underlap: wish.underlap,
    width,
    ratio,
    folded,
    allowance: takenAllowance(pattern, along),
    notches: bandMarks(laid, sewn)
      // Quarters are for what is spread evenly; a seam or fold at one is a mark all the same.
      .filter(({ label }) => wish.length !== undefined || (label !== 'half' && label !== 'quarter'))
      .map(({ at, label }) => ({ at, style: 'single' as const, name: label })),
    count: laid.count,
    interfaced: wish.interfaced,
  });
}
