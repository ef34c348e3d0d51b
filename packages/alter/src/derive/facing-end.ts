import { type Edge, type Piece, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { refusal } from './tellings.js';

/**
 * How far a facing reaches along an edge beside what it faces, in mm: as wide as it is.
 * @throws PatternError `facing-end-too-wide` where that stretch of the edge is not so long
 */
export function facingEnd(piece: Piece, { name, path }: Edge, widthMm: number): number {
  const edgeMm = pathLength(path);
  const edge = { piece: piece.name, edge: name };
  if (widthMm >= edgeMm - tolerances.joiningGap)
    throw refusal('facing-end-too-wide', { edge, widthMm, edgeMm }, edge);
  return widthMm;
}
