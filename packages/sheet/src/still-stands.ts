import { hasEdge } from '@paperhinge/alter/fit';
import {
  edgePath,
  type Finding,
  type Path,
  type Pattern,
  pieceNamed,
  type Thing,
} from '@paperhinge/geometry';
import { foldTolerance, visibleLength } from '@paperhinge/geometry/internal-tolerances';
import { nearestOnPath, pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { dartsOf, edgeParts } from '@paperhinge/geometry/pattern';
import { distance } from '@paperhinge/geometry/plane';

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
  // Sewn as wide as it was, or redrawn by hand since: nothing to say.
  'dart-mouth-parted': ({ about, figures }, pattern) => {
    const { piece = '', dart = '' } = (about as About).dart!;
    const found = pattern.pieces.find(p => p.name === piece);
    const now = found && dartsOf(found).find(d => d.name === dart);
    if (now === undefined) return false;
    const intakeMm = distance(pathStart(now.legs[0]), pathEnd(now.legs[1]));
    return Math.abs(intakeMm - figures!.isMm!) <= visibleLength;
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
  readonly dart?: Thing;
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
