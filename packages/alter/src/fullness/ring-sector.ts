import { at, type Edge, line, type OutlinePart, type Path, type Point, pathOf } from '@paperhinge/geometry';
import { arcBetween } from '@paperhinge/geometry/curves';
import { add, scale } from '@paperhinge/geometry/plane';

/** A part of a ring: how far its inner and its outer line lie from the middle (mm), and how far round it goes (rad). */
export interface RingSector {
  readonly inner: number;
  readonly outer: number;
  readonly sweep: number;
}

/** How the four edges of a sector are called and treated; their paths do not count. */
export interface SectorEdges {
  readonly inner: Edge;
  readonly side: Edge;
  readonly outer: Edge;
  readonly start: Edge;
}

/**
 * The outline of a part of a ring that hangs down from its middle, clockwise: the inner line from the straight edge that
 * points down to the far side, that side, the outer line back, and the straight edge (a fold) up again. Arcs deviate
 * from circles by less than 4e-7 of their radius.
 *
 * @param middle where the middle of the ring lies
 */
export function sectorOutline(
  { inner, outer, sweep }: RingSector,
  middle: Point,
  edges: SectorEdges,
): readonly OutlinePart[] {
  // Down the page at the start, then round to the right as the sector opens.
  const away = (angle: number): Point => at(Math.sin(angle), Math.cos(angle));
  const on = (radius: number, angle: number): Point => add(middle, scale(away(angle), radius));
  const arc = (radius: number, from: number, to: number, clockwise: boolean): Path =>
    pathOf(...arcBetween(middle, scale(away(from), radius), scale(away(to), radius), clockwise));
  const drawn = (edge: Edge, path: Path): Edge => ({ ...edge, path });
  return [
    drawn(edges.inner, arc(inner, 0, sweep, false)),
    drawn(edges.side, pathOf(line(on(inner, sweep), on(outer, sweep)))),
    drawn(edges.outer, arc(outer, sweep, 0, true)),
    drawn(edges.start, pathOf(line(on(outer, 0), on(inner, 0)))),
  ];
}
