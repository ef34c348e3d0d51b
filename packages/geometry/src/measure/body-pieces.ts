import { requireWhole } from '../pattern/require-whole.js';
import type { FabricRole, Pattern, Piece, PieceRole } from '../pattern/types.js';
import { hipPieces } from './hip-pieces.js';

/**
 * The pieces that make the garment's outer layer once: not cut from lining, interfacing or stabiliser, not made for an
 * edge (bands, facings, stays), and neither facing nor lining, pocket nor placket by their role; `hipPieces` are pockets
 * that count.
 */
export function bodyPieces(pattern: Pattern): readonly Piece[] {
  requireWhole(pattern);
  const within = new Set(pattern.fabrics.filter(f => secondLayers.has(f.role)).map(f => f.name));
  const outside = hipPieces(pattern);
  return pattern.pieces.filter(
    ({ name, madeFor, role, cutting }) =>
      !madeFor && !within.has(cutting.fabric) && (!besideTheBody.has(role) || outside.has(name)),
  );
}

const secondLayers: ReadonlySet<FabricRole> = new Set(['lining', 'interfacing', 'stabiliser']);

const besideTheBody: ReadonlySet<PieceRole | undefined> = new Set<PieceRole>([
  'facing',
  'stay',
  'binding',
  'strip',
  'lining',
  'interfacing',
  'pocket',
  'placket',
]);
