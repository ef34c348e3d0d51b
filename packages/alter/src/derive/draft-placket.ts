import { type EdgeRef, edgePath, type Pattern, pathLength, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration, Derived } from '../alteration.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { freePiece } from './free-piece.js';
import { freePlace } from './free-place.js';
import { takePlace } from './take-place.js';
import { refusal, saying } from './tellings.js';

/** A placket that binds a slit: one strip along both its sides. Lengths in mm. */
export interface DraftPlacket {
  readonly name: string;
  /** The edge that the slit runs along, or from. */
  readonly along: EdgeRef;
  /** Of the slit. */
  readonly length: number;
  /** Finished; default 20. */
  readonly width?: number;
  /** Default 6. */
  readonly allowance?: number;
  readonly fabric?: string;
}

/**
 * Drafts a continuous placket: a slit of the given length in an edge, and one strip twice as long, folded lengthwise,
 * that binds both its sides. On paper a rectangle of twice the slit by twice the width; common practice, no source.
 * The edge keeps its line and opens by the slit.
 *
 * @throws PatternError `slit-too-long`; `unknown-piece`, `unknown-edge`; those of `perform`
 */
export const draftPlacket = (pattern: Pattern, parameters: DraftPlacket): Alteration =>
  perform(draftPlacketVerb, pattern, parameters);

export const draftPlacketForm = formOf<DraftPlacket>()({
  verb: 'draft placket',
  does: 'Opens an edge by a slit and drafts the strip that binds both its sides.',
  fields: {
    name: field.newName(),
    along: field.edgeOfPiece(),
    length: field.size(),
    width: field.usually(field.size(), 20),
    allowance: field.usually(field.length({ most: tolerances.largestAllowance }), 6),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({ pieces: [name] }),
  sentence:
    'Draft a placket "{name}" for a slit of {length} in {along}[, {width} wide when finished][, of the {fabric} cloth]',
  startsAt: { edge: ['along'], table: [] },
  example: {
    pattern: 'shirt',
    step: { name: 'placket', along: 'sleeve.underarm-back', length: 110 },
  },
});
export const draftPlacketVerb = /* @__PURE__ */ verbFrom(draftPlacketForm, drawnPlacket);

type Whole = DraftPlacket & Required<Pick<DraftPlacket, 'width' | 'allowance'>>;

function drawnPlacket(pattern: Pattern, wish: Whole): Alteration {
  const { name, along, length, width, allowance } = wish;
  const source = pieceNamed(pattern, along.piece);
  const edgeMm = pathLength(edgePath(source, along.edge));
  if (length > edgeMm) throw refusal('slit-too-long', { edge: { ...along }, slitMm: length, edgeMm }, along);
  const parts = source.outline.parts.map(part =>
    part.type === 'edge' && part.name === along.edge ? { ...part, opening: length } : part,
  );
  const { count, mirrored, layers = 1 } = source.cutting;
  const fabric = wish.fabric ?? source.cutting.fabric;
  const opened = withPiece(pattern, { ...source, outline: { parts } });
  const piece = freePiece({
    name,
    role: 'placket',
    place: freePlace(pattern, name),
    length: 2 * length,
    width: 2 * width,
    pointed: false,
    allowance,
    cutting: { count: count / layers, mirrored, fabric },
    folded: true,
  });
  const placed = takePlace(opened, { ...piece, madeFor: [along] }, undefined);
  const derived: Derived = {
    name,
    kind: 'placket',
    lengthMm: 2 * length + 2 * allowance,
    widthMm: 2 * width + 2 * allowance,
    fabric,
    along: [along],
    edgeMm,
    figures: { slitMm: length, finishedWidthMm: width, allowanceMm: allowance },
  };
  const { lengthMm, widthMm } = derived;
  return {
    pattern: placed.pattern,
    did: saying('drafted-placket', { piece: name, edge: { ...along }, slitMm: length, lengthMm, widthMm }),
    findings: placed.findings,
    derived: [derived],
  };
}
