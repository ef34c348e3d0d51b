import type { Dart, Piece, Point } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { distance, lerp, subtract, unit } from '@paperhinge/geometry/plane';
import { refusal } from './tellings.js';

/** The two ends of a dart's mouth, in outline order. */
export const mouthOf = ({ legs }: Dart): readonly [Point, Point] => [pathStart(legs[0]), pathEnd(legs[1])];

/** mm between the ends of a dart's mouth: what it takes in. */
export const intakeOf = (dart: Dart): number => distance(...mouthOf(dart));

/** The middle of a dart's mouth. */
export const middleOfMouth = (dart: Dart): Point => lerp(...mouthOf(dart), 0.5);

/** From the middle of its mouth towards its point, of length 1. */
export const inwardsOf = (dart: Dart): Point => unit(subtract(dart.apex, middleOfMouth(dart)));

/** mm from the middle of its mouth to its point. */
export const depthOf = (dart: Dart): number => distance(middleOfMouth(dart), dart.apex);

/** @throws PatternError `dart-name-taken`: edges, darts and pleats of a piece share one list of names */
export function requireFreeDartName(piece: Piece, name: string): void {
  if (piece.outline.parts.some(part => part.name === name))
    throw refusal('dart-name-taken', { piece: { piece: piece.name }, name }, { piece: piece.name });
}
