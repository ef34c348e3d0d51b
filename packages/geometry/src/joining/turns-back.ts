import type { Piece, PieceRole } from '../pattern/types.js';

/**
 * Whether a piece lies on the one it is sewn to rather than running on beyond the seam: turned back under it (a facing, a
 * lining, a pocket bag, a fly shield), or drafted to lie along its edge.
 */
export const turnsBack = ({ role, madeFor }: Pick<Piece, 'role' | 'madeFor'>): boolean =>
  madeFor !== undefined || (role !== undefined && under.has(role));

/** Whether a piece must lie under the one it is sewn to with the same shape at its ends. */
export const liesUnder = ({ role }: Pick<Piece, 'role'>): boolean => role === 'facing' || role === 'lining';

const under: ReadonlySet<PieceRole> = new Set([
  'facing',
  'lining',
  'interfacing',
  'stay',
  'binding',
  'pocket',
  'placket',
]);
