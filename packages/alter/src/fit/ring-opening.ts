import { type EdgeRef, edgePath, type Pattern, pathLength, pieceNamed } from '@paperhinge/geometry';
import { lengthInGarment } from '@paperhinge/geometry/measure';
import { runLabel } from '@paperhinge/geometry/pattern';
import type { Derived } from '../alteration.js';
import { distinctRuns, holdsEdge, sameEdge } from '../edge-refs.js';
import { stretchOf } from './cloth.js';
import { slitsAt } from './slits.js';

/** How wide a ring of edges opens, stretched as far as its cloth and its bands go; lengths in mm. */
export interface RingOpening {
  /** The edges that make the ring. */
  readonly edges: readonly EdgeRef[];
  /** (E + G) × (1 + stretch) of the edge itself. */
  readonly edgeMm: number;
  /** (length − 2 join) × (1 + stretch) of each band sewn to it. */
  readonly bands: readonly { readonly name: string; readonly reachMm: number }[];
  /** Plackets, zips and free edges that open it, each once. */
  readonly openingMm: number;
  /** The least of edge and bands, plus what closes the ring beside them and twice the openings. */
  readonly widestMm: number;
}

/** How long an edge is in the ring in question: over the whole garment, or in one sleeve of two. In mm. */
export type LengthInRing = (pattern: Pattern, ref: EdgeRef) => number;

/**
 * How wide a ring opens. A piece that is sewn to the whole of it and was not drafted in this run (its own old
 * neckband or cuff) holds it in like a drafted band.
 *
 * @param drafted the bands and bindings that were drafted for it
 * @param held the edges that an old band must hold, all of them, to hold the ring in
 * @param besideMm what closes the ring beside its edges and their bands, stretched: straps
 */
export function ringOpening(
  pattern: Pattern,
  edges: readonly EdgeRef[],
  drafted: readonly Derived[],
  {
    held = edges,
    lengthOf = lengthInGarment,
    besideMm = 0,
  }: { held?: readonly EdgeRef[]; lengthOf?: LengthInRing; besideMm?: number } = {},
): RingOpening {
  const stretches = edges.map(e => stretchOf(pattern, pieceNamed(pattern, e.piece).cutting.fabric));
  const gapMm = Math.max(0, ...drafted.map(d => d.figures.gapMm ?? 0));
  const edgeMm =
    edges.reduce(
      (sum, e, i) => sum + grown(lengthOf(pattern, e) * shareInRing(pattern, edges, e), stretches[i]!),
      0,
    ) + grown(gapMm, Math.min(...stretches));
  const bands = [
    ...drafted.map(d => ({
      name: d.name,
      reachMm: grown(d.lengthMm - 2 * (d.figures.joinMm ?? 0), stretchOf(pattern, d.fabric)),
    })),
    ...oldBands(pattern, held, drafted, lengthOf),
  ];
  const openingMm = slitsAt(pattern, edges).reduce((sum, slit) => sum + slit.lengthMm, 0);
  const widestMm = Math.min(edgeMm, ...bands.map(b => b.reachMm)) + besideMm + 2 * openingMm;
  return { edges, edgeMm, bands, openingMm, widestMm };
}

/** How much of an edge lies in a ring: of a hip piece only what the seam round the ring takes in, beside other edges of it. */
function shareInRing(pattern: Pattern, ring: readonly EdgeRef[], ref: EdgeRef): number {
  const edgeMm = pathLength(edgePath(pieceNamed(pattern, ref.piece), ref.edge));
  const sewnMm = pattern.seams
    .flatMap(({ a, b }) => [a, b])
    .filter(side => side.some(run => holdsEdge(ring, run) && !sameEdge(run, ref)))
    .map(side => distinctRuns(side.filter(run => sameEdge(run, ref))))
    .filter(runs => runs.length > 0)
    .map(runs => runs.reduce((sum, { part }) => sum + (part ? part.to - part.from : edgeMm), 0));
  return sewnMm.length === 0 ? 1 : Math.min(1, Math.max(...sewnMm) / edgeMm);
}

const grown = (mm: number, percent: number): number => mm * (1 + percent / 100);

/** Pieces that were there before and are sewn to the whole ring: what their sewn edges reach when stretched. */
function oldBands(
  pattern: Pattern,
  edges: readonly EdgeRef[],
  drafted: readonly Derived[],
  lengthOf: LengthInRing,
): RingOpening['bands'] {
  const isRing = (r: EdgeRef) => holdsEdge(edges, r);
  const sides = pattern.seams.flatMap(({ a, b }) => [[a, b] as const, [b, a] as const]);
  return sides.flatMap(([ring, others]) => {
    if (!ring.some(isRing) || others.some(isRing)) return [];
    // A piece sewn to a part of the ring only leaves the rest free to open.
    if (!edges.every(e => holdsEdge(ring, e))) return [];
    const pieces = [...new Set(others.map(r => r.piece))];
    if (pieces.some(p => drafted.some(d => d.name === p))) return [];
    const once = others.filter((r, i) => i === others.findIndex(o => runLabel(o) === runLabel(r)));
    const reachMm = once.reduce(
      (sum, r) =>
        sum + grown(lengthOf(pattern, r), stretchOf(pattern, pieceNamed(pattern, r.piece).cutting.fabric)),
      0,
    );
    return [{ name: pieces.join(' + '), reachMm }];
  });
}
