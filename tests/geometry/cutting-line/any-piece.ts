import type { Piece } from '@paperhinge/geometry';
import { outlinePath } from '@paperhinge/geometry/pattern';
import fc from 'fast-check';
import { edgesOf, evaluated, polylineCrossings } from './independent.js';
import { at, edge, pieceOf } from './pieces.js';

/**
 * Plausible pieces: three to eight corners round a middle, edges straight or gently curved either way, allowances of
 * the trade on each, seams, hems and raw edges in any order. Corners sharper than 12° and edges that cross are left
 * out.
 */
const corner = fc.record({
  radius: fc.double({ min: 60, max: 220, noNaN: true }),
  shift: fc.double({ min: 0, max: 0.7, noNaN: true }),
  bulge: fc.option(
    fc.tuple(
      fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    ),
  ),
  allowance: fc.constantFrom(0, 6.35, 7, 10, 15, 15.875, 25),
  kind: fc.constantFrom('seam' as const, 'seam' as const, 'hem' as const, 'raw' as const),
});
export const anyPiece = (rule?: 'mitre') =>
  fc
    .array(corner, { minLength: 3, maxLength: 8 })
    .map(corners => {
      const n = corners.length;
      const points = corners.map(({ radius, shift }, i) => {
        const angle = ((i + shift) / n) * 2 * Math.PI;
        return at(radius * Math.cos(angle), radius * Math.sin(angle));
      });
      return pieceOf(
        corners.map(({ bulge, allowance, kind }, i) => {
          const p = points[i]!,
            q = points[(i + 1) % n]!;
          const d = at(q.x - p.x, q.y - p.y);
          const beside = (share: number, by: number) =>
            at(p.x + d.x * share - d.y * by * 0.6, p.y + d.y * share + d.x * by * 0.6);
          const segment = bulge
            ? ([p, beside(1 / 3, bulge[0]), beside(2 / 3, bulge[1]), q] as const)
            : ([p, q] as const);
          return edge(`e${i}`, [segment], { kind, allowance, ...(rule ? { start: rule, end: rule } : {}) });
        }),
      );
    })
    .filter(isSound);

function isSound(piece: Piece): boolean {
  const edges = edgesOf(piece);
  const sharp = edges.some((e, i) => {
    const u = evaluated(e.path.segments[0]!, 1).tangent;
    const v = evaluated(edges[(i + 1) % edges.length]!.path.segments[0]!, 0).tangent;
    return Math.abs(Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y)) > (168 * Math.PI) / 180;
  });
  return !sharp && polylineCrossings(outlinePath(piece.outline), 40).length === 0;
}
