import { neighboursAtEnds } from '../joining/meetings.js';
import { pathLength } from '../path/length.js';
import { copiesInGarment } from '../pattern/copies.js';
import { edgeNamed, edgeNames, edgePath, neighboursOf, pieceNamed } from '../pattern/outline.js';
import { requireWhole } from '../pattern/require-whole.js';
import { roleOf } from '../pattern/roles/roles.js';
import type { Edge, EdgeRef, Pattern } from '../pattern/types.js';
import { bodyPieces } from './body-pieces.js';
import { allRound } from './rings.js';

/** Hem edges that run on into each other across seams: one hem of the garment (its bottom, or a sleeve's). */
export interface HemSweep {
  readonly edges: readonly EdgeRef[];
  /** Stitching length all round, in mm: of the hem of a limb (a sleeve's), that of one of the pair. */
  readonly sweepMm: number;
}

/** The hems of a garment in pattern order; a hem edge joined to no other is a hem of its own. @throws what `requireWhole` throws */
export function hemSweep(pattern: Pattern): readonly HemSweep[] {
  requireWhole(pattern);
  const hems: readonly EdgeRef[] = bodyPieces(pattern).flatMap(piece =>
    edgeNames(piece)
      .filter(edge => isHem(edgeNamed(piece, edge)))
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
    return {
      edges,
      sweepMm: allRound(
        pattern,
        edges.map(ref => alongHem(pattern, ref)),
      ).mm,
    };
  });
}

/** A front or back edge that is turned like a hem closes the garment: it does not go round it. */
const isHem = (edge: Edge): boolean =>
  edge.kind === 'hem' && !['opening', 'centre'].includes(roleOf(edge) ?? '');

function alongHem(pattern: Pattern, ref: EdgeRef) {
  const piece = pieceNamed(pattern, ref.piece);
  const { start, end } = neighboursOf(piece, ref.edge);
  return { piece, lengthMm: pathLength(edgePath(piece, ref.edge)), ends: [[start], [end]] };
}

/** Stitching length of an edge over the whole garment, in mm. @throws PatternError `unknown-piece`, `unknown-edge` */
export function lengthInGarment(pattern: Pattern, ref: EdgeRef): number {
  requireWhole(pattern);
  const piece = pieceNamed(pattern, ref.piece);
  return copiesInGarment(piece) * pathLength(edgePath(piece, ref.edge));
}
