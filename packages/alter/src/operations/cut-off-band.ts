import { type EdgeRef, type Pattern, type Piece, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { dividedAlong } from '../dividing/divided-along.js';
import { requireFreeForDivision } from '../dividing/names-free.js';
import { parallelCut } from '../dividing/parallel-cut.js';
import { saying } from '../dividing/tellings.js';
import { usualAllowance } from '../dividing/usual-allowance.js';
import type { CutPiece } from '../hinge/cut-piece.js';
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
}

/**
 * Cuts a band off along an edge: the piece is cut along the parallel at `width` inside the edge, run on straight to the
 * edges beside it, and the strip is a piece of its own, sewn to the rest in a new seam; garment and hem keep their shape
 * and length. Doubled, the band is cut twice, a facing for itself: the edge that was the hem is then a seam between the
 * two, with the piece's usual allowance. Nothing is redrawn; edges that are cut in two keep their name on both. Source:
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
  },
  leaves: ({ edge, name, seam }) => ({ pieces: [name], changed: [edge.piece], seams: [seam ?? name] }),
  sentence:
    'Cut a band {width} wide off along the {edge}, called {name}[, doubled: {doubled}][, the seam {seam}][, with {allowance} of allowance]',
  startsAt: { edge: ['edge'] },
  example: {
    pattern: 'woven-shift',
    step: { edge: 'sleeve.hem', width: '70 mm', name: 'sleeve band' },
  },
});
export const cutOffBandVerb = /* @__PURE__ */ verbFrom(cutOffBandForm, (pattern, parameters) => {
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
});

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
