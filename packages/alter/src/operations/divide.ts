import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { divisionBeside } from '../dividing/beside.js';
import { type DivisionEnd, divisionCut } from '../dividing/course.js';
import { dividedAlong } from '../dividing/divided-along.js';
import { requireFreeForDivision } from '../dividing/names-free.js';
import { saying } from '../dividing/tellings.js';
import { holdingSection } from '../hinge/holding.js';
import { doneBeside } from '../matching/done-to-each.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

export type { DivisionEnd } from '../dividing/course.js';

/** Cut a piece in two along a line, and sew the two together there. */
export interface Divide {
  readonly piece: string;
  /** What the part that is cut off is called; the part with the fold, the centre or the grain keeps its name. */
  readonly name: string;
  /** Name of a line drawn on the piece; or `from` and `to`. */
  readonly line?: string;
  readonly from?: DivisionEnd;
  readonly to?: DivisionEnd;
  /** Name of a point mark that the cut goes by, such as the bust point. */
  readonly through?: string;
  /** What the new seam and its two edges are called; absent = as the new piece. */
  readonly seam?: string;
  /** mm on both new edges; absent = as most seams of the piece have. */
  readonly allowance?: number;
  /** Where the cut ends at a seam, the piece beyond it is cut in two from there on. */
  readonly matching?: boolean;
}

/**
 * Divides a piece into two, with a new seam between them: a yoke, a panel, a band. The cut runs along a drawn line, or
 * straight from one place or dart to another, by way of a mark if one is named. Where it ends at a dart, the dart's
 * legs become part of the new edges and its intake goes into the seam: so a princess line is cut, from a dart through
 * the bust point to another. Nothing moves but that the new piece is laid aside; edges that are cut in two keep their
 * name on both. What was cut on the fold and is so no longer is cut as a pair; a part without a grain line gets one of
 * the same way. With `matching` the course goes on over the seams that it ends at: the piece beyond is cut from the
 * same place of the seam to the edge or dart that answers to the other end, or along its own line of the same name; a
 * `front yoke` has a `back yoke` then. Source: Armstrong, Patternmaking for Fashion Design (1987), style lines and yokes [memory].
 *
 * @throws PatternError `unknown-piece`, `piece-name-taken`, `seam-name-taken`, `edge-name-taken`,
 *   `division-end-unclear`; those of the slash (`slash-leaves-piece`, `slash-crosses-dart`, `slash-too-short`), of a
 *   drawn line (`unknown-line`, `line-ends-off-outline`, `line-crosses-dart`) and of `perform`
 */
export const divide = (pattern: Pattern, parameters: Divide): Alteration =>
  perform(divideVerb, pattern, parameters);

const end = () =>
  field.group<DivisionEnd>({
    edge: field.optional(field.edge()),
    at: field.optional(field.place('edge')),
    dart: field.optional(field.dart()),
  });

export const divideForm = formOf<Divide>()({
  verb: 'divide',
  does: 'Cuts a piece in two along a drawn line, or straight from one edge or dart to another, and adds a seam there: a yoke, a panel, a princess line.',
  fields: {
    piece: field.piece(),
    name: field.newName(),
    line: field.optional(field.drawnLine()),
    from: field.optional(end()),
    to: field.optional(end()),
    through: field.optional(field.mark()),
    seam: field.optional(field.newName()),
    allowance: field.optional(field.length({ most: tolerances.largestAllowance })),
    matching: field.optional(field.yesOrNo()),
  },
  oneOf: [['line', 'from']],
  lacks: ({ line, to }) => (line === undefined && to === undefined ? 'to' : undefined),
  leaves: ({ piece, name, seam, matching }) => ({
    pieces: [name],
    changed: [piece],
    seams: matching ? 'unknown' : [seam ?? name],
    morePieces: matching === true,
  }),
  sentence:
    'Divide the {piece}[ along the {line} line][ from the {from.edge}][ at {from.at}][ from the {from.dart} dart][ through the {through}][ to the {to.edge}][ at {to.at}][ to the {to.dart} dart]; the part cut off is the {name}[, the seam {seam}][, with {allowance} of allowance][, on over the seam too: {matching}]',
  startsAt: { piece: ['piece'], line: ['piece', 'line'], dart: ['piece'], edge: ['piece'] },
  example: {
    pattern: 'darted-dress',
    step: {
      piece: 'back',
      name: 'back yoke',
      from: { edge: 'armhole', at: '80 mm from shoulder' },
      to: { edge: 'centre', at: '90 mm from neck' },
    },
  },
});
export const divideVerb = /* @__PURE__ */ verbFrom(divideForm, (pattern, { matching, ...wish }) =>
  matching
    ? doneBeside(pattern, wish.piece, wish, beside => divisionBeside(pattern, wish, beside), divided)
    : divided(pattern, wish),
);

function divided(pattern: Pattern, parameters: Divide): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const { name, seam = name, allowance } = parameters;
  const where = { piece: piece.name };
  requireFreeForDivision(pattern, piece, { name, seam });
  return locating(where, () => {
    const cut = divisionCut(piece, parameters);
    const done = dividedAlong(pattern, piece, cut, { name, seam, allowance }, holdingSection);
    return {
      pattern: done.pattern,
      became: done.became,
      did: saying('divided', {
        piece: where,
        fresh: { piece: name },
        seam: { seam },
        lengthMm: done.lengthMm,
      }),
      findings: done.findings,
    };
  });
}
