import {
  type EdgeRef,
  edgeNamed,
  edgeNames,
  edgePath,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  roleOf,
  type Seam,
} from '@paperhinge/geometry';
import { type EdgePosition, neighboursOf, resolvePosition } from '@paperhinge/geometry/pattern';
import { holdsEdge } from '../edge-refs.js';

/** A piece that lies beside another across a seam, with the edges of both in it. */
export interface Beside {
  readonly piece: string;
  readonly own: readonly string[];
  readonly theirs: readonly string[];
}

/** The pieces of its own sort that a piece is sewn to, none that were made for an edge: no bodice lies beside a sleeve. */
export function besides(pattern: Pattern, piece: string): readonly Beside[] {
  const sides = pattern.seams.flatMap(({ a, b }: Seam) => [[a, b] as const, [b, a] as const]);
  return sides.flatMap(([ours, others]) => {
    const own = ours.filter(run => run.piece === piece).map(run => run.edge);
    if (own.length === 0) return [];
    return [...new Set(others.map(run => run.piece))]
      .filter(name => name !== piece && isAlike(pieceNamed(pattern, name), pieceNamed(pattern, piece)))
      .map(name => ({
        piece: name,
        own,
        theirs: others.filter(run => run.piece === name).map(run => run.edge),
      }));
  });
}

const isAlike = (one: Piece, other: Piece): boolean =>
  (one.madeFor ?? []).length === 0 && pieceRoleOf(one) === pieceRoleOf(other);

/**
 * The edge of the piece beside that answers to an edge: the one sewn to it, else the one of the same role, else of the
 * same name; undefined where there is none, or several could be meant.
 */
export function counterpartOf(pattern: Pattern, edge: EdgeRef, beside: Beside): string | undefined {
  const other = pieceNamed(pattern, beside.piece);
  const sewn = pattern.seams.flatMap(({ a, b }) => [
    ...(holdsEdge(a, edge) ? b : []),
    ...(holdsEdge(b, edge) ? a : []),
  ]);
  const [first, ...others] = [...new Set(sewn.filter(run => run.piece === other.name).map(run => run.edge))];
  if (first !== undefined) return others.length === 0 ? first : undefined;
  const role = roleIn(pieceNamed(pattern, edge.piece), edge.edge);
  const alike = edgeNames(other).filter(name => roleIn(other, name) === role && role !== undefined);
  if (alike.length === 1) return alike[0];
  return edgeNames(other).find(name => name === edge.edge);
}

const roleIn = (piece: Piece, edge: string): string | undefined => {
  const found = edgeNamed(piece, edge);
  return roleOf(found) ?? (found.kind === 'hem' ? 'hem' : undefined);
};

/**
 * A place on an edge as it lies on the edge that answers to it: as large a share of it from the end at the seam
 * between the two pieces; where neither end is at that seam, from the end that lies the other way round.
 */
export function placeBeside(
  pattern: Pattern,
  at: EdgeRef & { readonly place: EdgePosition },
  beside: Beside,
  theirs: string,
): EdgePosition {
  const piece = pieceNamed(pattern, at.piece);
  const share = resolvePosition(piece, at.edge, at.place) / pathLength(edgePath(piece, at.edge));
  const ends = neighboursOf(piece, at.edge);
  const fromSeam = beside.own.includes(ends.end) ? 1 - share : share;
  const there = neighboursOf(pieceNamed(pattern, beside.piece), theirs);
  return { share: beside.theirs.includes(there.start) ? fromSeam : 1 - fromSeam };
}
