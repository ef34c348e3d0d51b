import type { Cutting, Edge, Path, Piece, PieceLine } from '@paperhinge/geometry';
import { usualAllowance } from '../dividing/usual-allowance.js';

/** A centre edge that opens now: a fold gets an allowance. */
export function openEdge(piece: Piece, edge: Edge): Edge {
  const { roleGuessed: _, ...rest } = edge;
  const allowance = edge.kind === 'fold' ? usualAllowance(piece) : edge.allowance;
  return { ...rest, role: 'opening', kind: edge.kind === 'fold' ? 'seam' : edge.kind, allowance };
}

/** The line that shows where the centre was, by the name of the edge that lay there. */
export const centreLine = (name: string, path: Path): PieceLine => ({
  kind: 'placement',
  name,
  path,
  role: 'centre',
});

/** What was cut on the fold is cut as a pair. */
export function asPair(piece: Piece): Piece {
  const paired = (cutting: Cutting): Cutting => ({ ...cutting, count: 2 * cutting.count, mirrored: true });
  const { alsoCut } = piece;
  return { ...piece, cutting: paired(piece.cutting), ...(alsoCut ? { alsoCut: alsoCut.map(paired) } : {}) };
}
