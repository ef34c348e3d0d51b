import { type EdgeRef, edgeNamed, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration, Derived, MakingNote } from '../alteration.js';
import { distinctEdges } from '../edge-refs.js';
import { bandStretchFindings, stretchOfBand } from '../fit/band-stretch.js';
import { stretchOf } from '../fit/cloth.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { type BandMark, bandMarks, withEdgeMarks } from './band-marks.js';
import { drafted } from './drafted.js';
import { freePlace } from './free-place.js';
import { hemsAsSeams } from './hems-as-seams.js';
import { cutFor, eachFindings, type LaidAlong, laidAlong, requireOneStretch } from './laid-along.js';
import { longPiece, sewnEdge } from './long-piece.js';
import { ringSeam, seamAlong } from './sewn-on.js';
import { narrowFindings, stitchedIn } from './stitched-in.js';
import { takePlace } from './take-place.js';
import { allowanceFindings, takenAllowance } from './taken-allowance.js';
import { refusal, saying } from './tellings.js';

/** A band twice as long as its edge is a frill. */
const largestRatio = 2;

/** A stretched band along edges, over a gap if there is one. Lengths in mm. */
export interface DraftBand {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly gap?: EdgeRef;
  /** Over 0 to 2. */
  readonly ratio: number;
  /** mm, cut width. */
  readonly width: number;
  /** mm of joining allowance at each end; default 0. */
  readonly join?: number;
  /** Whether the part over a gap is stretched with the rest; default `whole`. */
  readonly stretchedPart?: 'whole' | 'sewn';
  readonly fabric?: string;
  /** mm that a hem among the edges gets when it becomes a seam; absent: what most seams of its piece have. */
  readonly allowance?: number;
}

/**
 * Drafts a straight band for edges that follow each other in the garment. With E their stitching length over the whole
 * garment and G the straight distance across the gap, it is cut ratio × (E + G) + 2 join long, or, where only the sewn
 * part is stretched, ratio × E + G + 2 join. The part over the gap is not stretched in either case, so the sewn part
 * is by E / (length − 2 join − G) − 1. Marked in halves and quarters, at the gap's ends and where seams and folds meet
 * it; the edges are marked where the quarters fall. Where left and right have a ring each (sleeves), it is a pair, all
 * figures those of one. A hem that it is sewn to becomes a seam. Source: common practice, no source (trade-notes §6).
 *
 * @throws PatternError `edges-do-not-join`, `gap-also-along`, `gap-not-beside`, `band-too-short`,
 *   `drafted-along-itself`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftBand = (pattern: Pattern, parameters: DraftBand): Alteration =>
  perform(draftBandVerb, pattern, parameters);

export const draftBandForm = formOf<DraftBand>()({
  verb: 'draft band',
  does: 'Drafts a straight band for edges that follow each other in the garment, shorter than they are by a ratio, so that it is stretched as it is sewn on.',
  fields: {
    name: field.newName(),
    along: field.edgesOfPieces(),
    gap: field.optional(field.edgeOfPiece()),
    ratio: field.share({ most: largestRatio, over: true }),
    width: field.size(),
    join: field.usually(field.length(), 0),
    stretchedPart: field.usually(field.choice('whole', 'sewn'), 'whole'),
    fabric: field.optional(field.cloth()),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
  },
  leaves: drafted,
  sentence:
    'Draft a band "{name}" for {along} at {ratio} of their length, {width} wide[, over the gap {gap}][, with {join} to join it][, of the {fabric} cloth][, a hem among them now a seam of {allowance}]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'woven-shift',
    step: { name: 'neckband', along: ['front.neck', 'back.neck'], ratio: '80 %', width: 56, join: 7 },
  },
});
export const draftBandVerb = /* @__PURE__ */ verbFrom(draftBandForm, drawnBand);

type WholeBand = DraftBand & Required<Pick<DraftBand, 'join' | 'stretchedPart'>>;

