import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import { withPiece } from '@paperhinge/geometry/pattern';
import { apply, distance, identity, rotation } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { inTurn } from '../became/in-turn.js';
import { drawnToPivot } from '../darts/drawn-to-pivot.js';
import { withLegsTrued } from '../darts/legs-trued.js';
import { intakeOf, mouthOf } from '../darts/mouth.js';
import { pivotOf } from '../darts/pivot.js';
import { pointBackFrom } from '../darts/point-back.js';
import { refusal as dartRefusal, saying } from '../darts/tellings.js';
import { dartAngle } from '../hinge/assemble.js';
import { dartNamed } from '../hinge/dart-named.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { cutApart, sectionAt } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Close a dart into another one. */
export interface JoinDarts {
  readonly piece: string;
  readonly dart: string;
  readonly into: string;
  /** Name of a point mark; absent = the point of the dart that stays. */
  readonly pivot?: string;
  /** mm the stitched point of the dart that stays is set back from the pivot; absent = as far as it is now. */
  readonly pointBack?: number;
}

/**
 * Combines two darts in one: the legs of both are drawn to the pivot, the first is closed about it and the other opens
 * by the same angle, so that the sum of their angles about the pivot is kept. What lies between the two turns as one,
 * or what lies outside them, whichever holds neither fold nor centre nor grain. The dart that stays keeps its name; its
 * legs are redrawn straight from its mouth to its point, set back along its new axis. Legs that come out unequal are
 * trued: the shorter is drawn on, and the edge beside it to its new end. Source: Armstrong, Patternmaking for Fashion
 * Design (1987), dart manipulation [memory].
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-mark`, `dart-into-itself`, `pivot-out-of-reach`,
 *   `point-back-too-long`, `outline-tangled`; those of `perform`
 */
export const joinDarts = (pattern: Pattern, parameters: JoinDarts): Alteration =>
  perform(joinDartsVerb, pattern, parameters);

export const joinDartsForm = formOf<JoinDarts>()({
  verb: 'join darts',
  does: 'Closes one dart and opens another by its angle, turning the pattern about the point of the one that stays or about a mark, so that one dart does the work of both.',
  fields: {
    piece: field.piece(),
    dart: field.dart(),
    into: field.dart(),
    pivot: field.optional(field.mark()),
    pointBack: field.optional(field.length()),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Close the {dart} dart of the {piece} into its {into} dart[, turning about the {pivot}][, its point {point back} back]',
  startsAt: { dart: ['piece', 'dart'] },
  example: {
    pattern: 'darted-dress',
    step: { piece: 'front', dart: 'bust', into: 'under-bust', pivot: 'bust point', 'point back': 20 },
  },
});
export const joinDartsVerb = /* @__PURE__ */ verbFrom(joinDartsForm, joinedDarts);

function joinedDarts(pattern: Pattern, parameters: JoinDarts): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const stays = dartNamed(piece, parameters.into);
    const pivot = pivotOf(piece, parameters) ?? stays.apex;
    if (parameters.dart === parameters.into)
      throw dartRefusal('dart-into-itself', { dart: { ...where, dart: stays.name } }, where);
    const drawn = drawnToPivot(piece, parameters.dart, [stays.name], pivot);
    const even = withLegsTrued(drawn, dartNamed(drawn, parameters.dart));
    const redrawn = even.piece;
    const closing = dartNamed(redrawn, parameters.dart);
    const cutPiece = cutApart(redrawn, [{ from: { dart: closing.name }, to: { dart: stays.name } }]);
    const holding = holdingSection(cutPiece);
    const angle = dartAngle(closing);
    // What lies before the dart that closes turns with the clock to meet what lies after it, or the other way round.
    const turned = rotation(sectionAt(cutPiece, 0, 'from', 'before') === holding ? -angle : angle, pivot);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : turned));
    const [a, b] = mouthOf(stays);
    const moves = (side: 'before' | 'after') => sectionAt(cutPiece, 0, 'to', side) !== holding;
    const mouth = [moves('before') ? apply(turned, a) : a, moves('after') ? apply(turned, b) : b] as const;
    const back = parameters.pointBack ?? distance(stays.apex, pivot);
    const apex = pointBackFrom(pivot, mouth, back, { ...where, dart: stays.name });
    const swung = swing(cutPiece, motions, holding, {
      closing: [closing.name],
      redrawn: new Map([[stays.name, apex]]),
    });
    const trued = withLegsTrued(swung.piece, dartNamed(swung.piece, stays.name));
    return {
      pattern: withPiece(pattern, trued.piece),
      became: inTurn(inTurn(even.became, swung.became), trued.became),
      did: saying('joined-darts', {
        dart: { ...where, dart: closing.name },
        into: { dart: stays.name },
        angleDeg: inDegrees(Math.abs(angle)),
        formerMm: intakeOf(stays),
        intakeMm: distance(...mouth),
      }),
      findings: [...even.findings, ...openingFindings(piece.name, swung), ...trued.findings],
    };
  });
}
