import type { EdgeRef, Finding, Pattern } from '@paperhinge/geometry';
import { distinctEdges } from '../edge-refs.js';
import { gapAcross } from './gap.js';
import { type GarmentChain, garmentChains, runsAlong } from './garment-chain.js';
import { finding, refusal, saying } from './tellings.js';

/** How the edges that one straight piece is made for lie in the garment. Lengths in mm. */
export interface LaidAlong {
  /** What one piece is sewn to. */
  readonly chains: readonly GarmentChain[];
  /** How many such pieces the garment has: two where left and right each have their own ring. */
  readonly count: number;
  /** Of one piece: the edges it is sewn to, and the gap it bridges. */
  readonly edgeMm: number;
  readonly gapMm: number;
  /** Whether one piece closes into a ring. */
  readonly ring: boolean;
}

/**
 * Lays edges out for a straight piece. Where the garment has several stretches of them that are all alike (sleeves,
 * armholes), one piece is made for each.
 * @throws PatternError `gap-also-along`, `gap-not-beside`, `unknown-piece`, `unknown-edge`
 */
export function laidAlong(pattern: Pattern, along: readonly EdgeRef[], gap?: EdgeRef): LaidAlong {
  const all = garmentChains(pattern, along, gap);
  const alike = new Set(all.map(labelOf)).size === 1;
  const count = alike ? all.length : 1;
  const chains = alike ? all.slice(0, 1) : all;
  return {
    chains,
    count,
    edgeMm: chains.flatMap(c => c.lying).reduce((sum, l) => sum + l.lengthMm, 0),
    gapMm: gap ? gapAcross(pattern, gap, along) / count : 0,
    ring: chains.length === 1 && chains[0]!.closed,
  };
}

const labelOf = ({ lying }: GarmentChain): string =>
  [...new Set(lying.map(l => JSON.stringify([l.piece, l.edge])))].sort().join();

/** @throws PatternError `edges-do-not-join` where the edges lie in stretches of the garment that differ */
export function requireOneStretch({ chains }: LaidAlong, piece: string): void {
  if (chains.length === 1) return;
  const labels = chains.map(labelOf);
  const groups = chains
    .filter((_, i) => labels.indexOf(labels[i]!) === i)
    .map(chain => saying('edges-together', { edges: edgesOf(chain) }));
  throw refusal('edges-do-not-join', { piece, groups });
}

const edgesOf = (chain: GarmentChain): readonly EdgeRef[] =>
  distinctEdges(runsAlong([chain]).map(({ piece, edge }) => ({ piece, edge })));

/** Tells that there is one piece for each stretch, and how long it is cut. */
export const eachFindings = (piece: string, count: number, lengthMm: number): readonly Finding[] =>
  count < 2 ? [] : [finding('note', 'one-for-each', { piece }, { piece, count, lengthMm })];

/** How the pieces are cut: left and right as a mirrored pair. */
export const cutFor = ({ count }: LaidAlong): { readonly count: number; readonly mirrored: boolean } => ({
  count,
  mirrored: count % 2 === 0,
});
