import type { Pattern, Piece } from '../pattern/types.js';

/**
 * The pieces that make the garment's outer layer once: not cut from lining, interfacing or stabiliser, and not made
 * for an edge (bands, facings, stays).
 */
export function bodyPieces(pattern: Pattern): readonly Piece[] {
  const within = new Set(pattern.fabrics.filter(f => secondLayers.has(f.role)).map(f => f.name));
  return pattern.pieces.filter(p => !p.madeFor && !within.has(p.cutting.fabric));
}

const secondLayers: ReadonlySet<string> = new Set(['lining', 'interfacing', 'stabiliser']);
