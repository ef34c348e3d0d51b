import {
  type Dart,
  line,
  type Pattern,
  type Piece,
  type PieceLine,
  pathLength,
  pathOf,
  pieceNamed,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { add, distance, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration, Redrawn } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { type BesideDart, besideDart, replacedRound } from '../darts/beside.js';
import { contourDart, liesWithin, withWidth } from '../darts/contour.js';
import { intakeOf, mouthOf } from '../darts/mouth.js';
import { refusal, saying } from '../darts/tellings.js';
import { dartNamed } from '../hinge/dart-named.js';
import { partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { onMiddle } from '../moved-edges/dart-redrawn.js';
import { requireSimple } from '../moved-edges/tidy.js';
import * as field from '../verb/fields.js';
import { formOf, performSaid, verbFrom } from '../verb/verb.js';

/** Make a dart take in more or less, where it stands. */
export interface ResizeDart {
  readonly piece: string;
  readonly dart: string;
  /** mm between the ends of its mouth. */
  readonly to: number;
}

/**
 * Makes a dart take in more or less: both ends of its mouth move by half the difference, outwards along the edges
 * beside it or inwards straight across the old mouth, and its legs are drawn straight to its point. Nothing turns;
 * the edges become longer or shorter by the difference. A point that its legs would reach unevenly is put back on
 * the middle, as deep as it lay. A double-pointed dart becomes wider or narrower between its two points. Source: common
 * practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `dart-beside-nothing`, `dart-leaves-piece`,
 *   `contour-dart-leaves-piece`; those of `perform`
 */
export const resizeDart = (pattern: Pattern, parameters: ResizeDart): Alteration =>
  performSaid(resizeDartVerb, pattern, parameters);

export const resizeDartForm = formOf<ResizeDart>()({
  verb: 'resize dart',
  does: 'Makes a dart take in more or less where it stands, half of the difference on either side. The edge becomes shorter or longer by it.',
  fields: { piece: field.piece(), dart: field.dart(), to: field.size() },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence: 'Make the {dart} dart of the {piece} take in {to}',
  startsAt: { dart: ['piece', 'dart'] },
  example: { pattern: 'darted-dress', step: { piece: 'front', dart: 'under-bust', to: '20 mm' } },
});
export const resizeDartVerb = /* @__PURE__ */ verbFrom(resizeDartForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  return locating(where, () => {
    const within = contourDart(piece, parameters.dart);
    if (within) return resizedWithin(pattern, piece, within, parameters.to);
    const dart = dartNamed(piece, parameters.dart);
    const beside = besideDart(piece, dart);
    const by = parameters.to - intakeOf(dart);
    const done = recomposed(
      piece,
      replacedRound(
        beside,
        by < 0 ? narrowed(beside, dart, -by / 2) : widened(beside, dart, parameters.to, by / 2),
      ),
    );
    const named = { ...where, dart: dart.name };
    requireSimple(done.piece, () => refusal('dart-leaves-piece', { dart: named }, where));
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('resized-dart', { dart: named, formerMm: intakeOf(dart), toMm: parameters.to }),
      findings: done.findings,
    };
  });
});

/** A double-pointed dart keeps its points; no edge changes. */
function resizedWithin(pattern: Pattern, piece: Piece, dart: PieceLine, toMm: number): Redrawn {
  const where = { piece: piece.name };
  const { path, formerMm } = withWidth(dart.path, toMm);
  if (!liesWithin(piece, path))
    throw refusal('contour-dart-leaves-piece', { piece: where, name: dart.name }, where);
  const lines = piece.lines.map(one => (one === dart ? { ...dart, path } : one));
  return {
    pattern: withPiece(pattern, { ...piece, lines }),
    became: nothingBecame,
    did: saying('resized-dart', { dart: { ...where, dart: dart.name }, formerMm, toMm }),
    findings: [],
  };
}

/** The edges run on straight across the old mouth. */
function narrowed({ before, after }: BesideDart, dart: Dart, by: number) {
  const [a, b] = mouthOf(dart);
  const across = scale(unit(subtract(b, a)), by);
  const from = add(a, across),
    to = subtract(b, across);
  const grownBefore: Run = { type: 'run', edge: before.edge, path: pathOf(line(a, from)) };
  const grownAfter: Run = { type: 'run', edge: after.edge, path: pathOf(line(to, b)) };
  return [before, grownBefore, withMouth(dart, from, to), grownAfter, after];
}

/** The mouth eats into the edges on either side. */
function widened({ before, after, name }: BesideDart, dart: Dart, toMm: number, by: number) {
  const roomMm = Math.min(pathLength(before.path), pathLength(after.path));
  if (by >= roomMm - tolerances.joiningGap)
    throw refusal('dart-beside-nothing', { dart: { piece: name, dart: dart.name }, toMm, roomMm });
  const cutBack = (each: number) => ({
    first: partOfRun(before, 0, pathLength(before.path) - each),
    second: partOfRun(after, each, pathLength(after.path)),
  });
  // On a curved edge the mouth is not wider by exactly what its ends move: a few corrections settle it.
  let each = by;
  for (let i = 0; i < mostCorrections; i++) {
    const { first, second } = cutBack(each);
    const off = toMm - distance(pathEnd(first.path), pathStart(second.path));
    if (Math.abs(off) <= tolerances.lengthTolerance) break;
    each = Math.min(Math.max(each + off / 2, 0), roomMm - tolerances.joiningGap);
  }
  const { first, second } = cutBack(each);
  return [first, withMouth(dart, pathEnd(first.path), pathStart(second.path)), second];
}

/** Each correction leaves some hundredths of the error: the edge turns little within a mouth. */
const mostCorrections = 20;

function withMouth(dart: Dart, from: Dart['apex'], to: Dart['apex']): Dart {
  const apex = onMiddle(from, to, dart.apex);
  return { ...dart, apex, legs: [pathOf(line(from, apex)), pathOf(line(apex, to))] };
}
