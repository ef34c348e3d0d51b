import { pathLength } from '../path/length.js';
import { edgeNamed, edgeNames, edgePath } from '../pattern/outline.js';
import { pieceRoleOf } from '../pattern/roles/roles.js';
import type { Pattern, Piece } from '../pattern/types.js';

/**
 * Whether a piece is a tie, a strap or a belt: a strip made for no edge, many times as long as broad, folded along its
 * length, of which nothing else is sewn to a long edge. It is sewn to itself and turned.
 */
export function isTie({ seams }: Pattern, piece: Piece): boolean {
  const { name, madeFor, lines } = piece;
  const role = pieceRoleOf(piece);
  if (madeFor !== undefined || (role !== undefined && role !== 'strip')) return false;
  const edges = edgeNames(piece)
    .map(edge => ({ ...edgeNamed(piece, edge), lengthMm: pathLength(edgePath(piece, edge)) }))
    .sort((one, other) => other.lengthMm - one.lengthMm);
  const long = edges.slice(0, 2),
    short = edges.slice(2);
  const isFolded = long.some(e => e.kind === 'fold') || lines.some(line => line.kind === 'fold');
  const isFree = (edge: string): boolean =>
    !seams.some(({ a, b }) => [...a, ...b].some(run => run.piece === name && run.edge === edge));
  return (
    isFolded &&
    short.reduce((sum, e) => sum + e.lengthMm, 0) * slender <= long[1]!.lengthMm &&
    long.every(e => e.kind === 'fold' || (e.kind === 'seam' && e.allowance > 0 && isFree(e.name))) &&
    long.some(e => e.kind === 'seam')
  );
}

/** A tie is at least four times as long as both its ends are broad. Common practice, no source. */
const slender = 4;
