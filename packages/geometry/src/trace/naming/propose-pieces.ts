import type { EdgeRole, Pattern, Piece, PieceRole } from '../../pattern/types.js';
import { fitShape, type Lying, type ShapeFit } from './fit-shape.js';
import type { PieceLike } from './piece-like.js';
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
export function proposePieces(pattern: Pattern): readonly PieceProposal[] {
  const lying = lyingOf(pattern);
  const first = pattern.pieces.map(piece => proposePiece(piece, pieceShapes, lying));
  const has = (...roles: readonly PieceRole[]): boolean =>
    first.some(({ role, confidence }) => confidence >= likely && roles.includes(role!));
  const there = { neck: has('bodice'), legs: has('trouser') };
  const possible = pieceShapes.filter(({ beside }) => beside === undefined || there[beside]);
  // What looks like a collar, where nothing has a neck, is something else.
  return first.map((one, i) =>
    one.fit === undefined || possible.includes(one.fit.like)
      ? one
      : proposePiece(pattern.pieces[i]!, possible, lying),
  );
}
/** A piece surer than this is rather what it seems than not. */
const likely = 0.45;

/** Upright if most of the pieces that are like something known stand so. */
function lyingOf(pattern: Pattern): Lying {
  const fits = pattern.pieces.flatMap(piece => {
    const shape = pieceShape(piece);
    const [best] = pieceShapes
      .filter(({ edges }) => edges.length > simple)
      .flatMap(like => fitShape(shape, like, 'any way') ?? [])
      .sort((a, b) => a.off - b.off);
    return best && best.off < everyday ? [best] : [];
  });
  const upright = fits.filter(({ isUpright }) => isUpright).length;
  return upright >= mostUpright * fits.length ? 'upright' : 'any way';
}
/** What is no further off than this is an everyday piece; of so few edges it is as good turned about. */
const mostUpright = 0.7,
  everyday = 1,
  simple = 4;

function proposePiece(piece: Piece, shapes: readonly PieceLike[], lying: Lying): PieceProposal {
  const shape = pieceShape(piece);
  const fits = shapes.flatMap(like => fitShape(shape, like, lying) ?? []).sort((a, b) => a.off - b.off);
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
}

const steep = 6;
const stranger = 1;
