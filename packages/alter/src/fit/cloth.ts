import type { Pattern, Piece } from '@paperhinge/geometry';

/**
 * Per cent; cloth that stretches no more than this across is treated as woven. ASTM D3107 calls woven cloth above
 * it one of high stretch [read: standards.iteh.ai d3107-07-2015].
 */
const wovenStretch = 12;

/** Stretch of a cloth across, in per cent; 0 where the pattern does not say. */
export const stretchOf = (pattern: Pattern, fabric: string): number =>
  pattern.fabrics.find(f => f.name === fabric)?.stretch?.across ?? 0;

/** The least stretch across, in per cent, of the cloth these pieces are cut from: the garment gives no more than it. */
export const leastStretch = (pattern: Pattern, pieces: readonly Piece[]): number =>
  Math.min(...pieces.map(p => stretchOf(pattern, p.cutting.fabric)));

/** Whether a cloth is sewn as a knit: its stretch is over what a woven cloth has. */
export const isKnit = (stretchPercent: number): boolean => stretchPercent > wovenStretch;
