import { edgeNames } from './outline.js';
import { requireWhole } from './require-whole.js';
import { refusal } from './tellings.js';
import type { EdgeRun, OutlinePart, Pattern, Piece } from './types.js';

/** New names of a piece and its edges, as a maker writes them down. */
export interface NewNames {
  readonly name?: string;
  /** Clockwise from the piece's first edge. */
  readonly edges?: readonly string[];
}

/**
 * The same pattern with pieces and edges called otherwise; notches, seams, fastenings, corners left to be trued and what
 * a piece was drafted for follow.
 *
 * @param names by the names that the pieces have now
 * @throws PatternError `unknown-piece`, `edge-names-do-not-fit`, `duplicate-edge`
 */
export function renamed(pattern: Pattern, names: Readonly<Record<string, NewNames>>): Pattern {
  requireWhole(pattern);
  const now = new Map(pattern.pieces.map(piece => [piece.name, newNamesOf(piece, names[piece.name] ?? {})]));
  const missing = Object.keys(names).find(name => !now.has(name));
  if (missing !== undefined)
    throw refusal('unknown-piece', { name: missing, names: [...now.keys()] }, { piece: missing });
  const pieceOf = (piece: string): string => now.get(piece)?.name ?? piece;
  const edgeOf = (piece: string, edge: string): string => now.get(piece)?.edges.get(edge) ?? edge;
  const ref = <R extends { readonly piece: string; readonly edge: string }>(one: R): R => ({
    ...one,
    piece: pieceOf(one.piece),
    edge: edgeOf(one.piece, one.edge),
  });
  const side = (runs: readonly EdgeRun[]): readonly EdgeRun[] => runs.map(ref);
  return {
    ...pattern,
    pieces: pattern.pieces.map((piece): Piece => {
      const edge = (name: string): string => edgeOf(piece.name, name);
      return {
        ...piece,
        name: pieceOf(piece.name),
        title: piece.title === piece.name ? pieceOf(piece.name) : piece.title,
        outline: {
          parts: piece.outline.parts.map(
            (part): OutlinePart => (part.type === 'edge' ? { ...part, name: edge(part.name) } : part),
          ),
        },
        notches: piece.notches.map(notch => ({ ...notch, edge: edge(notch.edge) })),
        ...(piece.madeFor ? { madeFor: piece.madeFor.map(ref) } : {}),
      };
    }),
    seams: pattern.seams.map(seam => ({ ...seam, a: side(seam.a), b: side(seam.b) })),
    ...(pattern.fastenings
      ? { fastenings: pattern.fastenings.map(one => ({ ...one, along: ref(one.along) })) }
      : {}),
    ...(pattern.leftToTrue ? { leftToTrue: pattern.leftToTrue.map(ref) } : {}),
  };
}

function newNamesOf(piece: Piece, { name = piece.name, edges: told }: NewNames) {
  const own = edgeNames(piece);
  if (told && told.length !== own.length)
    throw refusal('edge-names-do-not-fit', { edges: own.length, names: told.length }, { piece: piece.name });
  const twice = told?.find((edge, i) => told.indexOf(edge) !== i);
  if (twice !== undefined)
    throw refusal('duplicate-edge', { name: twice }, { piece: piece.name, edge: twice });
  return { name, edges: new Map(own.map((edge, i) => [edge, told?.[i] ?? edge])) };
}
