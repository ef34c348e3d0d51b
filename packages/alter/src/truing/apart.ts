import { type Path, type Point, pointAt } from '@paperhinge/geometry';

/**
 * mm: the farthest that either of two lines between the same ends lies from the other. Both are seen as polygons of
 * some hundred sides, which lie within 0.01 mm of any line fair enough to be sewn, and are followed side by side.
 */
export function apartBetween(a: Path, b: Path): number {
  const p = polygonOf(a),
    q = polygonOf(b);
  return Math.max(farthestFrom(p, q), farthestFrom(q, p));
}

const sides = 128;
/** Sides looked at beyond the last nearest one: both lines run the same way, neither far ahead. */
const lookAhead = 12;

function polygonOf(path: Path): readonly Point[] {
  const steps = Math.max(4, Math.ceil(sides / path.segments.length));
  return path.segments.flatMap((segment, s) =>
    Array.from({ length: s === 0 ? steps + 1 : steps }, (_, i) =>
      pointAt(segment, (s === 0 ? i : i + 1) / steps),
    ),
  );
}

function farthestFrom(points: readonly Point[], polygon: readonly Point[]): number {
  let farthest = 0,
    from = 0;
  for (const p of points) {
    let nearest = Number.POSITIVE_INFINITY;
    const first = Math.max(0, from - lookAhead),
      last = Math.min(polygon.length - 2, from + lookAhead);
    for (let i = first; i <= last; i++) {
      const square = squareToSide(p, polygon[i]!, polygon[i + 1]!);
      if (square < nearest) {
        nearest = square;
        from = i;
      }
    }
    farthest = Math.max(farthest, nearest);
  }
  return Math.sqrt(farthest);
}

/** The square of the distance, without points in between: it is asked for some thousand times a line. */
function squareToSide(p: Point, a: Point, b: Point): number {
  const sx = b.x - a.x,
    sy = b.y - a.y,
    wx = p.x - a.x,
    wy = p.y - a.y;
  const square = sx * sx + sy * sy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, (wx * sx + wy * sy) / square));
  const dx = wx - sx * t,
    dy = wy - sy * t;
  return dx * dx + dy * dy;
}
