import type { Piece } from '@paperhinge/geometry';
import { edgeParts } from '@paperhinge/geometry/pattern';

/** mm. What most seam edges of a piece have. */
export function usualAllowance(piece: Piece): number {
  const all = edgeParts(piece).flatMap(({ kind, allowance }) => (kind === 'seam' ? [allowance] : []));
  const often = (mm: number): number => all.filter(other => other === mm).length;
  return all.reduce((best, mm) => (often(mm) > often(best) ? mm : best), all[0] ?? 0);
}
