import type { Edge, Piece } from '@paperhinge/geometry';
import { edgesOfRole, partsOfEdge } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/**
 * The neck of a piece: the only edge of that role.
 * @throws PatternError `no-neck`; `neck-interrupted` where a dart or an inset parts it
 */
export function neckOf(piece: Piece): Edge {
  const necks = edgesOfRole(piece, 'neck');
  const where = { piece: piece.name };
  const [name] = necks.includes('neck') ? ['neck'] : necks;
  if (name === undefined || (necks.length > 1 && name !== 'neck'))
    throw refusal('no-neck', { piece: where, necks: necks.map(edge => ({ edge })) }, where);
  const parts = partsOfEdge(piece, name);
  if (parts.length === 1) return parts[0]!;
  const edge = { ...where, edge: name };
  throw refusal('neck-interrupted', { edge }, edge);
}
