import type { Pattern, Piece } from '@paperhinge/geometry';

/**
 * The way of the cloth, seen from the grain, that must stretch most: of a piece that says so or is cut of cloth that
 * stretches; undefined for any other.
 */
export function greatestStretchOf(
  { greatestStretch, cutting }: Piece,
  { fabrics }: Pattern,
): 'across' | 'along' | undefined {
  const cloth = fabrics.find(f => f.name === cutting.fabric);
  return greatestStretch ?? ((cloth?.stretch?.across ?? 0) > 0 ? 'across' : undefined);
}
