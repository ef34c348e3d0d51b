import type { Path } from '../path/path.js';
import { edgeParts, edgePath, foldEdgeOf } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';

/** Names that say "the garment's centre line": `centre front`, `centre-back`, and the other spelling. */
export const isCentreName = (name: string): boolean => /^cent(re|er)\b/i.test(name);

/**
 * The line of a piece that lies on the garment's centre: the fold edge, else an edge named `centre ...`, else a line
 * of that name, else the grain line; undefined where the piece has none of them.
 */
export function centreOf(piece: Piece): Path | undefined {
  const fold = foldEdgeOf(piece);
  if (fold) return edgePath(piece, fold.name);
  const edge = edgeParts(piece).find(e => isCentreName(e.name));
  if (edge) return edgePath(piece, edge.name);
  const line = piece.lines.find(l => isCentreName(l.name)) ?? piece.lines.find(l => l.kind === 'grain');
  return line?.path;
}
