import type { Dart, Piece, Point } from '@paperhinge/geometry';
import { lerp } from '@paperhinge/geometry/plane';
import { dartNamed } from '../hinge/dart-named.js';
import { withLegsTo } from '../hinge/redrawn-legs.js';
import { middleOfMouth } from './mouth.js';

/**
 * A piece before one dart is closed into others: the one that closes is drawn to the pivot; those that stay only half
 * way to their mouths, so that paper to slash is left between them: their legs are drawn anew at the end, wherever they
 * ran.
 * @throws PatternError `pivot-out-of-reach` where one of them does not point to the pivot
 */
export function drawnToPivot(piece: Piece, closing: string, stays: readonly string[], pivot: Point): Piece {
  const { apex } = dartNamed(piece, closing);
  const drawn = (from: Piece, dart: Dart, to: Point): Piece => withLegsTo(from, dart, to);
  let out = piece;
  for (const name of stays) out = drawn(out, dartNamed(out, name), half(dartNamed(out, name)));
  // Whether each that stays points to the pivot at all, the others out of its way.
  const cleared = stays.length > 0 ? drawn(out, dartNamed(out, closing), half(dartNamed(out, closing))) : out;
  for (const name of stays) drawn(cleared, dartNamed(cleared, name), pivot);
  return pivot === apex ? out : drawn(out, dartNamed(out, closing), pivot);
}

const half = (dart: Dart): Point => lerp(dart.apex, middleOfMouth(dart), 0.5);
