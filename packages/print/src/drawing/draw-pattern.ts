import type { Pattern } from '@paperhinge/geometry';
import { requireWhole } from '@paperhinge/geometry/internal';
import { locating } from '@paperhinge/geometry/sayings';
import { drawPiece, type PieceDrawing } from './draw-piece.js';
import type { TypeMeasure } from './ink.js';
import { type PieceShape, type PieceStyle, pieceShape } from './piece-shape.js';

/** The lines of every piece and the paper they take, in pattern order. @throws PatternError as `drawPattern` */
export const pieceShapes = (
  pattern: Pattern,
  measure: TypeMeasure,
  options: PieceStyle = {},
): readonly PieceShape[] =>
  pattern.pieces.map(piece =>
    locating({ piece: piece.name }, () => pieceShape(piece, pattern, measure, options)),
  );

/** How pieces are drawn, and what stood there before. */
export interface PatternStyle extends PieceStyle {
  /** The pattern before an alteration: pieces of the same name are ghosted under the new ones. */
  readonly before?: Pattern;
}

/**
 * Every piece of a pattern as it is drawn, in pattern order.
 * @throws PatternError whatever a piece's cutting line refuses, naming the piece
 */
export function drawPattern(
  pattern: Pattern,
  measure: TypeMeasure,
  { before, ...style }: PatternStyle = {},
): readonly PieceDrawing[] {
  requireWhole(pattern);
  if (before !== undefined) requireWhole(before);
  return pattern.pieces.map(piece => {
    const then = before?.pieces.find(p => p.name === piece.name);
    return locating({ piece: piece.name }, () =>
      drawPiece(piece, pattern, measure, then ? { ...style, before: then } : style),
    );
  });
}
