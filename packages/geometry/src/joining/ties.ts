import { pathLength } from '../path/length.js';
import { edgeNamed, edgeNames, edgePath } from '../pattern/outline.js';
import { pieceRoleOf } from '../pattern/roles/roles.js';
import type { Edge, Pattern, Piece, Seam } from '../pattern/types.js';

/**
 * Whether a piece is a tie, a strap or a belt that is sewn to itself and turned: a strip made for no edge, many times as
 * long as broad, of which nothing else is sewn to a long edge. It is folded along its length by its drawing, or must be,
 * as an end of it is sewn on while both its long edges have an allowance and nothing to take it in.
 */
export function isTie({ seams }: Pattern, piece: Piece): boolean {
  const strip = stripOf(seams, piece);
  if (!strip) return false;
  const { long, ends, isFolded } = strip;
  const isTurned = long.every(e => e.kind === 'fold' || (e.kind === 'seam' && e.allowance > 0));
  return (
    isTurned &&
    long.some(e => e.kind === 'seam') &&
    (isFolded || (ends > 0 && (piece.cutting.layers ?? 1) === 1))
  );
}

/** A piece that hangs loose by an end at least; `guessed` where its shape says so and not its maker. */
export interface LooseEnd {
  readonly piece: string;
  readonly guessed: boolean;
}

/**
 * The ties, straps, sashes and belts of a pattern that hang loose: strips of which one end at most is sewn on. Loops and
 * carriers whose place is marked are sewn on there by both ends.
 */
export const looseEnds = (pattern: Pattern): readonly LooseEnd[] =>
  pattern.pieces.flatMap(piece => {
    const strip = stripOf(pattern.seams, piece);
    if (!strip || strip.ends > 1 || isMarked(pattern, piece)) return [];
    const isKnown = piece.role === 'strip' && !piece.roleGuessed;
    // Of what no seam takes in yet nobody can say that it is no band.
    if (strip.ends === 0 && !strip.isFolded && piece.role !== 'strip') return [];
    return [{ piece: piece.name, guessed: !isKnown }];
  });

const isMarked = ({ pieces }: Pattern, { name }: Piece): boolean =>
  pieces.some(({ lines }) => lines.some(line => line.kind === 'placement' && line.name === name));

interface Strip {
  readonly long: readonly Edge[];
  readonly isFolded: boolean;
  /** How many of its ends are sewn to another piece, or lie on a fold. */
  readonly ends: number;
}

/** A piece as a strip made for no edge, whose long edges are sewn to nothing; undefined where it is none. */
function stripOf(seams: readonly Seam[], piece: Piece): Strip | undefined {
  const { name, madeFor, lines } = piece;
  const role = pieceRoleOf(piece);
  if (madeFor !== undefined || (role !== undefined && role !== 'strip')) return undefined;
  const edges = edgeNames(piece)
    .map(edge => ({ edge: edgeNamed(piece, edge), lengthMm: pathLength(edgePath(piece, edge)) }))
    .sort((one, other) => other.lengthMm - one.lengthMm);
  if (edges.length < 3) return undefined;
  const sewn = (edge: string) =>
    seams.filter(({ a, b }) => [...a, ...b].some(run => run.piece === name && run.edge === edge));
  const long = edges.slice(0, 2),
    short = edges.slice(2);
  const isSlender = short.reduce((sum, e) => sum + e.lengthMm, 0) * slender <= long[1]!.lengthMm;
  if (!isSlender || long.some(({ edge }) => sewn(edge.name).length > 0)) return undefined;
  const isOwn = ({ a, b }: Seam): boolean => [...a, ...b].every(run => run.piece === name);
  // Joined into a ring, or to its like, it is a band of some kind.
  if (short.some(({ edge }) => sewn(edge.name).some(isOwn))) return undefined;
  return {
    long: long.map(({ edge }) => edge),
    isFolded: long.some(({ edge }) => edge.kind === 'fold') || lines.some(line => line.kind === 'fold'),
    ends: short.filter(({ edge }) => edge.kind === 'fold' || sewn(edge.name).length > 0).length,
  };
}

/** A tie is at least four times as long as both its ends are broad. Common practice, no source. */
const slender = 4;
