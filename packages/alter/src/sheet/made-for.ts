import {
  type EdgeRef,
  edgeNames,
  type Finding,
  lengthInGarment,
  type Pattern,
  tolerances,
} from '@paperhinge/geometry';

/** What a band, facing, lining or stay was made for: its edges and how long they were in the garment, in mm. */
export interface MadeFor {
  readonly piece: string;
  readonly edges: readonly EdgeRef[];
  readonly lengthMm: number;
}

/** What every piece made for edges was made for, as those edges are now. */
export const madeForNow = (pattern: Pattern): readonly MadeFor[] =>
  pattern.pieces.flatMap(piece =>
    piece.madeFor && piece.madeFor.length > 0
      ? [
          {
            piece: piece.name,
            edges: piece.madeFor,
            lengthMm: lengthOf(pattern, piece.madeFor) ?? Number.NaN,
          },
        ]
      : [],
  );

/**
 * What pieces were made for, carried over a step: a piece that the step drafted (again) is made for the edges as
 * they are now; any other still for what its edges were, under the names they have now.
 */
export function madeForAfter(
  made: readonly MadeFor[],
  pattern: Pattern,
  drafted: readonly string[],
): readonly MadeFor[] {
  return madeForNow(pattern).map(now => {
    const before = made.find(m => m.piece === now.piece);
    return before && !drafted.includes(now.piece) ? { ...now, lengthMm: before.lengthMm } : now;
  });
}

/** Pieces whose edges are no longer as long as those they were made for: they will not fit. */
export function outgrown(pattern: Pattern, made: readonly MadeFor[]): readonly Finding[] {
  return made.flatMap(({ piece, edges, lengthMm }): readonly Finding[] => {
    const now = lengthOf(pattern, edges);
    const along = edges.map(ref => `${ref.piece}.${ref.edge}`).join(', ');
    const remedy = `Draft ${piece} again after the step that changed its edge.`;
    const where = { piece };
    if (now === undefined)
      return [
        {
          severity: 'fault',
          code: 'made-for-edge-gone',
          where,
          message: `Piece "${piece}" was made for ${along}, which is no longer there.`,
          remedy: `Draft ${piece} again, or remove it.`,
        },
      ];
    const differenceMm = now - lengthMm;
    if (Number.isNaN(differenceMm) || Math.abs(differenceMm) <= tolerances.seamTolerance) return [];
    const change = `${Math.abs(differenceMm).toFixed(1)} mm ${differenceMm > 0 ? 'longer' : 'shorter'}`;
    return [
      {
        severity: 'fault',
        code: 'made-for-edge-changed',
        where,
        message: `Piece "${piece}" was made for ${along}, now ${change} in the garment.`,
        figures: { madeForMm: lengthMm, nowMm: now, differenceMm },
        remedy,
      },
    ];
  });
}

/** Whole-garment length in mm of edges that are all there. */
function lengthOf(pattern: Pattern, edges: readonly EdgeRef[]): number | undefined {
  const there = edges.every(({ piece, edge }) => {
    const owner = pattern.pieces.find(p => p.name === piece);
    return owner !== undefined && edgeNames(owner).includes(edge);
  });
  return there ? edges.reduce((sum, ref) => sum + lengthInGarment(pattern, ref), 0) : undefined;
}