function drawnBand(given: Pattern, parameters: WholeBand): Alteration {
  const { name, width } = parameters;
  const along = distinctEdges(parameters.along);
  const { pattern, findings: turned } = hemsAsSeams(given, along, name, parameters.allowance);
  const laid = laidAlong(pattern, along, parameters.gap);
  requireOneStretch(laid, name);
  const size = sizeOf(parameters, laid);
  const allowance = takenAllowance(pattern, along);
  const marks = bandMarks(laid, size.betweenMm);
  const piece = bandPiece(pattern, { ...parameters, along }, { laid, size, marks });
  const placed = takePlace(
    withEdgeMarks(pattern, laid.chains, marks, name),
    piece,
    seamAlong(name, laid, size.betweenMm - laid.edgeMm),
    ringSeam(name, laid),
  );
  const lengths = {
    name,
    edgeMm: laid.edgeMm,
    lengthMm: size.lengthMm,
    joinMm: parameters.join,
    gapMm: laid.gapMm,
  };
  const stretchPercent = stretchOfBand(lengths);
  return {
    pattern: placed.pattern,
    did: saying('drafted-band', {
      piece: name,
      count: laid.count,
      edgeMm: laid.edgeMm,
      gapMm: laid.gapMm,
      lengthMm: size.lengthMm,
      widthMm: width,
      ratioPercent: parameters.ratio * 100,
      stretchPercent,
      replaced: placed.replaced,
    }),
    findings: [
      ...turned,
      ...bandStretchFindings(lengths, stretchOf(pattern, piece.cutting.fabric)),
      ...allowanceFindings(pattern, along, name),
      ...narrowFindings(name, width, allowance),
      ...eachFindings(name, laid.count, size.lengthMm),
      ...placed.findings,
    ],
    derived: [derivedBand({ ...parameters, along }, piece, laid, size)],
    making: [sewOn(name, along, laid, stretchPercent)],
  };
}

const sewOn = (
  name: string,
  along: readonly EdgeRef[],
  { gapMm, ring }: LaidAlong,
  stretchPercent: number,
): MakingNote => {
  const edges = along.map(ref => ({ ...ref }));
  const text = saying('sew-band-on', { piece: name, edges, gap: gapMm > 0, stretchPercent, ring });
  return { job: `band ${name}`, text, after: [] };
};

/** Lengths of one band in mm: between its joins, cut, and of its sewn part. */
interface BandSize {
  readonly betweenMm: number;
  readonly lengthMm: number;
  readonly sewnMm: number;
}

/** @throws PatternError `band-too-short`: the gap uses it up */
function sizeOf({ name, ratio, join, stretchedPart }: WholeBand, { edgeMm, gapMm }: LaidAlong): BandSize {
  const betweenMm = stretchedPart === 'whole' ? ratio * (edgeMm + gapMm) : ratio * edgeMm + gapMm;
  const sewnMm = betweenMm - gapMm;
  if (!(sewnMm > 0)) throw refusal('band-too-short', { piece: name, betweenMm, gapMm });
  return { betweenMm, lengthMm: betweenMm + 2 * join, sewnMm };
}

function bandPiece(
  pattern: Pattern,
  { name, along, width, join, fabric }: WholeBand,
  {
    laid,
    size,
    marks,
  }: { readonly laid: LaidAlong; readonly size: BandSize; readonly marks: readonly BandMark[] },
): Piece {
  const allowance = stitchedIn(width, takenAllowance(pattern, along));
  return longPiece({
    name,
    role: 'band',
    cut: cutFor(laid),
    madeFor: along,
    place: freePlace(pattern, name),
    fabric: fabric ?? pieceNamed(pattern, along[0]!.piece).cutting.fabric,
    finishedLength: size.betweenMm,
    finishedWidth: width - 2 * allowance,
    join,
    allowance,
    grain: 'across',
    notches: marks.map(({ at, label }) => ({ at, style: 'single', name: label })),
  });
}

function derivedBand(
  { name, along, width, join, ratio }: WholeBand,
  piece: Piece,
  laid: LaidAlong,
  { betweenMm, lengthMm, sewnMm }: BandSize,
): Derived {
  const { edgeMm, gapMm, count } = laid;
  return {
    name,
    kind: 'band',
    lengthMm,
    widthMm: width,
    fabric: piece.cutting.fabric,
    along,
    edgeMm,
    ...(count > 1 ? { count } : {}),
    figures: {
      gapMm,
      ratioPercent: ratio * 100,
      joinMm: join,
      stretchPercent: stretchOfBand({ name, edgeMm, lengthMm, joinMm: join, gapMm }),
      finishedLengthMm: betweenMm,
      sewnMm,
      finishedWidthMm: (width - 2 * edgeNamed(piece, sewnEdge).allowance) / 2,
      halfMm: betweenMm / 2,
      quarterMm: betweenMm / 4,
    },
  };
}
