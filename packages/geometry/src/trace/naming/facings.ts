import { pathLength, pointAlong } from '../../path/length.js';
import { type Path, pathEnd, pathStart } from '../../path/path.js';
import { edgeNamed, edgeNames, edgePath, pieceNamed } from '../../pattern/outline.js';
import type { EdgeRole, Pattern, Piece } from '../../pattern/types.js';
import { distance } from '../../vector.js';
import type { PieceProposal } from './propose-pieces.js';

/** Below this a piece is like no kind of piece that is known. */
const unknown = 0.45;
/** A facing is as sure as the curve that it shares with the piece it is for; nothing says that it is not a stay. */
const sureOfFacing = 0.85;
/** mm: curves traced from one another differ by less, in length and from point to point. */
const asTraced = 0.5;
/** Of its length, the straight way from end to end of a curve: straighter edges are alike by chance. */
const straightest = 0.99;
/** mm */
const shortest = 40;
/** Edges that facings are cut for. */
const faced: readonly (EdgeRole | undefined)[] = ['neck', 'armhole', 'waist'];

/**
 * Pieces that are like no kind of piece and have a curve of another piece in their outline: facings, cut by the edge
 * that they are sewn to. Their other edges are what that piece has beside it: its shoulder, its side, its centre.
 */
export function withFacings(pattern: Pattern, proposals: readonly PieceProposal[]): readonly PieceProposal[] {
  const known = proposals.filter(p => p.role !== undefined && p.confidence >= unknown);
  return proposals.map(proposal =>
    proposal.confidence >= unknown
      ? proposal
      : (facingOf(pattern, pieceNamed(pattern, proposal.piece), known) ?? proposal),
  );
}

function facingOf(
  pattern: Pattern,
  piece: Piece,
  known: readonly PieceProposal[],
): PieceProposal | undefined {
  const names = edgeNames(piece);
  for (const own of names)
    for (const { piece: other, edges } of known)
      for (const [edge, role] of edges) {
        if (!faced.includes(role)) continue;
        const garment = pieceNamed(pattern, other);
        const way = sameCurve(edgePath(piece, own), edgePath(garment, edge));
        if (way === undefined) continue;
        return {
          piece: piece.name,
          role: 'facing',
          confidence: sureOfFacing,
          edges: rolesBeside(piece, own, edges, { edge, way }),
        };
      }
  return undefined;
}

/** 1 where a curve lies on another beginning on beginning, −1 where it must be turned over; undefined where it does not. */
function sameCurve(a: Path, b: Path): 1 | -1 | undefined {
  const [long, other] = [pathLength(a), pathLength(b)];
  if (long < shortest || Math.abs(long - other) > asTraced) return undefined;
  if (distance(pathStart(a), pathEnd(a)) > straightest * long) return undefined;
  const shape = (path: Path, backwards: boolean): readonly number[] => {
    const at = (share: number) => pointAlong(path, (backwards ? 1 - share : share) * pathLength(path));
    const places = [0, 0.2, 0.4, 0.6, 0.8, 1].map(at);
    return places.flatMap((p, i) => places.slice(i + 1).map(q => distance(p, q)));
  };
  const own = shape(a, false);
  const isLike = (backwards: boolean): boolean =>
    shape(b, backwards).every((d, i) => Math.abs(d - own[i]!) <= asTraced);
  return isLike(false) ? 1 : isLike(true) ? -1 : undefined;
}

/** What the edges of a facing are: the shared one, and what lies beside it as on the piece that it is for. */
function rolesBeside(
  piece: Piece,
  own: string,
  garment: ReadonlyMap<string, EdgeRole | undefined>,
  { edge, way }: { readonly edge: string; readonly way: 1 | -1 },
): ReadonlyMap<string, EdgeRole | undefined> {
  const ring = [...garment.keys()],
    names = edgeNames(piece);
  const there = (step: number): EdgeRole | undefined =>
    garment.get(ring[(ring.indexOf(edge) + way * step + ring.length) % ring.length]!);
  const at = names.indexOf(own);
  const next = (step: number): string => names[(at + step + names.length) % names.length]!;
  return new Map(
    names.map(name => [
      name,
      name === own
        ? garment.get(edge)
        : edgeNamed(piece, name).kind === 'fold'
          ? ('centre' as const)
          : name === next(1)
            ? there(1)
            : name === next(-1)
              ? there(-1)
              : undefined,
    ]),
  );
}
