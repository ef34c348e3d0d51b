import {
  type EdgeRef,
  edgePath,
  type Notch,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import type { Alteration, Derived } from '../alteration.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { freePiece } from './free-piece.js';
import { freePlace } from './free-place.js';
import { type Slit, slitIn } from './slit-in.js';
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
 * that binds both its sides: of the edge and what it is sewn to, or both of the edge where it is sewn to nothing. On
 * paper a rectangle of twice the slit by twice the width; common practice, no source. The edge keeps its line, opens by
 * the slit from its hem or wrist, else its neck or waist, and is notched where that ends.
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

function drawnPlacket(given: Pattern, wish: Whole): Alteration {
  const { name, along, length, width, allowance } = wish;
  const source = pieceNamed(given, along.piece);
  const edgeMm = pathLength(edgePath(source, along.edge));
  if (length > edgeMm) throw refusal('slit-too-long', { edge: { ...along }, slitMm: length, edgeMm }, along);
  const slit = slitIn(given, along, length);
  const pattern = withSlit(given, wish, slit);
  const fabric = wish.fabric ?? source.cutting.fabric;
  const piece = freePiece({
    name,
    role: 'placket',
    place: freePlace(pattern, name),
    length: 2 * length,
    width: 2 * width,
    pointed: false,
    allowance,
    cutting: { count: slit.count, mirrored: slit.count % 2 === 0, fabric },
    folded: true,
  });
  const marked: Piece = {
    ...piece,
    notches: [{ edge: 'long', at: length, style: 'single', name: endOf(name) }],
    madeFor: [along],
  };
  const own = [{ piece: name, edge: 'long', reversed: false }];
  const placed = takePlace(pattern, marked, { own, partner: slit.sides, easeMm: 0 });
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

const endOf = (name: string): string => `${name} end`;

/** The edge opens by the slit, and both its sides are notched where it ends. */
function withSlit(pattern: Pattern, { name, along, length }: Whole, { sides }: Slit): Pattern {
  const opened = withPiece(pattern, withOpening(pieceNamed(pattern, along.piece), along.edge, length));
  return sides.reduce((now, { piece: of, edge, part }) => {
    const piece = pieceNamed(now, of);
    const at = part!.from === 0 ? part!.to : part!.from;
    const isIts = (notch: Notch): boolean => notch.name === endOf(name) && notch.edge === edge;
    const notch: Notch = { edge, at, style: 'single', name: endOf(name) };
    return withPiece(now, { ...piece, notches: [...piece.notches.filter(n => !isIts(n)), notch] });
  }, opened);
}

const withOpening = (piece: Piece, edge: string, opening: number): Piece => ({
  ...piece,
  outline: {
    parts: piece.outline.parts.map(part =>
      part.type === 'edge' && part.name === edge ? { ...part, opening } : part,
    ),
  },
});
