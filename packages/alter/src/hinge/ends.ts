import type { Path, Point, Segment } from '@paperhinge/geometry';

/** A path whose first point is set exactly on another that coincides with it; nothing else of it changes. */
export const startingAt = ({ segments }: Path, p: Point): Path => ({
  segments: segments.map((s, i) => (i === 0 ? ([p, ...s.slice(1)] as unknown as Segment) : s)),
});

/** The same for its last point. */
export const endingAt = ({ segments }: Path, p: Point): Path => ({
  segments: segments.map((s, i) =>
    i === segments.length - 1 ? ([...s.slice(0, -1), p] as unknown as Segment) : s,
  ),
});
