import type { Pattern } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration } from '../alteration.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { freePiece } from './free-piece.js';
import { freePlace } from './free-place.js';
import { takePlace } from './take-place.js';
import { finding, saying } from './tellings.js';

/** A tie, strap, belt or loop: a strip folded lengthwise that belongs to no edge. Lengths in mm, finished. */
export interface DraftTie {
  readonly name: string;
  readonly length: number;
  readonly width: number;
  /** How many are cut; default 2. */
  readonly count?: number;
  /** The free end runs to a point; default no. */
  readonly pointed?: boolean;
  /** Default 10. */
  readonly allowance?: number;
  readonly fabric?: string;
}

/**
 * Drafts ties, straps, a belt or loops: a strip as long as given and twice as wide, to be folded lengthwise, sewn and
 * turned; a pointed end is drawn at 45°, so that its two slants lie on one another. On paper a rectangle; common
 * practice, no source. What hangs loose on children's clothes carries its caution.
 *
 * @throws PatternError those of `perform`
 */
export const draftTie = (pattern: Pattern, parameters: DraftTie): Alteration =>
  perform(draftTieVerb, pattern, parameters);

const mostTies = 40;

export const draftTieForm = formOf<DraftTie>()({
  verb: 'draft tie',
  does: 'Drafts ties, straps, a belt or loops: strips folded lengthwise and turned, that are made for no edge.',
  fields: {
    name: field.newName(),
    length: field.size(),
    width: field.size(),
    count: field.usually(field.count(mostTies), 2),
    pointed: field.usually(field.yesOrNo(), false),
    allowance: field.usually(field.length({ most: tolerances.largestAllowance }), 10),
    fabric: field.optional(field.cloth()),
  },
  leaves: ({ name }) => ({ pieces: [name] }),
  sentence:
    'Draft the tie "{name}", {length} long and {width} wide when finished[, cut {count}][, with a point: {pointed}][, of the {fabric} cloth]',
  startsAt: { table: [] },
  example: {
    pattern: 'smock',
    step: { name: 'belt', length: 700, width: 35, count: 2, pointed: 'yes' },
  },
});
export const draftTieVerb = /* @__PURE__ */ verbFrom(draftTieForm, drawnTie);

type Whole = DraftTie & Required<Pick<DraftTie, 'count' | 'pointed' | 'allowance'>>;

function drawnTie(
  pattern: Pattern,
  { name, length, width, count, pointed, allowance, fabric }: Whole,
): Alteration {
  const cutting = { count, mirrored: false, fabric: fabric ?? pattern.pieces[0]!.cutting.fabric };
  const place = freePlace(pattern, name);
  const piece = freePiece({
    name,
    role: 'strip',
    place,
    length,
    width: 2 * width,
    pointed,
    allowance,
    cutting,
    folded: true,
  });
  const placed = takePlace(pattern, piece, undefined);
  const one = saying('drafted-piece', { piece: name, count, lengthMm: length, widthMm: width });
  return {
    pattern: placed.pattern,
    did: saying('drafted-pieces', { pieces: [one] }),
    findings: [finding('note', 'loose-ends', { piece: name }, { piece: name }), ...placed.findings],
  };
}
