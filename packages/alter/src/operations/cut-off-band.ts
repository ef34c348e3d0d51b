import { type EdgeRef, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { neighboursOf, withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { namesBeside } from '../dividing/beside.js';
import { dividedAlong } from '../dividing/divided-along.js';
import { requireFreeForDivision } from '../dividing/names-free.js';
import { parallelCut } from '../dividing/parallel-cut.js';
import { saying } from '../dividing/tellings.js';
import { usualAllowance } from '../dividing/usual-allowance.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { type Beside, counterpartOf } from '../matching/counterparts.js';
import { doneBeside } from '../matching/done-to-each.js';
import type { Filled } from '../verb/field.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Cut a shaped band off along an edge. */
export interface CutOffBand {
  readonly edge: EdgeRef;
  /** mm from the edge to the new seam, everywhere. */
  readonly width: number;
  readonly name: string;
  /** Cut twice, one for the inside; default yes. */
  readonly doubled?: boolean;
  /** What the new seam and its two edges are called; absent = as the band. */
  readonly seam?: string;
  /** mm on both new edges; absent = as most seams of the piece have. */
  readonly allowance?: number;
  /** A band of the same width off the pieces beside it, where their edge goes on. */
  readonly matching?: boolean;
}

/**
 * Cuts a band off along an edge: the piece is cut along the parallel at `width` inside the edge, run on straight to the
 * edges beside it, and the strip is a piece of its own, sewn to the rest in a new seam; garment and hem keep their shape
 * and length. Doubled, the band is cut twice, a facing for itself: the edge that was the hem is then a seam between the
 * two, with the piece's usual allowance. Nothing is redrawn; edges that are cut in two keep their name on both. With
 * `matching` the pieces beside whose edge goes on from this one across their seam give a band each, too. Source:
 * common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `piece-name-taken`, `seam-name-taken`, `edge-name-taken`,
 *   `band-too-wide`, `edge-in-two-parts`, `slash-leaves-piece`, `slash-crosses-dart`; those of `perform`
 */
export const cutOffBand = (pattern: Pattern, parameters: CutOffBand): Alteration =>
  perform(cutOffBandVerb, pattern, parameters);

export const cutOffBandForm = formOf<CutOffBand>()({
  verb: 'cut off band',
  does: 'Cuts a strip of one width off along an edge, shaped as the edge is, and sews it on again as a band; it is cut twice where it faces itself.',
  fields: {
    edge: field.edgeOfPiece(),
    width: field.size(),
    name: field.newName(),
    doubled: field.usually(field.yesOrNo(), true),
    seam: field.optional(field.newName()),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
    matching: field.optional(field.yesOrNo()),
  },
  leaves: ({ edge, name, seam, matching }) => ({
    pieces: [name],
    changed: [edge.piece],
    seams: matching ? 'unknown' : [seam ?? name],
    morePieces: matching === true,
  }),
  sentence:
    'Cut a band {width} wide off along the {edge}, called {name}[, doubled: {doubled}][, the seam {seam}][, with {allowance} of allowance][, the pieces beside it too: {matching}]',
  startsAt: { edge: ['edge'] },
  example: {
    pattern: 'woven-shift',
    step: { edge: 'sleeve.hem', width: '70 mm', name: 'sleeve band' },
  },
});
export const cutOffBandVerb = /* @__PURE__ */ verbFrom(cutOffBandForm, (pattern, { matching, ...wish }) =>
  matching
    ? doneBeside(pattern, wish.edge.piece, wish, beside => wishBeside(pattern, wish, beside), cutOff)
    : cutOff(pattern, wish),
);

type Wish = Omit<Filled<CutOffBand, (typeof cutOffBandForm)['fields']>, 'matching'>;

function cutOff(pattern: Pattern, parameters: Wish): Alteration {
  const { edge, width, name, doubled, seam = name, allowance } = parameters;
  const piece = pieceNamed(pattern, edge.piece);
  requireFreeForDivision(pattern, piece, { name, seam });
  return locating(edge, () => {
    const cut = parallelCut(piece, edge.edge, width);
    const rest = (cutPiece: CutPiece) => 1 - sectionWith(cutPiece, edge.edge);
    const done = dividedAlong(pattern, piece, cut, { name, seam, allowance }, rest);
    const band = doubled ? twofold(done.off, edge.edge, usualAllowance(piece)) : done.off;
    return {
      pattern: withPiece(done.pattern, band),
      became: done.became,
      did: saying('cut-off-band', {
        edge: { ...edge },
        band: { piece: name },
        seam: { seam },
        widthMm: width,
        lengthMm: done.lengthMm,
        count: band.cutting.count,
      }),
      findings: done.findings.map(told => ({
        ...told,
        figures: { ...told.figures, count: band.cutting.count },
      })),
    };
  });
}

/** The band of a piece beside; nothing where the edge does not end at the seam between, or no edge answers to it. */
function wishBeside(pattern: Pattern, wish: Wish, beside: Beside): Wish | undefined {
  const { piece, edge } = wish.edge;
  const { start, end } = neighboursOf(pieceNamed(pattern, piece), edge);
  if (!beside.own.includes(start) && !beside.own.includes(end)) return undefined;
  const theirs = counterpartOf(pattern, piece, { edge }, beside);
  return (
    theirs && {
      ...wish,
      ...namesBeside({ ...wish, piece }, beside.piece),
      edge: { piece: beside.piece, edge: theirs.edge },
    }
  );
}

/** The section that an edge in one part borders. */
const sectionWith = ({ stretches, sectionOf }: CutPiece, name: string): number =>
  sectionOf[stretches.findIndex(stretch => stretch.type === 'edge' && stretch.edge.name === name)]!;

/** A band that faces itself: cut twice, its outer edge a seam between the two. */
function twofold(band: Piece, outer: string, allowance: number): Piece {
  const parts = band.outline.parts.map(part => {
    if (part.type !== 'edge' || part.name !== outer || part.kind !== 'hem') return part;
    const { finish: _, role: _role, roleGuessed: _guessed, ...edge } = part;
    return { ...edge, kind: 'seam' as const, allowance };
  });
  const { count, layers = 1 } = band.cutting;
  const cutting = { ...band.cutting, count: 2 * count, layers: 2 * layers };
  return { ...band, outline: { parts }, cutting };
}
