import {
  type Pattern,
  type Piece,
  type PieceLine,
  type Point,
  pathLength,
  pieceNamed,
  polyline,
} from '@paperhinge/geometry';
import { pointAlong } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { add, leftOf, scale } from '@paperhinge/geometry/plane';
import type { Alteration } from '../alteration.js';
import { nothingBecame } from '../became/became.js';
import { liesWithin } from '../darts/contour.js';
import { refusal, saying } from '../darts/tellings.js';
import { grainOrVertical } from '../moved-edges/grain.js';
import { refusal as movedEdgesRefusal } from '../moved-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Draw a double-pointed dart within a piece, as at the waist of a dress cut in one. */
export interface AddContourDart {
  readonly piece: string;
  readonly name: string;
  /** Name of the level that it is widest on. */
  readonly line: string;
  /** mm along that level from its start. */
  readonly out: number;
  /** mm that it takes in there. */
  readonly intake: number;
  /** mm up and down along the grain to its two points. */
  readonly above: number;
  readonly below: number;
}

/**
 * Draws a double-pointed dart: widest on a level, its middle line along the grain, its four sides straight. The outline
 * stays; the girth on that level becomes smaller by what it takes in, once for each time the piece stands in the
 * garment. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-line`, `dart-name-taken`, `contour-dart-leaves-piece`; those of `perform`
 */
export const addContourDart = (pattern: Pattern, parameters: AddContourDart): Alteration =>
  perform(addContourDartVerb, pattern, parameters);

export const addContourDartForm = formOf<AddContourDart>()({
  verb: 'add contour dart',
  does: 'Draws a double-pointed dart within a piece, widest on a level and pointed above and below it.',
  fields: {
    piece: field.piece(),
    name: field.newName(),
    line: field.drawnLine(),
    out: field.size(),
    intake: field.size(),
    above: field.size(),
    below: field.size(),
  },
  leaves: ({ piece }) => ({ changed: [piece] }),
  sentence:
    'Draw the contour dart "{name}" on the {line} line of the {piece}, {out} along it, taking in {intake}, {above} up and {below} down',
  startsAt: { line: ['piece', 'line'], piece: ['piece'] },
  example: {
    pattern: 'woven-shift',
    step: {
      piece: 'back',
      name: 'waist',
      line: 'waist',
      out: '110 mm',
      intake: '30 mm',
      above: '150 mm',
      below: '140 mm',
    },
  },
});
export const addContourDartVerb = /* @__PURE__ */ verbFrom(addContourDartForm, (pattern, parameters) => {
  const piece = pieceNamed(pattern, parameters.piece);
  const where = { piece: piece.name };
  const { name, intake, above, below } = parameters;
  const level = piece.lines.find(l => l.name === parameters.line);
  if (!level)
    throw movedEdgesRefusal(
      'unknown-line',
      { ...where, name: parameters.line, names: piece.lines.map(l => l.name) },
      where,
    );
  if (piece.lines.some(l => l.kind === 'dart' && l.name === name))
    throw refusal('dart-name-taken', { piece: where, name }, where);
  const corners = cornersOf(piece, level, parameters);
  if (corners === undefined || !liesWithin(piece, polyline(...corners, corners[0]!)))
    throw refusal('contour-dart-leaves-piece', { piece: where, name }, where);
  const dart: PieceLine = { kind: 'dart', name, path: polyline(...corners, corners[0]!) };
  return {
    pattern: withPiece(pattern, { ...piece, lines: [...piece.lines, dart] }),
    became: nothingBecame,
    did: saying('added-contour-dart', {
      piece: where,
      name,
      line: { line: level.name },
      intakeMm: intake,
      aboveMm: above,
      belowMm: below,
    }),
    findings: [],
  };
});

/** Its two points and the two places where it is widest, clockwise; nothing where the level is not so long. */
function cornersOf(piece: Piece, { path }: PieceLine, wish: AddContourDart): readonly Point[] | undefined {
  const { out, intake, above, below } = wish;
  if (out > pathLength(path)) return undefined;
  const middle = pointAlong(path, out);
  const { grain } = grainOrVertical(piece);
  // Up is away from the bottom of the page, whichever way the grain's arrow points.
  const up = grain.y > 0 ? scale(grain, -1) : grain;
  const aside = scale(leftOf(up), -intake / 2);
  return [
    add(middle, scale(up, above)),
    add(middle, aside),
    add(middle, scale(up, -below)),
    add(middle, scale(aside, -1)),
  ];
}
