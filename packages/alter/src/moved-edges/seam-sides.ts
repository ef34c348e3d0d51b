import { edgeNamed, type Pattern, type Piece, pieceNamed, roleOf, type Seam } from '@paperhinge/geometry';
import { copiesInGarment, foldEdgeOf } from '@paperhinge/geometry/pattern';
import { distinctEdges } from '../edge-refs.js';
import type { MovedRun } from './move-edges-inwards.js';
import { sideLength, stretchOf } from './seam-place.js';

/** One side of a seam, its edges placed along it. */
export interface Side {
  readonly runs: readonly MovedRun[];
  /** How many edges lie beside each other on this side: in the whole garment, or in one limb. */
  readonly times: number;
}

/**
 * Whether a seam closes a sleeve or a leg: what is taken in there is taken from each limb by itself, not shared by the
 * two (common practice, no source).
 */
export const closesLimb = (pattern: Pattern, { a, b }: Seam): boolean =>
  [...a, ...b].every(({ piece, edge }) => {
    const role = roleOf(edgeNamed(pieceNamed(pattern, piece), edge));
    return role === 'inseam' || role === 'underarm';
  });

/** Copies in the garment; in one limb of a pair an edge lies once, twice on a fold. */
const timesOf = (piece: Piece, inLimb: boolean): number =>
  inLimb ? Math.min(copiesInGarment(piece), foldEdgeOf(piece) ? 2 : 1) : copiesInGarment(piece);

/** Each side of the seam, or the one side of a seam that is sewn to its own mirror image. */
export function sidesOf(pattern: Pattern, seam: Seam): readonly Side[] {
  const sides = (['a', 'b'] as const).map((which): Side => {
    const runs = distinctEdges(seam[which]);
    const whole = sideLength(pattern, runs);
    let start = 0;
    const placed = runs.map(run => {
      const [from, to] = stretchOf(pattern, run);
      const fromShare = start / whole;
      start += to - from;
      return { ...run, side: which, fromShare, toShare: start / whole };
    });
    return {
      runs: placed,
      times: Math.max(...runs.map(run => timesOf(pieceNamed(pattern, run.piece), closesLimb(pattern, seam)))),
    };
  });
  const label = (side: Side): string =>
    side.runs
      .map(r => `${r.piece}.${r.edge}`)
      .sort()
      .join(' ');
  return label(sides[0]!) === label(sides[1]!) ? [sides[0]!] : sides;
}
