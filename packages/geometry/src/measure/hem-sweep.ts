import { pathLength } from '../path/length.js';
import {
  edgeNamed,
  edgeNames,
  edgePath,
  neighboursOf,
  pieceNamed,
  timesInGarment,
} from '../pattern/outline.js';
import type { EdgeRef, Pattern } from '../pattern/types.js';
import { bodyPieces } from './body-pieces.js';
import { neighboursAtEnds } from './joined-lines.js';
import { closesIntoTube } from './tube.js';

/** Hem edges that run on into each other across seams: one hem of the garment (its bottom, or a sleeve's). */
export interface HemSweep {
  readonly edges: readonly EdgeRef[];
  /** Stitching length all round, in mm: of a hem that closes into a tube (a sleeve's), of one of the pair. */
  readonly sweepMm: number;
}

/** The hems of a garment in pattern order; a hem edge joined to no other is a hem of its own. */
export function hemSweep(pattern: Pattern): readonly HemSweep[] {
  const hems: readonly EdgeRef[] = bodyPieces(pattern).flatMap(piece =>
    edgeNames(piece)
      .filter(edge => edgeNamed(piece, edge).kind === 'hem')
      .map(edge => ({ piece: piece.name, edge })),
  );
  const group = hems.map((_, i) => i);
  const indexOf = (ref: EdgeRef) => hems.findIndex(h => h.piece === ref.piece && h.edge === ref.edge);
  for (const { first, second } of pattern.seams.flatMap(seam => neighboursAtEnds(pattern, seam))) {
    const one = indexOf(first),
      other = indexOf(second);
    if (one < 0 || other < 0) continue;
    const [low, high] = [Math.min(group[one]!, group[other]!), Math.max(group[one]!, group[other]!)];
    group.forEach((g, i) => {
      if (g === high) group[i] = low;
    });
  }
  return [...new Set(group)].map(g => {
    const edges = hems.filter((_, i) => group[i] === g);
    const ends = edges.flatMap(({ piece, edge }) => {
      const { start, end } = neighboursOf(pieceNamed(pattern, piece), edge);
      return [start, end].map(name => ({ piece, edges: [name] }));
    });
    const length = closesIntoTube(pattern, ends) ? lengthAsDrawn : lengthInGarment;
    return { edges, sweepMm: edges.reduce((sum, ref) => sum + length(pattern, ref), 0) };
  });
}

const lengthAsDrawn = (pattern: Pattern, { piece, edge }: EdgeRef): number =>
  pathLength(edgePath(pieceNamed(pattern, piece), edge));

/** Stitching length of an edge over the whole garment, in mm. @throws PatternError `unknown-piece`, `unknown-edge` */
export function lengthInGarment(pattern: Pattern, ref: EdgeRef): number {
  const piece = pieceNamed(pattern, ref.piece);
  return timesInGarment(piece) * pathLength(edgePath(piece, ref.edge));
}
