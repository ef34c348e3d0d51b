import { type EdgeRun, type Pattern, type Piece, pieceNamed, type Seam } from '@paperhinge/geometry';
import { partsOfEdge } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/** A seam that sews one whole edge of a piece to one of another. */
export interface TwoEdges {
  readonly seam: Seam;
  readonly a: { readonly piece: Piece; readonly run: EdgeRun };
  readonly b: { readonly piece: Piece; readonly run: EdgeRun };
}

/**
 * @throws PatternError `seam-not-of-two-edges` where a side has several edges, or a part of one; `seam-of-one-piece`;
 *   `join-through-dart` where a dart or pleat parts an edge
 */
export function twoEdgesOf(pattern: Pattern, seam: Seam): TwoEdges {
  const named = { seam: seam.name };
  const [a, b] = [seam.a, seam.b].map(side => {
    const [run] = side;
    if (side.length !== 1 || run!.part) throw refusal('seam-not-of-two-edges', { seam: named }, named);
    const piece = pieceNamed(pattern, run!.piece);
    if (partsOfEdge(piece, run!.edge).length > 1) {
      const edge = { piece: run!.piece, edge: run!.edge };
      throw refusal('join-through-dart', { seam: named, edge }, edge);
    }
    return { piece, run: run! };
  });
  if (a!.piece === b!.piece) throw refusal('seam-of-one-piece', { seam: named }, named);
  return { seam, a: a!, b: b! };
}
