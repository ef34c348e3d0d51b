import type { Piece } from '@paperhinge/geometry';
import { foldEdgeOf } from '@paperhinge/geometry/pattern';

/** How a piece is cut, in words: "cut 1 on fold", "cut 2, 1 mirrored", "cut 3". */
export function cutWords(piece: Piece): string {
  const { count, mirrored } = piece.cutting;
  if (foldEdgeOf(piece)) return `cut ${count} on fold`;
  return mirrored && count >= 2 ? `cut ${count}, ${Math.floor(count / 2)} mirrored` : `cut ${count}`;
}

/** Where a seam leads from an edge: the partner edges' names, each once, by piece. */
export const fabricWords = (piece: Piece): string =>
  piece.cutting.fabric === ''
    ? ''
    : /fabric|cloth|lining|interfacing/i.test(piece.cutting.fabric)
      ? piece.cutting.fabric
      : `${piece.cutting.fabric} fabric`;
