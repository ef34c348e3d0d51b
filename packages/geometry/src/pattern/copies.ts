import { foldEdgeOf } from './outline.js';
import type { Piece, PieceRole } from './types.js';

/**
 * How often an edge of a piece stands in the garment: as often as the piece is cut, over the layers that lie on one
 * another, and twice that where it is cut on a fold. What is cut besides (of lining, of interfacing) does not count.
 */
export const copiesInGarment = (piece: Pick<Piece, 'outline' | 'cutting'>): number =>
  (piece.cutting.count / (piece.cutting.layers ?? 1)) * (foldEdgeOf(piece) ? 2 : 1);

/**
 * Whether the copies of a piece that is sewn to itself by two different edges go round the body in one ring, as gores
 * do, each sewn to the next; else each copy closes by itself, as a pair of sleeves does. Two are gores if they are cut
 * alike, a pair of limbs if they mirror each other, unless the piece's role says which.
 */
export function goRoundTogether(piece: Pick<Piece, 'outline' | 'cutting' | 'role'>): boolean {
  const copies = copiesInGarment(piece);
  if (isLimb(piece)) return false;
  if (piece.role !== undefined && bodyRoles.has(piece.role)) return copies > 1;
  return copies > 2 || (copies === 2 && !piece.cutting.mirrored);
}

/** Whether a piece is one of a pair of limbs by its role: a sleeve or a trouser leg. */
export const isLimb = ({ role }: Pick<Piece, 'role'>): boolean => role === 'sleeve' || role === 'trouser';

const bodyRoles: ReadonlySet<PieceRole> = new Set(['bodice', 'yoke', 'skirt']);
