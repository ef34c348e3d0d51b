import { type Edge, edgeNames, PatternError, type Piece, partsOfEdge } from '@paperhinge/geometry';

/**
 * The neck of a piece: the edge named `neck`, else the only one whose name speaks of a neck.
 * @throws PatternError `no-neck`; `dart-in-neck` where a dart interrupts it
 */
export function neckOf(piece: Piece): Edge {
  const names = edgeNames(piece);
  const candidates = names.includes('neck') ? ['neck'] : names.filter(n => /neck/i.test(n));
  const where = { piece: piece.name };
  if (candidates.length !== 1)
    throw new PatternError('no-neck', {
      message: `Piece "${piece.name}" has ${candidates.length === 0 ? 'no edge' : 'several edges'} that could be its neck.`,
      remedy: 'Name its neck edge "neck".',
      where,
    });
  const parts = partsOfEdge(piece, candidates[0]!);
  if (parts.length === 1) return parts[0]!;
  throw new PatternError('dart-in-neck', {
    message: `The neck of "${piece.name}" is interrupted (by a dart or an inset), so that it cannot be recut in one.`,
    remedy: 'Close or move the dart first; cut an inset once only.',
    where: { ...where, edge: candidates[0]! },
  });
}
