import {
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
import { type EdgePosition, neighboursOf } from '@paperhinge/geometry/pattern';
import { acrossSeams, placeGiven } from './across-seam.js';

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

/** An edge as a step names it, and a place on it where the step says one. */
export interface EdgeGiven {
  readonly edge: string;
  readonly at?: EdgePosition;
}

/**
 * What answers to an edge of a piece, and to a place on it, on a piece beside: what it is sewn to, at as large a share
 * of the seam; else the one edge of the same role, or the one of the same name, at as large a share of it from the same
 * neighbour. Undefined where nothing does, or several could be meant.
 */
export function counterpartOf(
  pattern: Pattern,
  piece: string,
  { edge, at }: EdgeGiven,
  beside: Beside,
): EdgeGiven | undefined {
  const place = placeGiven(pattern, { piece, edge }, at);
  const sewn = acrossSeams(pattern, place).find(there => there.piece === beside.piece);
  if (sewn) return at ? { edge: sewn.edge, at: { mm: sewn.at } } : { edge: sewn.edge };
  const own = pieceNamed(pattern, piece),
    other = pieceNamed(pattern, beside.piece);
  const alike = likeIn(own, edge, other);
  if (alike === undefined) return undefined;
  if (!at) return { edge: alike };
  const share = place.at / pathLength(edgePath(own, edge));
  return { edge: alike, at: { share: runsAlike(own, edge, other, alike, beside) ? share : 1 - share } };
}

function likeIn(own: Piece, edge: string, other: Piece): string | undefined {
  const role = roleIn(own, edge);
  const alike = edgeNames(other).filter(name => roleIn(other, name) === role && role !== undefined);
  return alike.length === 1 ? alike[0] : edgeNames(other).find(name => name === edge);
}

const roleIn = (piece: Piece, name: string): string | undefined => {
  if (!edgeNames(piece).includes(name)) return undefined;
  const edge = edgeNamed(piece, name);
  return roleOf(edge) ?? (edge.kind === 'hem' ? 'hem' : undefined);
};

/** Whether two edges run the same way from what lies at their ends: the seam between, or edges of the same role. */
function runsAlike(own: Piece, edge: string, other: Piece, theirs: string, beside: Beside): boolean {
  const ours = neighboursOf(own, edge),
    there = neighboursOf(other, theirs);
  const ends = ['start', 'end'] as const;
  const fits = (end: 'start' | 'end', otherEnd: 'start' | 'end'): number => {
    const [here, beyond] = [ours[end], there[otherEnd]];
    if (beside.own.includes(here) && beside.theirs.includes(beyond)) return 2;
    const role = roleIn(own, here);
    return role !== undefined && role === roleIn(other, beyond) ? 1 : 0;
  };
  const sum = (turned: boolean): number =>
    ends.reduce((total, end) => total + fits(end, turned === (end === 'start') ? 'end' : 'start'), 0);
  // Pieces that lie beside each other are drawn as mirror images: where nothing tells, the edge runs the other way.
  return sum(false) > sum(true);
}
