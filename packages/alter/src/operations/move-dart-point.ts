import { type Dart, type Pattern, type Piece, type Point, pieceNamed } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import { add, distance, scale } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { withLegsTrued } from '../darts/legs-trued.js';
import { depthOf, inwardsOf } from '../darts/mouth.js';
import { pivotOf } from '../darts/pivot.js';
import { refusal, saying } from '../darts/tellings.js';
import { dartNamed } from '../hinge/dart-named.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import { upAlongGrain } from '../moved-edges/grain.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';

/** Lengthen or shorten a dart, raise or lower its point, or draw it to a mark. */
export interface MoveDartPoint {
  readonly piece: string;
  readonly dart: string;
  /** mm deeper along the dart's own axis; negative: shorter. */
  readonly deeper?: number;
  /** mm up along the grain; negative: down. */
  readonly up?: number;
  /** Name of a point mark. */
  readonly to?: string;
}

/**
 * Moves a dart's point: deeper or back along its axis, up or down along the grain, or to a mark. Its mouth stays; the
 * legs are drawn anew, straight. Where they came out unequal, the shorter is lengthened to match, as paper folded
 * along the dart and cut along the seam shows, and the edge beside it is drawn to its new end. Source: common
 * practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-mark`, `dart-too-deep`, `pivot-out-of-reach`,
 *   `dart-leaves-piece`; those of `perform`
 */
export const moveDartPoint = (pattern: Pattern, parameters: MoveDartPoint): Alteration =>
  performSaid(moveDartPointVerb, pattern, parameters);

export const moveDartPointForm = formOf<MoveDartPoint>()({
  verb: 'move dart point',
  does: 'Draws the point of a dart elsewhere: deeper or shorter, up or down, or to a mark. The mouth stays; legs that come out unequal are trued.',
  fields: {
    piece: field.piece(),
    dart: field.dart(),
    deeper: field.optional(field.signedLength()),
    up: field.optional(field.signedLength()),
    to: field.optional(field.mark()),
  },
  oneOf: [['deeper', 'up', 'to']],
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Draw the point of the {dart} dart of the {piece}[ {deeper} deeper][ {up} further up][ to the {to}]',
  startsAt: { dart: ['piece', 'dart'] },
  example: { pattern: 'woven-shift', step: { piece: 'front', dart: 'bust', up: '20 mm' } },
});
export const moveDartPointVerb = /* @__PURE__ */ verbFrom(moveDartPointForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const before = dartNamed(piece, parameters.dart);
    const point = newPoint(piece, before, parameters);
    const named = { ...where, dart: before.name };
    const drawn = withLegsTo(piece, before, point);
    const done = withLegsTrued(drawn, dartNamed(drawn, before.name));
    requireSimple(done.piece, () => refusal('dart-leaves-piece', { dart: named }, where));
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('moved-dart-point', {
        dart: named,
        movedMm: distance(before.apex, point),
        formerMm: depthOf(before),
        deepMm: depthOf(dartNamed(done.piece, before.name)),
      }),
      findings: done.findings,
    };
  });
});

function newPoint(piece: Piece, dart: Dart, { deeper, up, to }: MoveDartPoint): Point {
  if (deeper !== undefined) {
    const deepMm = depthOf(dart);
    if (deepMm + deeper <= tolerances.joiningGap)
      throw refusal('dart-too-deep', { dart: { piece: piece.name, dart: dart.name }, deepMm, byMm: -deeper });
    return add(dart.apex, scale(inwardsOf(dart), deeper));
  }
  if (up === undefined) return pivotOf(piece, { pivot: to! })!;
  return add(dart.apex, scale(upAlongGrain(piece), up));
}
