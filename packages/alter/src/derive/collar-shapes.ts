import {
  at,
  type Edge,
  line,
  type Path,
  type Piece,
  type PieceLine,
  type Point,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import { pathWithoutLoops } from '@paperhinge/geometry/cutting-line';
import {
  endTangent,
  fairCurve,
  joined,
  pathEnd,
  pathStart,
  reversedPath,
  startTangent,
} from '@paperhinge/geometry/paths';
import { add, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { joinedInOne, parallelPieces } from '../moved-edges/inward-parallel.js';
import { laidOut } from './straight-or-arc.js';

type Outlined = Pick<Piece, 'outline' | 'lines'>;

export const seamEdge = (name: string, path: Path, allowance: number, kind: Edge['kind'] = 'seam'): Edge => ({
  type: 'edge',
  name,
  path,
  kind,
  allowance: kind === 'fold' || kind === 'raw' ? 0 : allowance,
  corners: {},
});

export const grainLine = (from: Point, to: Point): PieceLine => ({
  kind: 'grain',
  name: 'grain',
  path: pathOf(line(from, to)),
});

/**
 * How much shorter the upper edge of a stand is than its neck edge, as a ratio, where its neck edge rises by `rise` mm
 * at either front: an arc of the half length h with the sagitta R (1 − cos(h / R)) = rise, found by halving.
 */
export function ratioOfRise(length: number, width: number, rise: number): number {
  if (rise <= 0) return 1;
  const half = length / 2;
  // The turn h / R of half the arc; a quarter circle is more than any neck leans in.
  let [low, high] = [0, Math.PI / 2];
  for (let n = 0; n < 60; n++) {
    const turn = (low + high) / 2;
    if ((half / turn) * (1 - Math.cos(turn)) < rise) low = turn;
    else high = turn;
  }
  return 1 - width / (half / low);
}

/**
 * The fall of a shirt collar: its lower edge as long as the stand's upper one, curved the other way, its points
 * `spread` mm beyond its ends and `point` mm long, `depth` mm deep at the centre back.
 */
export function fallShape(
  place: Point,
  wish: { length: number; depth: number; point: number; spread: number; ratio: number; allowance: number },
): Outlined {
  const { length, depth, point, spread, allowance } = wish;
  const lay = laidOut(place, length, depth, wish.ratio);
  const [left, right] = [lay.spot(-spread, point), lay.spot(length + spread, point)];
  const middle = lay.spot(length / 2, depth);
  const level = subtract(lay.spot(length / 2 + 1, depth), middle);
  const outer = joined(
    fairCurve(
      { point: right, direction: subtract(middle, right) },
      { point: middle, direction: scale(level, -1) },
    ),
    fairCurve(
      { point: middle, direction: scale(level, -1) },
      { point: left, direction: subtract(left, middle) },
    ),
  );
  const lower = lay.line(0, length, 0);
  // A collar's ends meet at the centre front, and need not run on into those of its stand.
  const atCentre = (name: string, path: Path): Edge => ({
    ...seamEdge(name, path, allowance),
    role: 'centre',
  });
  return {
    outline: {
      parts: [
        seamEdge('lower', lower, allowance),
        atCentre('front', pathOf(line(pathEnd(lower), right))),
        seamEdge('outer', outer, allowance),
        atCentre('other front', pathOf(line(left, pathStart(lower)))),
      ],
    },
    lines: [grainLine(lay.spot(length * 0.4, depth / 2), lay.spot(length * 0.6, depth / 2))],
  };
}

/** A flat collar: the neck line itself, and its parallel at `width` on the garment side. */
export function flatShape(
  neck: Path,
  { width, onFold, allowance }: { width: number; onFold: boolean; allowance: number },
): Outlined {
  const parallel = joinedInOne(parallelPieces(neck, width), width);
  const start = add(pathStart(neck), scale(right(startTangent(neck)), width));
  const end = add(pathEnd(neck), scale(right(endTangent(neck)), width));
  const outer = pathWithoutLoops(parallel);
  const down = pathOf(line(start, pathStart(neck)));
  const middle = pathLength(down) / 2;
  const way = unit(subtract(pathStart(neck), start));
  const beside = add(pathStart(neck), scale(startTangent(neck), width / 2));
  return {
    outline: {
      parts: [
        seamEdge('neck', neck, allowance),
        seamEdge('front', pathOf(line(pathEnd(neck), end)), allowance),
        seamEdge('outer', reversedPath(outer), allowance),
        seamEdge('centre-back', down, allowance, onFold ? 'fold' : 'seam'),
      ],
    },
    lines: [grainLine(add(beside, scale(way, -0.4 * middle)), add(beside, scale(way, -1.6 * middle)))],
  };
}

const right = ({ x, y }: Point): Point => at(-y, x);
