import { type Dart, type Pattern, type Piece, type Point, pieceNamed } from '@paperhinge/geometry';
import { type EdgePosition, resolvePosition, withPiece } from '@paperhinge/geometry/pattern';
import { add, apply, identity, lerp, rotation, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { dartAngle } from '../hinge/assemble.js';
import { pointOfEnd } from '../hinge/cut.js';
import { dartNamed } from '../hinge/dart-named.js';
import { inDegrees } from '../hinge/degrees.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import { cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { finding, refusal, saying } from './tellings.js';

/** Close a dart and open it at another place, by the same angle about the pivot. */
export interface MoveDart {
  readonly piece: string;
  readonly dart: string;
  readonly to: { readonly edge: string /** Absent = the middle. */; readonly at?: EdgePosition };
  /** Name of a point mark; absent = the dart's apex. */
  readonly pivot?: string;
  /** mm the new stitched point is set back from the pivot along the new dart's axis; default 0. */
  readonly pointBack?: number;
}

/**
 * Moves a dart to another place, turning about a pivot (a point mark, else the dart's apex). The legs are first
 * redrawn straight from the mouth to the pivot; the dart is closed about it and opened by the same angle where a
 * slash from the new place meets the pivot, so the sum of angles about the pivot is kept. The new legs run straight
 * from the new mouth to the stitched point, set back from the pivot along the new axis. The edge that opens stays
 * one edge in two parts, and the dart keeps its name.
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-edge`, `unknown-mark`, `pivot-out-of-reach`,
 *   `point-back-too-long`, and those of the slash (`slash-leaves-piece`, `slash-crosses-dart`, `outline-tangled`);
 *   those of `perform`
 */
export const moveDart = (pattern: Pattern, parameters: MoveDart): Alteration =>
  perform(moveDartVerb, pattern, parameters);

const fields = {
  piece: field.piece(),
  dart: field.dart(),
  to: field.group<MoveDart['to']>({ edge: field.edge(), at: field.optional(field.place('edge')) }),
  pivot: field.optional(field.mark()),
  pointBack: field.usually(field.length(), 0),
};

export const moveDartVerb = verbOf<MoveDart>()({
  verb: 'move dart',
  does: 'Closes a dart and opens it at another place by the same angle, turning the pattern about the point of the dart or about a mark.',
  fields,
  sentence:
    'Move the {dart} dart of the {piece} to the {to.edge}[ at {to.at}][, turning about the {pivot}][, its point {point back} back]',
  startsAt: { dart: ['piece', 'dart'] },
  example: {
    pattern: 'woven-shift',
    step: { piece: 'front', dart: 'bust', to: { edge: 'shoulder', at: '1/2' }, 'point back': 20 },
  },
  alter: moved,
});

function moved(pattern: Pattern, parameters: MoveDart & { readonly pointBack: number }): Alteration {
  const piece = pieceNamed(pattern, parameters.piece);
  const { to, pointBack } = parameters;
  return locating({ piece: piece.name, edge: to.edge }, () => {
    const pivot = pivotOf(piece, parameters);
    const redrawn = withLegsTo(piece, dartNamed(piece, parameters.dart), pivot);
    const dart = dartNamed(redrawn, parameters.dart);
    const end = { edge: to.edge, along: resolvePosition(redrawn, to.edge, to.at ?? { share: 0.5 }) };
    const cutPiece = cutApart(redrawn, [{ from: end, to: { dart: dart.name } }]);
    const holding = holdingSection(cutPiece);
    const { left } = cutPiece.beside[0]!;
    const angle = dartAngle(dart);
    const turned = rotation(left === holding ? -angle : angle, pivot);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : turned));
    const place = pointOfEnd(redrawn, end);
    const axis = subtract(lerp(place, apply(turned, place), 0.5), pivot);
    if (!(pointBack >= 0 && pointBack < Math.hypot(axis.x, axis.y)))
      throw refusal('point-back-too-long', {
        dart: { piece: piece.name, dart: dart.name },
        deepMm: Math.hypot(axis.x, axis.y),
        backMm: pointBack,
      });
    const apex = add(pivot, scale(unit(axis), pointBack));
    const swung = swing(cutPiece, motions, holding, {
      closing: [dart.name],
      darts: [{ cut: 0, end: 'from', name: dart.name, apex }],
    });
    return {
      pattern: withPiece(pattern, swung.piece),
      became: swung.became,
      did: saying('moved-dart', {
        dart: { piece: piece.name, dart: dart.name },
        ...(parameters.pivot === undefined ? {} : { about: { mark: parameters.pivot } }),
        to: { edge: to.edge },
        angleDeg: inDegrees(Math.abs(angle)),
        alongMm: end.along,
        openedMm: swung.openings[0]?.openedMm ?? 0,
        backMm: pointBack,
      }),
      findings: [...openingFindings(piece.name, swung), ...pressingLost(piece, dart)],
    };
  });
}

function pivotOf(piece: Piece, { pivot, dart }: MoveDart): Point {
  if (pivot === undefined) return dartNamed(piece, dart).apex;
  const points = piece.marks.filter(m => m.kind === 'point');
  const found = points.find(m => m.name === pivot);
  if (found) return found.at;
  throw refusal('unknown-mark', { piece: piece.name, name: pivot, names: points.map(m => m.name) });
}

const pressingLost = (piece: Piece, { name, pressed }: Dart): Alteration['findings'] =>
  pressed === undefined
    ? []
    : [
        finding(
          'note',
          'pressing-by-default',
          { piece: piece.name },
          { dart: { piece: piece.name, dart: name } },
        ),
      ];
