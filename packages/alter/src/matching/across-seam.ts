import { type EdgeRun, type Pattern, pieceNamed, type Seam } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { type EdgePosition, type PlaceOnEdge, resolvePosition } from '@paperhinge/geometry/pattern';
import { sameEdge } from '../edge-refs.js';
import { sideLength, stretchOf } from '../moved-edges/seam-place.js';

/** Where a share of the length of a seam's side lies on its edges. */
export function placeOnSide(pattern: Pattern, side: readonly EdgeRun[], share: number): PlaceOnEdge {
  let left = share * sideLength(pattern, side);
  for (const run of side) {
    const [from, to] = stretchOf(pattern, run);
    if (left <= to - from || run === side.at(-1))
      return { piece: run.piece, edge: run.edge, at: run.reversed ? to - left : from + left };
    left -= to - from;
  }
  throw new Error('A side of a seam has edges.');
}

/** A place that lies on another when their seam is sewn. */
export interface Across extends PlaceOnEdge {
  readonly seam: Seam;
}

/** The places that a place of an edge is sewn to: in each seam that takes it, as large a share along the other side. */
export function acrossSeams(pattern: Pattern, place: PlaceOnEdge): readonly Across[] {
  return pattern.seams.flatMap(seam =>
    (
      [
        [seam.a, seam.b],
        [seam.b, seam.a],
      ] as const
    ).flatMap(([own, other]) => {
      const share = shareOfSide(pattern, own, place);
      return share === undefined ? [] : [{ ...placeOnSide(pattern, other, share), seam }];
    }),
  );
}

/** How far along a side a place of one of its edges lies; undefined where the side does not take it. */
function shareOfSide(pattern: Pattern, side: readonly EdgeRun[], place: PlaceOnEdge): number | undefined {
  let before = 0;
  for (const run of side) {
    const [from, to] = stretchOf(pattern, run);
    const isOnIt =
      sameEdge(run, place) &&
      place.at >= from - tolerances.joiningGap &&
      place.at <= to + tolerances.joiningGap;
    if (isOnIt) {
      const along = before + (run.reversed ? to - place.at : place.at - from);
      return Math.min(Math.max(along / sideLength(pattern, side), 0), 1);
    }
    before += to - from;
  }
  return undefined;
}

/** A place on an edge as a step gives it, in mm along the edge. */
export const placeGiven = (
  pattern: Pattern,
  { piece, edge }: { readonly piece: string; readonly edge: string },
  at: EdgePosition = { share: 0.5 },
): PlaceOnEdge => ({ piece, edge, at: resolvePosition(pieceNamed(pattern, piece), edge, at) });
