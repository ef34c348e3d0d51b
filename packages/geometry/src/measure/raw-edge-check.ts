import { pieceRoleOf, roleOf } from '../pattern/roles/roles.js';
import type { Edge, EdgeRole, Pattern, Piece } from '../pattern/types.js';
import type { Finding } from '../telling.js';
import { bodyPieces } from './body-pieces.js';
import { finding } from './tellings.js';

/** What garments end at besides their hems and openings: each needs a facing, a binding, a band or the next piece. */
const ending = ['neck', 'armhole', 'waist'] as const satisfies readonly EdgeRole[];

/**
 * Necks, armholes and waists with an allowance that no seam takes in, that no piece was drafted for and that say no
 * finish: they would be left raw. Only the garment's own pieces are asked; a band's free edge is folded over. Nothing
 * is told of a pattern without seams.
 */
export function rawEdgeFindings(pattern: Pattern): readonly Finding[] {
  if (pattern.seams.length === 0) return [];
  const pieces = bodyPieces(pattern).filter(piece => !sewnOn.has(pieceRoleOf(piece) ?? ''));
  return ending.flatMap(role => {
    const edges = pieces.flatMap(piece =>
      edgesOf(piece)
        .filter(edge => roleOf(edge) === role && isLeftRaw(pattern, piece, edge))
        .map(({ name }) => ({ piece: piece.name, edge: name })),
    );
    return edges.length === 0 ? [] : [finding('note', 'edges-left-raw', edges[0]!, { role, edges })];
  });
}

const sewnOn: ReadonlySet<string> = new Set(['band', 'cuff', 'collar', 'hood', 'gusset']);

/** The edges of a piece, each once. */
const edgesOf = ({ outline }: Piece): readonly Edge[] => {
  const edges = outline.parts.filter((part): part is Edge & { type: 'edge' } => part.type === 'edge');
  return edges.filter((edge, i) => i === edges.findIndex(e => e.name === edge.name));
};

function isLeftRaw({ seams, pieces }: Pattern, { name: piece }: Piece, edge: Edge): boolean {
  const isIts = (ref: { readonly piece: string; readonly edge: string }): boolean =>
    ref.piece === piece && ref.edge === edge.name;
  return (
    edge.kind === 'seam' &&
    edge.allowance > 0 &&
    edge.finish === undefined &&
    !seams.some(({ a, b }) => [...a, ...b].some(isIts)) &&
    !pieces.some(({ madeFor = [] }) => madeFor.some(isIts))
  );
}
