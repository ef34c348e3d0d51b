import {
  type Dart,
  line,
  type Pattern,
  type Piece,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { withLegsTrued } from '../darts/legs-trued.js';
import { mouthOf } from '../darts/mouth.js';
import { refusal, saying } from '../darts/tellings.js';
import { dartNamed } from '../hinge/dart-named.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw a dart's legs straight and equal. */
export interface TrueDart {
  readonly piece: string;
  readonly dart: string;
}

/**
 * Trues a dart: both legs are drawn straight from its mouth to its point, and the shorter is drawn on until it is as long
 * as the other, with the edge beside it to its new end, as paper folded along the dart and cut along the seam shows. What
 * bends where the sewn dart lies is trued with `true`. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `dart-beside-nothing`, `dart-leaves-piece`, `dart-is-true`;
 *   those of `perform`
 */
export const trueDart = (pattern: Pattern, parameters: TrueDart): Alteration =>
  perform(trueDartVerb, pattern, parameters);

export const trueDartForm = formOf<TrueDart>()({
  verb: 'true dart',
  does: 'Draws the legs of a dart straight and equally long; the edge beside the shorter one is drawn to its new end.',
  fields: { piece: field.piece(), dart: field.dart() },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'True the legs of the {dart} dart of the {piece}',
  startsAt: { dart: ['piece', 'dart'] },
  example: { pattern: 'trousers', step: { piece: 'back', dart: 'back' } },
});
export const trueDartVerb = /* @__PURE__ */ verbFrom(trueDartForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const before = dartNamed(piece, parameters.dart);
    const dart = { ...where, dart: before.name };
    const [firstMm, secondMm] = before.legs.map(pathLength) as [number, number];
    const straight = withStraightLegs(piece, before);
    const unequal = Math.abs(firstMm - secondMm) > tolerances.coincidenceTolerance;
    if (!unequal && before.legs.every(({ segments }) => segments.length === 1 && segments[0]!.length === 2))
      throw refusal('dart-is-true', { dart }, where);
    const done = withLegsTrued(straight, dartNamed(straight, before.name));
    requireSimple(done.piece, () => refusal('dart-leaves-piece', { dart }, where));
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('trued-dart', {
        dart,
        firstMm,
        secondMm,
        lengthMm: pathLength(dartNamed(done.piece, before.name).legs[0]),
      }),
      findings: done.findings,
    };
  });
});

function withStraightLegs(piece: Piece, dart: Dart): Piece {
  const [a, b] = mouthOf(dart);
  const legs = [pathOf(line(a, dart.apex)), pathOf(line(dart.apex, b))] as const;
  const parts = piece.outline.parts.map(part => (part === dart ? { ...dart, legs } : part));
  return { ...piece, outline: { parts } };
}
