import { hasEdge } from '@paperhinge/alter/fit';
import {
  edgePath,
  type Finding,
  type Path,
  type Pattern,
  pieceNamed,
  type Thing,
} from '@paperhinge/geometry';
import { foldTolerance } from '@paperhinge/geometry/internal-tolerances';
import { nearestOnPath, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { edgeParts } from '@paperhinge/geometry/pattern';

/**
 * What a step warned of once, and whether it still stands in the finished pattern: a later step may have done what its
 * remedy says, and no check at the end would find it anew.
 */
export const stillStands: Readonly<Record<string, (found: Finding, pattern: Pattern) => boolean>> = {
  'fold-bent': ({ about }, pattern) => isBentFold(pattern, (about as About).edge!),
  'made-for-removed-piece': ({ about }, pattern) => {
    const { piece, removed } = about as unknown as { readonly piece: string; readonly removed: string };
    return pattern.pieces.some(p => p.name === piece && p.madeFor?.some(made => made.piece === removed));
  },
  'dart-edges-unsewn': ({ about }, pattern) => {
    const { piece, edge } = (about as About).edge!;
    return !pattern.seams.some(seam =>
      [...seam.a, ...seam.b].some(run => run.piece === piece && run.edge === edge),
    );
  },
  'hem-curved-deep': ({ about, figures }, pattern) => {
    const { piece = '', edge = '' } = (about as About).edge!;
    return (
      hasEdge(pattern, { piece, edge }) &&
      edgeParts(pieceNamed(pattern, piece)).some(
        part => part.name === edge && part.kind === 'hem' && part.allowance === figures?.allowanceMm,
      )
    );
  },
};

interface About {
  readonly edge?: Thing;
}

/** Whether an edge is still a fold that cannot be laid on one: drawn straight, or made a seam, it is mended. */
function isBentFold(pattern: Pattern, { piece = '', edge = '' }: Thing): boolean {
  if (!hasEdge(pattern, { piece, edge })) return false;
  const owner = pieceNamed(pattern, piece);
  const path = edgePath(owner, edge);
  const chord: Path = { segments: [[pathStart(path), pathEnd(path)]] };
  return (
    edgeParts(owner).some(part => part.name === edge && part.kind === 'fold') &&
    path.segments.flat().some(point => nearestOnPath(chord, point).distance > foldTolerance)
  );
}
