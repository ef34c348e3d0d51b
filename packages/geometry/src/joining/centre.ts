import type { Path } from '../path/path.js';
import { edgePath } from '../pattern/outline.js';
import { centreEdgeOf, isCentreLine } from '../pattern/roles/roles.js';
import type { Piece } from '../pattern/types.js';

/**
 * The line of a piece that lies on the garment's centre: the fold edge, else an edge of that role, else a line of it, else the grain line; undefined where the piece has none of them.
 */
export function centreOf(piece: Piece): Path | undefined {
  const edge = centreEdgeOf(piece);
  if (edge) return edgePath(piece, edge.name);
  const line = piece.lines.find(isCentreLine) ?? piece.lines.find(l => l.kind === 'grain');
  return line?.path;
}
