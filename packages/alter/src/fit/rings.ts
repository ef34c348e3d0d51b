import {
  type EdgeRef,
  edgePath,
  type Pattern,
  type Piece,
  type PieceRole,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  roleOf,
} from '@paperhinge/geometry';
import { bodyPieces, hipPieces } from '@paperhinge/geometry/measure';
import { edgeParts, foldEdgeOf, neighboursOf } from '@paperhinge/geometry/pattern';

/** Pieces that are sewn to an edge rather than having one: their own neck or waist edges make no ring. */
const sewnOn: ReadonlySet<PieceRole | undefined> = new Set<PieceRole>([
  'band',
  'binding',
  'strip',
  'collar',
  'cuff',
  'facing',
  'stay',
  'interfacing',
  'lining',
  'placket',
  'pocket',
]);

/** The pieces that clothe the body: neither sewn to an edge nor a second layer. */
export const garmentPieces = (pattern: Pattern): readonly Piece[] =>
  bodyPieces(pattern).filter(piece => !sewnOn.has(pieceRoleOf(piece)) || hipPieces(pattern).has(piece.name));

/** The edges of the neck: those that are one by their role, with an inset beside them that no band bridges. */
export function neckEdges(pattern: Pattern): readonly EdgeRef[] {
  const isNeck = (piece: Piece, name: string) =>
    edgeParts(piece).some(e => e.name === name && roleOf(e) === 'neck');
  return edgesWhere(
    garmentPieces(pattern),
    (piece, edge) =>
      roleOf(edge) === 'neck' ||
      (roleOf(edge) === 'inset' &&
        Object.values(neighboursOf(piece, edge.name)).some(beside => isNeck(piece, beside))),
  );
}

/** The free waist of a skirt or trousers: no ring where it hangs from a bodice. */
export function waistEdges(pattern: Pattern): readonly EdgeRef[] {
  const pieces = garmentPieces(pattern);
  const lower = pieces.filter(p => lowerBody.has(pieceRoleOf(p)));
  const isAll =
    lower.length > 0 &&
    pieces.every(p => lower.includes(p) || ['pocket', undefined].includes(pieceRoleOf(p)));
  // What is not sewn to any of them itself, a bib on its waistband, goes up from there and not round.
  const round = pieces.filter(p => lower.includes(p) || isSewnToOneOf(pattern, p, lower));
  return isAll ? edgesWhere(round, (_, edge) => roleOf(edge) === 'waist') : [];
}

const isSewnToOneOf = ({ seams }: Pattern, { name }: Piece, others: readonly Piece[]): boolean =>
  !seams.some(({ a, b }) => [...a, ...b].some(run => run.piece === name)) ||
  seams.some(({ a, b }) => {
    const runs = [...a, ...b];
    return runs.some(run => run.piece === name) && runs.some(run => others.some(o => o.name === run.piece));
  });

const lowerBody: ReadonlySet<PieceRole | undefined> = new Set<PieceRole>(['skirt', 'trouser', 'yoke']);

/** The lower edges of the sleeves, and those of trouser legs: each ring of the two of a pair is alike. */
export const cuffEdges = (pattern: Pattern): readonly EdgeRef[] => lowerEdges(pattern, 'sleeve');
export const legEdges = (pattern: Pattern): readonly EdgeRef[] => lowerEdges(pattern, 'trouser');

const lowerEdges = (pattern: Pattern, role: PieceRole): readonly EdgeRef[] =>
  edgesWhere(
    garmentPieces(pattern).filter(p => pieceRoleOf(p) === role),
    (_, edge) => edge.kind === 'hem' || roleOf(edge) === 'hem' || roleOf(edge) === 'wrist',
  );

/** mm of an edge in one ring of a pair: once, or twice where its piece is on a fold. */
export function lengthInLimb(pattern: Pattern, ref: EdgeRef): number {
  const piece = pieceNamed(pattern, ref.piece);
  return pathLength(edgePath(piece, ref.edge)) * (foldEdgeOf(piece) === undefined ? 1 : 2);
}

function edgesWhere(
  pieces: readonly Piece[],
  wanted: (piece: Piece, edge: ReturnType<typeof edgeParts>[number]) => boolean,
): readonly EdgeRef[] {
  return pieces.flatMap(piece =>
    [
      ...new Set(
        edgeParts(piece)
          .filter(e => wanted(piece, e))
          .map(e => e.name),
      ),
    ].map(edge => ({
      piece: piece.name,
      edge,
    })),
  );
}
