import { pathLength } from '../path/length.js';
import { edgePath, foldEdgeOf } from '../pattern/outline.js';
import { pieceRoleOf, roleOf } from '../pattern/roles/roles.js';
import type { Edge, EdgeRef, EdgeRole, Pattern, Piece } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { bodyPieces } from './body-pieces.js';
import { finding, type RawEdge } from './tellings.js';

/** What garments end at: each needs a hem, a facing, a binding, a band or the next piece. */
const ending = ['neck', 'armhole', 'waist', 'opening', 'wrist', 'hem'] as const satisfies readonly EdgeRole[];

/**
 * Edges with an allowance that no seam takes in, that no piece was drafted for and that say no finish: they would be
 * left raw. Necks, armholes, waists, fronts, wrists and hems of the garment's own pieces; whatever is free of a hood, or
 * of a collar of one layer, but not of a band, whose free edge is folded over. Nothing is told of a pattern without
 * seams.
 */
export function rawEdgeFindings(pattern: Pattern): readonly Finding[] {
  if (pattern.seams.length === 0) return [];
  const own = bodyPieces(pattern).filter(piece => !sewnOn.has(pieceRoleOf(piece) ?? ''));
  const having = (pieces: readonly Piece[], isMeant: (edge: Edge) => boolean): readonly EdgeRef[] =>
    pieces.flatMap(piece =>
      edgesOf(piece)
        .filter(edge => isMeant(edge) && isLeftRaw(pattern, piece, edge))
        .map(({ name }) => ({ piece: piece.name, edge: name })),
    );
  const told = (role: RawEdge, edges: readonly EdgeRef[]): readonly Finding[] =>
    edges.length === 0 ? [] : [finding('note', 'edges-left-raw', edges[0]!, { role, edges })];
  const withRole = (role: string) => (piece: Piece) =>
    pieceRoleOf(piece) === role && isSewnIn(pattern, piece);
  return [
    ...ending.flatMap(role =>
      told(
        role,
        having(own, edge => roleOf(edge) === role),
      ),
    ),
    ...told(
      'hood',
      having(pattern.pieces.filter(withRole('hood')), () => true),
    ),
    ...told(
      'collar',
      having(pattern.pieces.filter(withRole('collar')).filter(isSingle), () => true),
    ),
    ...looseWithin(pattern, having),
  ];
}

/** What lies within and hangs from the garment: a lining or a facing whose neck, armhole or front no seam takes in. */
function looseWithin(
  pattern: Pattern,
  having: (pieces: readonly Piece[], isMeant: (edge: Edge) => boolean) => readonly EdgeRef[],
): readonly Finding[] {
  const linings = new Set(pattern.fabrics.filter(f => f.role === 'lining').map(f => f.name));
  const within = pattern.pieces.filter(piece => {
    const role = pieceRoleOf(piece);
    const isIn =
      role === 'lining' || role === 'facing' || (role !== 'pocket' && linings.has(piece.cutting.fabric));
    // A drafted facing is caught in where its ends lie.
    return isIn && piece.madeFor === undefined && isSewnIn(pattern, piece);
  });
  const edges = having(within, edge => held.has(roleOf(edge)));
  return edges.length === 0 ? [] : [finding('note', 'lining-edges-loose', edges[0]!, { edges })];
}

const held: ReadonlySet<EdgeRole | undefined> = new Set<EdgeRole>(['neck', 'armhole', 'waist', 'opening']);

const sewnOn: ReadonlySet<string> = new Set(['band', 'cuff', 'collar', 'hood', 'gusset']);

/** A piece that no seam takes in is told by itself. */
const isSewnIn = ({ seams }: Pattern, { name }: Piece): boolean =>
  seams.some(({ a, b }) => [...a, ...b].some(run => run.piece === name));

/** Cut once, in one layer, and not folded along its length. */
function isSingle(piece: Piece): boolean {
  const { count, layers = 1 } = piece.cutting;
  const lengthOf = (edge: string): number => pathLength(edgePath(piece, edge));
  const fold = foldEdgeOf(piece);
  const longest = Math.max(...edgesOf(piece).map(edge => lengthOf(edge.name)));
  return (
    count === 1 &&
    layers === 1 &&
    !piece.lines.some(line => line.kind === 'fold') &&
    (fold === undefined || lengthOf(fold.name) < longest / 2)
  );
}

/** The edges of a piece, each once. */
const edgesOf = ({ outline }: Piece): readonly Edge[] => {
  const edges = outline.parts.filter((part): part is Edge & { type: 'edge' } => part.type === 'edge');
  return edges.filter((edge, i) => i === edges.findIndex(e => e.name === edge.name));
};

function isLeftRaw({ seams, pieces, fastenings = [] }: Pattern, { name: piece }: Piece, edge: Edge): boolean {
  const isIts = (ref: EdgeRef): boolean => ref.piece === piece && ref.edge === edge.name;
  return (
    edge.kind === 'seam' &&
    edge.allowance > 0 &&
    edge.finish === undefined &&
    !seams.some(({ a, b }) => [...a, ...b].some(isIts)) &&
    !pieces.some(({ madeFor = [] }) => madeFor.some(isIts)) &&
    !fastenings.some(({ kind, along }) => kind === 'zip' && isIts(along))
  );
}
