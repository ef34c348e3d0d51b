import type { Piece, PieceRole } from '../pattern/types.js';

/** Whether a piece is turned back under the one it is sewn to (a facing, a lining), or was drafted to lie along its edge. */
export const turnsBack = ({ role, madeFor }: Pick<Piece, 'role' | 'madeFor'>): boolean =>
  madeFor !== undefined || (role !== undefined && under.has(role));

/** Whether a piece must lie under the one it is sewn to with the same shape at its ends. */
export const liesUnder = ({ role }: Pick<Piece, 'role'>): boolean => role === 'facing' || role === 'lining';

const under: ReadonlySet<PieceRole> = new Set(['facing', 'lining', 'interfacing', 'stay', 'binding']);
