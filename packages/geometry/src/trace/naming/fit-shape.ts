import type { EdgeRole } from '../../pattern/types.js';
import type { EdgeLike, PieceLike } from './piece-like.js';
import type { PieceShape, RunShape } from './run-shape.js';

/** How a piece is like a kind of piece: which of its edges is which, and how far off it is. */
export interface ShapeFit {
  readonly like: PieceLike;
  /** Mean square of what each figure is off, in what it usually varies by; 1 is an everyday piece, 9 none. */
  readonly off: number;
  /** By edge, clockwise; an edge of the kind may be several of the piece. */
  readonly roles: ReadonlyMap<string, EdgeRole | undefined>;
  /** What edges without a role are called. */
  readonly called: ReadonlyMap<string, string>;
  /** Seen from the other side, its centre to the right. */
  readonly mirrored: boolean;
  /** It stands on its page as such pieces are drawn. */
  readonly isUpright: boolean;
}

/** No figure counts for more than this, so that one odd edge does not hide what all others say. */
const worst = 9;
/** What it costs to take two edges for one: a corner where none is expected. */
const seamWithin = 3;
/** rad: a piece lies this far from upright on its page, give or take. */
const tilt = (25 * Math.PI) / 180;
/** rad: what is turned by more does not stand upright. */
const upright = (15 * Math.PI) / 180;
/** What a turn counts for among pieces that lie any way. */
const worstAnyWay = 2;
const mostTogether = 3;

/** How pieces lie on their page: upright, as they are printed, or any way, as they are laid down and traced. */
export type Lying = 'upright' | 'any way';

/** The best fits of a piece to a kind of piece, over every beginning, both sides and edges taken together. */
export function fitShape(shape: PieceShape, like: PieceLike, lying: Lying = 'upright'): ShapeFit | undefined {
  let best: ShapeFit | undefined;
  for (const mirrored of [false, true])
    for (let from = 0; from < shape.edges.length; from++)
      for (const runs of partings(shape, from, like.edges.length)) {
        const fit = measured(shape, like, runs, { mirrored, lying });
        if (!best || fit.off < best.off) best = fit;
      }
  return best;
}

/** All ways to part the edges from one on into so many runs. */
function partings(shape: PieceShape, from: number, count: number): readonly (readonly RunShape[])[] {
  const all = shape.edges.length;
  const part = (at: number, left: number, runs: number): readonly (readonly RunShape[])[] => {
    if (runs === 1) return left <= mostTogether ? [[shape.run(at % all, left)]] : [];
    const ways: (readonly RunShape[])[] = [];
    for (let k = 1; k <= Math.min(mostTogether, left - runs + 1); k++)
      for (const rest of part(at + k, left - k, runs - 1)) ways.push([shape.run(at % all, k), ...rest]);
    return ways;
  };
  // More corners than this and no kind of piece that is known here: most of them mean something else.
  return all < count || all > count + mostTogether ? [] : part(from, all, count);
}

function measured(
  shape: PieceShape,
  like: PieceLike,
  runs: readonly RunShape[],
  { mirrored, lying }: { readonly mirrored: boolean; readonly lying: Lying },
): ShapeFit {
  const edges = mirrored ? [...like.edges].reverse() : like.edges;
  const expected = edges.map(({ faces: [deg] }) => ((mirrored ? 180 - deg : deg) * Math.PI) / 180);
  const turned = meanTurn(
    runs.map((run, i) => run.faces - expected[i]!),
    runs,
  );
  const offs = runs.flatMap((run, i) => offsOf(run, edges[i]!, wrapped(run.faces - expected[i]! - turned)));
  const size = square(Math.log(shape.sizeMm / like.size[0]) / like.size[1]);
  const together = runs.reduce((sum, run) => sum + seamWithin * (run.edges.length - 1), 0);
  const onFold = runs.some(run => run.kinds.includes('fold'));
  const lacksFold = (like.onFold && !onFold) || (like.inPairs && onFold) ? [worst] : [];
  const tilted = Math.min(lying === 'upright' ? worst : worstAnyWay, square(turned / tilt));
  const all = [...offs, size, tilted, ...lacksFold].map(off => Math.min(worst, off));
  return {
    like,
    off: (all.reduce((a, b) => a + b, 0) + together) / all.length,
    roles: new Map(runs.flatMap((run, i) => run.edges.map(name => [name, edges[i]!.role]))),
    called: new Map(
      runs.flatMap((run, i) => {
        const { called } = edges[i]!;
        return called === undefined ? [] : run.edges.map(name => [name, called] as const);
      }),
    ),
    mirrored,
    isUpright: Math.abs(turned) < upright,
  };
}

function offsOf(run: RunShape, like: EdgeLike, turn: number): readonly number[] {
  const off = (value: number, [mean, spread]: readonly [number, number]): number =>
    square((value - mean) / spread);
  return [
    square((turn * 180) / Math.PI / like.faces[1]),
    off(run.hollow, like.hollow),
    square(Math.log(run.share / like.share[0]) / like.share[1]),
    kindOff(run, like),
  ];
}

/** A fold is a centre, and what is turned up is a hem or an opening; where the drawing says so. */
function kindOff({ kinds }: RunShape, { role }: EdgeLike): number {
  if (kinds.includes('fold')) return role === 'centre' ? 0 : worst;
  if (kinds.includes('hem')) return role === 'hem' || role === 'opening' || role === 'centre' ? 0 : worst;
  return 0;
}

/** The turn that brings the directions together, longer edges counting for more. */
function meanTurn(turns: readonly number[], runs: readonly RunShape[]): number {
  const sum = (of: (angle: number) => number): number =>
    turns.reduce((all, angle, i) => all + of(angle) * runs[i]!.share, 0);
  return Math.atan2(sum(Math.sin), sum(Math.cos));
}

const square = (x: number): number => x * x;
const wrapped = (angle: number): number => Math.atan2(Math.sin(angle), Math.cos(angle));
