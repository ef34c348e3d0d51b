import {
  distance,
  type EdgePosition,
  edgePath,
  identity,
  locating,
  type Pattern,
  PatternError,
  type Piece,
  pathEnd,
  pathLength,
  pathStart,
  pieceNamed,
  resolvePosition,
  rotation,
  tolerances,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { dartAngle } from '../hinge/assemble.js';
import { dartNamed } from '../hinge/dart-named.js';
import { grainCrossing } from '../hinge/grain-crossing.js';
import { holdingSection } from '../hinge/holding.js';
import { openingFindings } from '../hinge/opening-findings.js';
import { cutApart } from '../hinge/sections.js';
import { swing } from '../hinge/swing.js';
import { degrees, millimetres, percent } from '../hinge/wording.js';

/** Close a dart, wholly or a share of it, by opening another edge. */
export interface CloseDart {
  readonly piece: string;
  readonly dart: string;
  readonly into: string;
  readonly at?: EdgePosition;
  /** 0 to 1. */
  readonly share: number;
}

/**
 * Closes a dart, wholly or in part, into an edge: slashes from that edge to the dart's drawn apex and turns the side
 * that holds neither fold, centre nor grain about the apex, by `share` of the angle between the chords apex-A and
 * apex-B. The edge opens by 2 R sin(θ/2), R being the slash's length. Default place of the slash: where the grain
 * line through the apex first meets the edge, else the edge's middle. The two edges at the dart keep their names.
 *
 * @throws PatternError `unknown-piece`, `unknown-dart`, `unknown-edge`, `share-out-of-range`, `dart-legs-differ`
 *   (closing wholly, legs more than 1 mm apart), `slash-leaves-piece`, `slash-crosses-dart`, `slash-too-short`,
 *   `outline-tangled`, and those of `resolvePosition`
 */
export function closeDart(pattern: Pattern, parameters: CloseDart): Alteration {
  const { share } = parameters;
  const piece = pieceNamed(pattern, parameters.piece);
  return locating({ piece: piece.name, edge: parameters.into }, () => {
    if (!(share >= 0 && share <= 1))
      throw new PatternError('share-out-of-range', {
        message: `A dart cannot be closed by ${percent(share)}.`,
        remedy: 'Give a share from 0 to 100 %.',
      });
    const dart = dartNamed(piece, parameters.dart);
    if (share === 1) checkLegs(piece, parameters.dart);
    const along = slashPlace(piece, parameters);
    const cutPiece = cutApart(piece, [{ from: { edge: parameters.into, along }, to: { dart: dart.name } }]);
    const holding = holdingSection(cutPiece);
    // To the left of the slash lies the outline that leads on to mouth end A, to the right the one from B.
    const angle = share * dartAngle(dart);
    const turned = rotation(cutPiece.beside[0]!.left === holding ? -angle : angle, dart.apex);
    const motions = cutPiece.sections.map((_, i) => (i === holding ? identity : turned));
    const swung = swing(cutPiece, motions, holding, share === 1 ? { closing: [dart.name] } : {});
    const opened = swung.openings[0]?.openedMm ?? 0;
    const whole = degrees(Math.abs(dartAngle(dart)));
    const what =
      share === 1
        ? `closed dart ${dart.name} of ${piece.name} (${whole})`
        : `closed ${percent(share)} of dart ${dart.name} of ${piece.name} (${degrees(Math.abs(angle))} of ${whole})`;
    return {
      pattern: withPiece(pattern, swung.piece),
      did: `${what} into ${parameters.into}, ${millimetres(along)} from its start; ${parameters.into} opened by ${millimetres(opened)}`,
      findings: openingFindings(piece.name, swung),
    };
  });
}

function slashPlace(piece: Piece, { dart, into, at }: CloseDart): number {
  if (at) return resolvePosition(piece, into, at);
  return grainCrossing(piece, dartNamed(piece, dart).apex, into) ?? pathLength(edgePath(piece, into)) / 2;
}

function checkLegs(piece: Piece, name: string): void {
  const { legs, apex } = dartNamed(piece, name);
  const a = distance(pathStart(legs[0]), apex),
    b = distance(pathEnd(legs[1]), apex);
  if (Math.abs(a - b) <= tolerances.dartLegTolerance + tolerances.coincidenceTolerance) return;
  throw new PatternError('dart-legs-differ', {
    message: `The legs of dart "${name}" are ${a.toFixed(2)} and ${b.toFixed(2)} mm long.`,
    remedy: 'Redraw the dart so that its legs differ by no more than 1 mm.',
  });
}
