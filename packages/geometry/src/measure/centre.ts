import type { Path } from '../path/path.js';
import { edgeParts, edgePath, foldEdgeOf } from '../pattern/outline.js';
import type { Edge, Piece } from '../pattern/types.js';

/** Names that say "the garment's centre line": `centre front`, `centre-back`, and the other spelling. */
export const isCentreName = (name: string): boolean => /^cent(re|er)\b/i.test(name);

/** Whether an edge lies on the garment's centre line: the fold, or an edge of that role. */
export const isCentreEdge = ({ kind, role, name }: Edge): boolean =>
  kind === 'fold' || role === 'centre' || (role === undefined && isCentreName(name));

/**
 * The line of a piece that lies on the garment's centre: the fold edge, else an edge of that role, else a line named
 * so, else the grain line; undefined where the piece has none of them.
 */
export function centreOf(piece: Piece): Path | undefined {
  const edge = foldEdgeOf(piece) ?? edgeParts(piece).find(isCentreEdge);
  if (edge) return edgePath(piece, edge.name);
  const line = piece.lines.find(l => isCentreName(l.name)) ?? piece.lines.find(l => l.kind === 'grain');
  return line?.path;
}
