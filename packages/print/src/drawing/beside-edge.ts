import { edgePath, type Path, type Piece, type Point, pathLength, polyline } from '@paperhinge/geometry';
import { pointAlong, tangentAlong } from '@paperhinge/geometry/paths';
import { add, rightOf, scale } from '@paperhinge/geometry/plane';

/** mm between the points of a line drawn beside an edge: its chords stray by less than its pen is wide. */
const apart = 3;

/** A place on an edge, and the way into the piece from there. */
export interface EdgePlace {
  readonly at: Point;
  /** Unit vectors: clockwise along the edge, and into the piece. */
  readonly along: Point;
  readonly inwards: Point;
}

/** @param at mm of arc length from the edge's start, clockwise */
export function placeOnEdge(path: Path, at: number): EdgePlace {
  const along = tangentAlong(path, at);
  return { at: pointAlong(path, at), along, inwards: rightOf(along) };
}

/** mm within an edge, clockwise, from one end to the other. */
export interface EdgeSpan {
  readonly from: number;
  readonly to: number;
}

/** A line so far inside an edge, over a part of it. */
export function besideEdge(path: Path, inset: number, { from, to }: EdgeSpan): Path {
  const count = Math.max(Math.ceil((to - from) / apart), 1);
  const points = Array.from({ length: count + 1 }, (_, i) => {
    const { at, inwards } = placeOnEdge(path, from + ((to - from) * i) / count);
    return add(at, scale(inwards, inset));
  });
  return polyline(...points);
}

export const wholeEdge = (path: Path): EdgeSpan => ({ from: 0, to: pathLength(path) });

/** A run's part of its edge, and the edge itself; none where the piece has no such edge. */
export function spanOf(
  piece: Piece,
  run: { readonly edge: string; readonly part?: EdgeSpan },
): { readonly path: Path; readonly span: EdgeSpan } | undefined {
  if (!piece.outline.parts.some(p => p.type === 'edge' && p.name === run.edge)) return undefined;
  const path = edgePath(piece, run.edge);
  return { path, span: run.part ?? wholeEdge(path) };
}
