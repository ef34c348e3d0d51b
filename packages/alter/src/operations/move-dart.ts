import {
  add,
  apply,
  type Dart,
  type EdgePosition,
  identity,
  lerp,
  locating,
  type Pattern,
  PatternError,
  type Piece,
  type Point,
  pieceNamed,
  resolvePosition,
  rotation,
  scale,
  subtract,
  suggestion,
  unit,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { dartAngle } from '../hinge/assemble.js';
import { pointOfEnd } from '../hinge/cut.js';
import { dartNamed } from '../hinge/dart-named.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import { cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import { degrees, millimetres } from '../hinge/wording.js';

/** Close a dart and open it at another place, by the same angle about the pivot. */
export interface MoveDart {
  readonly piece: string;
  readonly dart: string;
  readonly to: { readonly edge: string; readonly at?: EdgePosition };
  /** Name of a point mark; absent = the dart's apex. */
  readonly pivot?: string;
  /** mm the new stitched point is set back from the pivot along the new dart's axis. */
  readonly pointBack: number;
}

/**
 * Moves a dart to another place, turning about a pivot (a point mark, else the dart's apex). The legs are first
 * redrawn straight from the mouth to the pivot; the dart is closed about it and opened by the same angle where a
 * slash from the new place meets the pivot, so the sum of angles about the pivot is kept. The new legs run straight
 * from the new mouth to the stitched point, set back from the pivot along the new axis. The edge that opens stays
 * one edge in two parts, and the dart keeps its name.
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-edge`, `unknown-mark`, `pivot-out-of-reach`,
 *   `point-back-too-long`, and those of the slash (`slash-leaves-piece`, `slash-crosses-dart`, `outline-tangled`)
 */
export function moveDart(pattern: Pattern, parameters: MoveDart): Alteration {
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
      throw new PatternError('point-back-too-long', {
        message: `The new dart is ${millimetres(Math.hypot(axis.x, axis.y))} deep; its point cannot be set back by ${millimetres(pointBack)}.`,
        remedy: 'Set it back by less than the depth of the dart.',
      });
    const apex = add(pivot, scale(unit(axis), pointBack));
    const swung = swing(cutPiece, motions, holding, {
      closing: [dart.name],
      darts: [{ cut: 0, end: 'from', name: dart.name, apex }],
    });
    const intake = swung.openings[0]?.openedMm ?? 0;
    const back = pointBack > 0 ? `, its point ${millimetres(pointBack)} back` : '';
    return {
      pattern: withPiece(pattern, swung.piece),
      did:
        `moved dart ${dart.name} of ${piece.name} (${degrees(Math.abs(angle))} about ${parameters.pivot ?? 'its point'}) ` +
        `to ${to.edge}, ${millimetres(end.along)} from its start: ${millimetres(intake)} wide there${back}`,
      findings: [...openingFindings(piece.name, swung), ...pressingLost(piece, dart)],
    };
  });
}

function pivotOf(piece: Piece, { pivot, dart }: MoveDart): Point {
  if (pivot === undefined) return dartNamed(piece, dart).apex;
  const points = piece.marks.filter(m => m.kind === 'point');
  const found = points.find(m => m.name === pivot);
  if (found) return found.at;
  throw new PatternError('unknown-mark', {
    message: `Piece "${piece.name}" has no point mark "${pivot}".`,
    remedy: suggestion(
      pivot,
      points.map(m => m.name),
      'point marks',
    ),
  });
}

const pressingLost = (piece: Piece, { name, pressed }: Dart): Alteration['findings'] =>
  pressed === undefined
    ? []
    : [
        {
          severity: 'note',
          code: 'pressing-by-default',
          where: { piece: piece.name },
          message: `Dart "${name}" was to be pressed its own way at the old place; at the new one it goes by the usual rule.`,
          remedy: 'Say anew which way to press it, if the rule does not suit.',
        },
      ];
