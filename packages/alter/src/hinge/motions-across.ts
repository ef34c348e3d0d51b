import { type Affine, compose, identity } from '@paperhinge/geometry/plane';
import type { CutPiece } from './cut-piece.js';

/**
 * The motion of each section of a cut piece, outwards from the one that stays: each follows its neighbour and adds the
 * motion across the cut between them.
 * @param across for each cut, the rigid motion of the section to its left where the one to its right stays
 */
export function motionsAcross(
  cutPiece: CutPiece,
  holding: number,
  across: readonly Affine[],
): readonly Affine[] {
  const motions: (Affine | undefined)[] = cutPiece.sections.map((_, i) =>
    i === holding ? identity : undefined,
  );
  const visit = (section: number) => {
    for (const [cut, { left, right }] of cutPiece.beside.entries()) {
      if (left === right || (left !== section && right !== section)) continue;
      const next = left === section ? right : left;
      if (motions[next]) continue;
      const step = left === section ? inverse(across[cut]!) : across[cut]!;
      motions[next] = compose(step, motions[section]!);
      visit(next);
    }
  };
  visit(holding);
  return motions.map(motion => motion ?? identity);
}

/** Of a rigid motion: its linear part is orthogonal, so its transpose turns back. */
function inverse({ a, b, c, d, e, f }: Affine): Affine {
  return { a, b: c, c: b, d, e: -(a * e + b * f), f: -(c * e + d * f) };
}
