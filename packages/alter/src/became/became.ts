import type { EdgeRef, Thing } from '@paperhinge/geometry';

/** A stretch of an edge: mm of arc length from its start (clockwise); `from` over `to`: it runs the other way. */
export interface EdgeSpan extends EdgeRef {
  readonly from: number;
  readonly to: number;
}

/** What became of a stretch of an edge. Between its ends places keep their share of it. */
export interface SpanBecame {
  readonly was: EdgeSpan;
  /** Absent: cut away. Where it now lies in two places (a mirrored half) there is an entry for each. */
  readonly now?: EdgeSpan;
  /** A new line stands in its place: the edge goes on under its name, but no place of its cloth does. */
  readonly redrawn?: true;
}

/** What became of a dart, pleat, line, mark, seam or whole piece, by its names; `now` absent: it is gone. */
export interface ThingBecame {
  readonly was: Thing;
  readonly now?: Thing;
}

/**
 * What became of what in one step: the correspondence old to new that selections, handles, labels, notches and seams
 * follow by, see `follow`. What is not listed is as it was, under its name. Of an edge that is listed, the stretches
 * that are not are gone.
 */
export interface Became {
  readonly edges: readonly SpanBecame[];
  readonly things: readonly ThingBecame[];
}

/** Everything is where it was. */
export const nothingBecame: Became = { edges: [], things: [] };

/** Several changes to different edges and things as one. */
export const together = (...all: readonly Became[]): Became => ({
  edges: all.flatMap(b => b.edges),
  things: all.flatMap(b => b.things),
});
