import type { EdgeRole, Pattern, PieceRole } from '../../pattern/types.js';
import { fitShape, type ShapeFit } from './fit-shape.js';
import { pieceShapes } from './piece-shapes.js';
import { pieceShape } from './run-shape.js';

/** What a piece seems to be by its shape alone, and which of its edges is which. */
export interface PieceProposal {
  readonly piece: string;
  readonly role?: PieceRole;
  /** From 0 to 1. */
  readonly confidence: number;
  /** By edge name, clockwise from the piece's first edge; an edge without a role is none that is known. */
  readonly edges: ReadonlyMap<string, EdgeRole | undefined>;
  readonly fit?: ShapeFit;
}

/** What each piece of a pattern seems to be; names, kinds and seams of the pattern are not needed. */
export const proposePieces = (pattern: Pattern): readonly PieceProposal[] =>
  pattern.pieces.map(piece => {
    const shape = pieceShape(piece);
    const fits = pieceShapes.flatMap(like => fitShape(shape, like) ?? []).sort((a, b) => a.off - b.off);
    const [best] = fits;
    if (!best) return { piece: piece.name, confidence: 0, edges: new Map() };
    const weight = (fit: ShapeFit): number => Math.exp(-steep * fit.off);
    // What no kind of piece is like weighs in as a fit that is neither good nor bad.
    const all = fits.reduce((sum, fit) => sum + weight(fit), Math.exp(-steep * stranger));
    const same = fits
      .filter(fit => fit.like.role === best.like.role)
      .reduce((sum, fit) => sum + weight(fit), 0);
    return {
      piece: piece.name,
      role: best.like.role,
      confidence: same / all,
      edges: new Map(shape.edges.map(name => [name, best.roles.get(name)])),
      fit: best,
    };
  });

const steep = 6;
const stranger = 1;
