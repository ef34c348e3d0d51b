import { type Dart, edgePath, type Pattern, type Piece, pathLength, pieceNamed } from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { distance, identity, rotation } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration, Redrawn } from '../alteration.js';
import { dartAngle } from '../hinge/assemble.js';
import { cutToDart } from '../hinge/cut-to-dart.js';
import { dartNamed } from '../hinge/dart-named.js';
import { inDegrees } from '../hinge/degrees.js';
import { grainCrossing } from '../hinge/grain-crossing.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { swing } from '../hinge/swing.js';

import type { Filled } from '../verb/field.js';
import * as field from '../verb/fields.js';
import { formOf, performUnmarked, verbFrom } from '../verb/verb.js';
import { refusal, saying } from './tellings.js';

/** Close a dart, wholly or a share of it, by opening another edge. */
export interface CloseDart {
  readonly piece: string;
  readonly dart: string;
  readonly into: string;
  readonly at?: EdgePosition;
  /** 0 to 1; default 1, the whole dart. */
  readonly share?: number;
}

/**
 * Closes a dart, wholly or in part, into an edge: slashes from that edge to the dart's drawn apex and turns the side
 * that holds neither fold, centre nor grain about the apex, by `share` of the angle between the chords apex-A and
 * apex-B. The edge opens by 2 R sin(θ/2), R being the slash's length. Default place of the slash: where the grain line
 * through the apex first meets the edge, else the edge's middle. The two edges at the dart keep their names. Source:
 * Armstrong, Patternmaking for Fashion Design (1987), dart manipulation [memory].
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-edge`, `dart-legs-differ` (closing wholly, legs more
 *   than 1 mm apart), `slash-leaves-piece`, `slash-crosses-dart`, `slash-too-short`, `outline-tangled`, and those of
 *   `perform` and `resolvePosition`
 */
export const closeDart = (pattern: Pattern, parameters: CloseDart): Alteration =>
  performUnmarked({ verb, fields, alter: closed }, pattern, parameters);

const verb = 'close dart';
const fields = {
  piece: field.piece(),
  dart: field.dart(),
  into: { ...field.edge(), several: 'share dart' },
  at: field.optional(field.place('into')),
  share: field.usually(field.share(), 1),
};

export const closeDartForm = /* @__PURE__ */ formOf<CloseDart>()({
  verb,
  does: 'Slashes from an edge to the point of a dart, leaves a hinge of paper there, and swings the side until the dart has closed and the edge has opened.',
  fields,
  sentence: 'Close the {dart} dart of the {piece} into the {into}[ at {at}][, {share} of it]',
  startsAt: { dart: ['piece', 'dart'], edge: ['piece', 'into'] },
  example: { pattern: 'woven-shift', step: { piece: 'front', dart: 'bust', into: 'hem' } },
});
export const closeDartVerb = /* @__PURE__ */ verbFrom(closeDartForm, closed);

function closed(pattern: Pattern, { share, ...parameters }: Filled<CloseDart, typeof fields>): Redrawn {
  const piece = pieceNamed(pattern, parameters.piece);
  return locating({ piece: piece.name, edge: parameters.into }, () => {
    const dart = dartNamed(piece, parameters.dart);
    if (share === 1) checkLegs(piece, dart);
    const along = slashPlace(piece, dart, parameters);
    const cutPiece = cutToDart(piece, { edge: parameters.into, along }, dart.name);
    const holding = holdingSection(cutPiece);
    // To the left of the slash lies the outline that leads on to mouth end A, to the right the one from B.
    const whole = dartAngle(dart),
      wholeDeg = inDegrees(abs(whole)),
      angle = share * whole;
    const turned = rotation(cutPiece.beside[0]!.left === holding ? -angle : angle, dart.apex);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : turned));
    const swung = swing(cutPiece, motions, holding, share === 1 ? { closing: [dart.name] } : {});
    return {
      pattern: withPiece(pattern, swung.piece),
      became: swung.became,
      did: saying('closed-dart', {
        dart: { piece: piece.name, dart: dart.name },
        into: { edge: parameters.into },
        wholeDeg,
        closedDeg: share * wholeDeg,
        sharePercent: share * 100,
        alongMm: along,
        openedMm: swung.openings[0]?.openedMm ?? 0,
      }),
      findings: openingFindings(piece.name, swung),
    };
  });
}

function slashPlace(piece: Piece, { apex }: Dart, { into, at }: Pick<CloseDart, 'into' | 'at'>): number {
  if (at) return resolvePosition(piece, into, at);
  return grainCrossing(piece, apex, into) ?? pathLength(edgePath(piece, into)) / 2;
}

function checkLegs(piece: Piece, { name, legs, apex }: Dart): void {
  const a = distance(pathStart(legs[0]), apex),
    b = distance(pathEnd(legs[1]), apex);
  if (abs(a - b) <= tolerances.dartLegTolerance + tolerances.coincidenceTolerance) return;
  throw refusal('dart-legs-unlike', { dart: { piece: piece.name, dart: name }, firstMm: a, secondMm: b });
}
