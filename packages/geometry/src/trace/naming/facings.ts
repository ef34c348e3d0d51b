import { pathLength, pointAlong } from '../../path/length.js';
import { type Path, pathEnd, pathStart } from '../../path/path.js';
import { edgeNamed, edgeNames, edgePath, pieceNamed } from '../../pattern/outline.js';
import type { EdgeRole, Pattern, Piece } from '../../pattern/types.js';
import { distance } from '../../vector.js';
import { areaOf, type Overlay } from './overlays.js';
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
export function withFacings(
  pattern: Pattern,
  proposals: readonly PieceProposal[],
  overlays: readonly Overlay[],
): readonly PieceProposal[] {
  const known = proposals.filter(p => p.role !== undefined && p.confidence >= unknown);
  return proposals.map(proposal =>
    // What looks like a flat collar, but lies on one neck alone, is a facing.
    proposal.confidence >= unknown && proposal.role !== 'collar'
      ? proposal
      : (facingOf(pattern, pieceNamed(pattern, proposal.piece), known) ??
        (proposal.confidence < unknown ? facingLaid(proposal, known, overlays) : undefined) ??
        proposal),
  );
}

/** A piece that lies on another with some of its edges, straight ones as well. */
function facingLaid(
  { piece }: PieceProposal,
  known: readonly PieceProposal[],
  overlays: readonly Overlay[],
): PieceProposal | undefined {
  const overlay = overlays.find(({ over, isWhole }) => over.name === piece && !isWhole);
  const below = known.find(other => other.piece === overlay?.under.name);
  if (!overlay || !below) return undefined;
  const [own, edge] = [...overlay.shared][0]!;
  const way = wayOf(overlay) ?? sameCurve(edgePath(overlay.over, own), edgePath(overlay.under, edge)) ?? 1;
  return {
    piece,
    role: 'facing',
    confidence: sureOfFacing,
    edges: rolesBeside(overlay.over, own, { piece: overlay.under, edges: below.edges }, { edge, way }),
  };
}

/** Whether edges that follow one another follow one another below as well, or the other way round. */
function wayOf({ over, under, shared }: Overlay): 1 | -1 | undefined {
  const [own, other] = [edgeNames(over), edgeNames(under)];
  const next = own.find((name, i) => shared.has(name) && shared.has(own[(i + 1) % own.length]!));
  if (next === undefined) return undefined;
  const [from, to] = [next, own[(own.indexOf(next) + 1) % own.length]!].map(name =>
    other.indexOf(shared.get(name)!),
  );
  return (to! - from! + other.length) % other.length === 1 ? 1 : -1;
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
        if (!faced.includes(role) || other === piece.name) continue;
        const garment = pieceNamed(pattern, other);
        if (areaOf(piece) > clearlySmaller * areaOf(garment)) continue;
        const way = sameCurve(edgePath(piece, own), edgePath(garment, edge));
        if (way === undefined) continue;
        return {
          piece: piece.name,
          role: 'facing',
          confidence: sureOfFacing,
          edges: rolesBeside(piece, own, { piece: garment, edges }, { edge, way }),
        };
      }
  return undefined;
}

/** A facing is smaller than what it is for. */
const clearlySmaller = 0.9;

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

/**
 * What the edges of a facing are: those that it shares with the piece it is for, and on either side the one that follows,
 * shorter than there.
 */
function rolesBeside(
  piece: Piece,
  own: string,
  garment: { readonly piece: Piece; readonly edges: ReadonlyMap<string, EdgeRole | undefined> },
  { edge, way }: { readonly edge: string; readonly way: 1 | -1 },
): ReadonlyMap<string, EdgeRole | undefined> {
  const ring = [...garment.edges.keys()],
    names = edgeNames(piece);
  const at = (all: readonly string[], name: string, step: number): string =>
    all[(((all.indexOf(name) + step) % all.length) + all.length) % all.length]!;
  const roles = new Map<string, EdgeRole | undefined>([[own, garment.edges.get(edge)]]);
  for (const step of [1, -1])
    for (let k = 1; k < names.length; k++) {
      const name = at(names, own, step * k),
        there = at(ring, edge, way * step * k);
      if (roles.has(name) || edgeNamed(piece, name).kind === 'fold') break;
      roles.set(name, garment.edges.get(there));
      const off = pathLength(edgePath(piece, name)) - pathLength(edgePath(garment.piece, there));
      if (Math.abs(off) > asTraced) break;
    }
  return new Map(
    names.map(name => [name, edgeNamed(piece, name).kind === 'fold' ? ('centre' as const) : roles.get(name)]),
  );
}
