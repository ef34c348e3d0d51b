import type { EdgeRef, Pattern } from '../pattern/types.js';

/** One end of a line across a piece: the piece, and the edges that meet there. */
export interface EndAcross {
  readonly piece: string;
  readonly edges: readonly string[];
}

/**
 * Whether lines across pieces close into a tube of their own (a sleeve, a trouser leg): each of their ends lies on an
 * edge that is sewn to another end of them. A body closes over its folds instead, or by its other half.
 */
export function closesIntoTube(pattern: Pattern, ends: readonly EndAcross[]): boolean {
  const holds = (runs: readonly EdgeRef[], end: EndAcross) =>
    runs.some(r => r.piece === end.piece && end.edges.includes(r.edge));
  return ends.every(end =>
    pattern.seams.some(({ a, b }) =>
      ends.some(e => e !== end && ((holds(a, end) && holds(b, e)) || (holds(b, end) && holds(a, e)))),
    ),
  );
}
