import { type EdgeRef, type Finding, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration, Derived } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { notchesAlong } from './band-marks.js';
import { drafted } from './drafted.js';
import { freePlace } from './free-place.js';
import { hemsAsSeams } from './hems-as-seams.js';
import { cutFor, eachFindings, type LaidAlong, laidAlong } from './laid-along.js';
import { longPiece } from './long-piece.js';
import { ringSeam, seamAlong } from './sewn-on.js';
import { narrowFindings, stitchedIn } from './stitched-in.js';
import { takePlace } from './take-place.js';
import { takenAllowance } from './taken-allowance.js';
import { finding, saying } from './tellings.js';

/** A strip (cut width given) or a binding (finished width given, cut four times as wide). Lengths in mm. */
export interface DraftStrip {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  /** Added at each end to join it; default 0. */
  readonly join?: number;
  readonly fabric?: string;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts a straight strip as long as its edges are in the whole garment, and 2 join.
 *
 * @throws PatternError `drafted-along-itself`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftStrip = (pattern: Pattern, parameters: DraftStrip): Alteration =>
  perform(draftStripVerb, pattern, parameters);

/** Drafts a bias binding: cut four times its finished width and stitched a quarter of that from both edges. */
export const draftBinding = (pattern: Pattern, parameters: DraftStrip): Alteration =>
  perform(draftBindingVerb, pattern, parameters);

const fields = {
  name: field.newName(),
  along: field.edgesOfPieces(),
  width: field.size(),
  join: field.usually(field.length(), 0),
  fabric: field.optional(field.cloth()),
  allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
};
const startsAt = { edge: ['along'], table: [] };

export const draftStripForm = formOf<DraftStrip>()({
  verb: 'draft strip',
  does: 'Drafts a straight strip as long as its edges are in the whole garment, cut as wide as given.',
  fields,
  leaves: drafted,
  sentence:
    'Draft a strip "{name}" for {along}, cut {width} wide[, with {join} to join it][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]',
  startsAt,
  example: {
    pattern: 'woven-shift',
    step: { name: 'hem strip', along: ['sleeve.hem'], width: 50, join: 10 },
  },
});
export const draftStripVerb = /* @__PURE__ */ verbFrom(draftStripForm, (pattern, parameters) =>
  drawnStrip(pattern, parameters, 'strip'),
);

export const draftBindingForm = formOf<DraftStrip>()({
  verb: 'draft binding',
  does: 'Drafts a bias binding as long as its edges are in the whole garment, cut four times as wide as it is when finished.',
  fields,
  leaves: drafted,
  sentence:
    'Draft a binding "{name}" for {along}, {width} wide when finished[, with {join} to join it][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]',
  startsAt,
  example: {
    pattern: 'woven-shift',
    step: { name: 'neck binding', along: ['front.neck', 'back.neck'], width: 10, join: 10 },
  },
});
export const draftBindingVerb = /* @__PURE__ */ verbFrom(draftBindingForm, (pattern, parameters) =>
  drawnStrip(pattern, parameters, 'binding'),
);

type WholeStrip = DraftStrip & { readonly join: number };
type Kind = 'strip' | 'binding';

function drawnStrip(given: Pattern, parameters: WholeStrip, kind: Kind): Alteration {
  const { name, join } = parameters;
  const along = distinctEdges(parameters.along);
  const { pattern, findings: turned } = hemsAsSeams(given, along, name, parameters.allowance);
  const laid = laidAlong(pattern, along);
  const cut = cutOf(pattern, { ...parameters, along }, kind);
  const piece = stripPiece(pattern, { ...parameters, along }, laid, cut, kind);
  const placed = takePlace(pattern, piece, seamAlong(name, laid, 0), ringSeam(name, laid));
  const { edgeMm, count } = laid;
  const lengthMm = edgeMm + 2 * join;
  const derived: Derived = {
    name,
    kind,
    lengthMm,
    widthMm: cut.widthMm,
    fabric: piece.cutting.fabric,
    along,
    edgeMm,
    ...(count > 1 ? { count } : {}),
    figures: {
      joinMm: join,
      allowanceMm: cut.allowanceMm,
      finishedWidthMm: kind === 'binding' ? parameters.width : (cut.widthMm - 2 * cut.allowanceMm) / 2,
      ...squareFor(kind, lengthMm * count, cut.widthMm),
    },
  };
  return {
    pattern: placed.pattern,
    did: saying('drafted-strip', {
      kind,
      piece: name,
      count,
      edgeMm,
      lengthMm,
      widthMm: cut.widthMm,
      ...squareFor(kind, lengthMm * count, cut.widthMm),
      replaced: placed.replaced,
    }),
    findings: [
      ...turned,
      ...severalFindings(name, laid, join),
      ...(kind === 'strip' ? narrowFindings(name, cut.widthMm, takenAllowance(pattern, along)) : []),
      ...eachFindings(name, count, lengthMm),
      ...placed.findings,
    ],
    derived: [derived],
  };
}

/**
 * mm: the side of the square of cloth that a bias strip is cut from in one, √(length × width); its seams come to that.
 * Source: quilting references, 100 × 3½ in from 18.71 in square, 250 × 2 in from 22.36 in [read: check-values §4].
 */
const squareFor = (kind: Kind, lengthMm: number, widthMm: number): { readonly squareMm?: number } =>
  kind === 'binding' ? { squareMm: Math.sqrt(lengthMm * widthMm) } : {};

/** mm: how wide it is cut, and how far in from both edges it is stitched. */
interface CutWidth {
  readonly widthMm: number;
  readonly allowanceMm: number;
}

function cutOf(pattern: Pattern, { along, width }: WholeStrip, kind: Kind): CutWidth {
  if (kind === 'binding') return { widthMm: 4 * width, allowanceMm: width };
  return { widthMm: width, allowanceMm: stitchedIn(width, takenAllowance(pattern, along)) };
}

const stripPiece = (
  pattern: Pattern,
  { name, along, join, fabric }: WholeStrip,
  laid: LaidAlong,
  { widthMm, allowanceMm }: CutWidth,
  kind: Kind,
): Piece =>
  longPiece({
    name,
    role: kind,
    cut: cutFor(laid),
    madeFor: along,
    place: freePlace(pattern, name),
    fabric: fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric,
    finishedLength: laid.edgeMm,
    finishedWidth: widthMm - 2 * allowanceMm,
    join,
    allowance: allowanceMm,
    grain: kind === 'binding' ? 'bias' : 'along',
    notches: notchesAlong(pattern, laid),
    ...(kind === 'binding' ? { note: 'on the bias' } : {}),
  });

function severalFindings(piece: string, { chains, edgeMm }: LaidAlong, join: number): readonly Finding[] {
  const stretches = chains.length;
  if (stretches < 2) return [];
  const facts = { piece, stretches, extraJoinsMm: 2 * join * (stretches - 1), edgeMm };
  return [finding('note', 'several-stretches', { piece }, facts)];
}
