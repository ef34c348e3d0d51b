import { edgeNames, edgePath, type Pattern, type Piece, pathLength } from '@paperhinge/geometry';
import { abs, oncePer } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { PlaceOnEdge } from '@paperhinge/geometry/pattern';
import type { Said } from '../alteration.js';
import { sameEdge } from '../edge-refs.js';
import { type SharpCorner, sharpCorners } from './sharp-corners.js';
import { followPlace } from './things.js';

/**
 * An alteration whose pattern lists the sharp corners that it left, beside those that steps before it did and that are
 * still there: where what was cut meets other cloth than before, or the same at another angle. A corner that was there
 * is what it was; a line drawn anew has the corners that are meant.
 */
export function withLeftToTrue(before: Pattern, alteration: Said): Said {
  const { pattern, became } = alteration;
  const now = (places: readonly PlaceOnEdge[]) => places.flatMap(place => followPlace(became, place));
  const corners = now(before.pieces.flatMap(piece => sharpCorners(piece).flat()));
  const ends = now(before.pieces.flatMap(endsOfEdges));
  const cuts = became.edges.flatMap(({ now: on, redrawn }) =>
    on ? [on.from, on.to].map(at => ({ ...on, at, redrawn })) : [],
  );
  const isLeft = (corner: SharpCorner): boolean => {
    const here = cuts.filter(cut => isIn([cut], corner));
    return (
      isIn(pattern.leftToTrue ?? [], corner) ||
      (here.length > 0 &&
        !here.some(cut => cut.redrawn) &&
        !isIn(corners, corner) &&
        // An edge that was cut off, or drawn on, meets the next at a corner of its own; one that a closed dart's step was
        // added to meets it where the dart was.
        (corner[0].edge === corner[1].edge || corner.every(side => isIn(ends, [side], stepAtDart))))
    );
  };
  const left = pattern.pieces.flatMap(sharpCorners).filter(isLeft);
  const { leftToTrue, ...rest } = pattern;
  if (left.length > 0) return { ...alteration, pattern: { ...rest, leftToTrue: left.map(([side]) => side) } };
  return leftToTrue ? { ...alteration, pattern: rest } : alteration;
}

const endsOfEdges: (piece: Piece) => readonly PlaceOnEdge[] = /* @__PURE__ */ oncePer((piece: Piece) =>
  edgeNames(piece).flatMap(edge =>
    [0, pathLength(edgePath(piece, edge))].map(at => ({ piece: piece.name, edge, at })),
  ),
);

/** mm. Legs that differ by as much leave a step so long. */
const stepAtDart = tolerances.dartLegTolerance + tolerances.visibleLength;

/** Whether any of the places is one of those of a corner. */
const isIn = (
  places: readonly PlaceOnEdge[],
  corner: readonly PlaceOnEdge[],
  within = tolerances.visibleLength,
): boolean =>
  places.some(place => corner.some(side => sameEdge(side, place) && abs(side.at - place.at) <= within));
