import type { Pattern, Piece, PieceRole } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { finding } from './tellings.js';
import { isTie } from './ties.js';

/**
 * Pieces that no seam takes in: a seam is likely missing. A piece that was drafted for an edge is known to belong
 * there; what is fused, or laid on where a placement line shows (a patch pocket), is not sewn into a seam; a belt hangs loose. Where the pattern lists no seam at all, that is said
 * once: nothing was walked.
 */
export function unsewnFindings(pattern: Pattern): readonly Finding[] {
  const { pieces, seams } = pattern;
  if (seams.length === 0) return [finding('warning', 'no-seams', {}, { pieces: pieces.length })];
  const isLoose = (piece: Piece) => piece.role === 'strip' && isTie(pattern, piece);
  const sewn = new Set(seams.flatMap(({ a, b }) => [...a, ...b].map(run => run.piece)));
  return pieces
    .filter(piece => !sewn.has(piece.name) && !isLaidOn(piece, pieces) && !isLoose(piece))
    .map(({ name }) => finding('warning', 'piece-in-no-seam', { piece: name }, { piece: { piece: name } }));
}

const isLaidOn = ({ name, madeFor, role }: Piece, pieces: readonly Piece[]): boolean =>
  madeFor !== undefined ||
  (role !== undefined && fused.has(role)) ||
  pieces.some(({ lines }) =>
    lines.some(line => line.kind === 'placement' && (line.name === name || role === 'pocket')),
  );

const fused: ReadonlySet<PieceRole> = new Set(['interfacing', 'stay']);
