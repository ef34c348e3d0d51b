import { edgeNames, type Pattern, type Piece } from '@paperhinge/geometry';
import { refusal } from './tellings.js';

/** @throws PatternError `piece-name-taken` */
export function requireFreePieceName(pattern: Pattern, name: string): void {
  if (pattern.pieces.some(p => p.name === name)) throw refusal('piece-name-taken', { name }, { piece: name });
}

/** @throws PatternError `seam-name-taken` */
export function requireFreeSeamName(pattern: Pattern, name: string): void {
  if (pattern.seams.some(s => s.name === name)) throw refusal('seam-name-taken', { name }, { seam: name });
}

/** @throws PatternError `edge-name-taken`: edges, darts and pleats of a piece share one list of names */
export function requireFreeEdgeName(piece: Piece, name: string): void {
  const taken = edgeNames(piece).includes(name) || piece.outline.parts.some(part => part.name === name);
  if (taken) throw refusal('edge-name-taken', { piece: { piece: piece.name }, name }, { piece: piece.name });
}

/** What a division needs free: the new piece's name, its seam's, and its edge's on the old piece. */
export function requireFreeForDivision(
  pattern: Pattern,
  piece: Piece,
  { name, seam }: { readonly name: string; readonly seam: string },
): void {
  requireFreePieceName(pattern, name);
  requireFreeSeamName(pattern, seam);
  requireFreeEdgeName(piece, seam);
}
