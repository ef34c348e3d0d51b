import type { Edge, Path, Piece, Point, Segment } from '@paperhinge/geometry';

// An independent view of a piece and its cutting line: everything here is dense sampling of the Bézier formula, with
// nothing of the library's but its types.

export interface Sample {
  readonly point: Point;
  /** Unit direction of travel. */
  readonly tangent: Point;
}

/** A point and direction of a segment by the Bernstein form. */
export function evaluated(segment: Segment, t: number): Sample {
  const u = 1 - t;
  if (segment.length === 2) {
    const [p, q] = segment;
    const n = Math.hypot(q.x - p.x, q.y - p.y);
    return {
      point: { x: u * p.x + t * q.x, y: u * p.y + t * q.y },
      tangent: { x: (q.x - p.x) / n, y: (q.y - p.y) / n },
    };
  }
  const [p, q, r, s] = segment;
  const a = u * u * u,
    b = 3 * u * u * t,
    c = 3 * u * t * t,
    d = t * t * t;
  const e = -3 * u * u,
    f = 3 * u * u - 6 * u * t,
    g = 6 * u * t - 3 * t * t,
    h = 3 * t * t;
  const x = e * p.x + f * q.x + g * r.x + h * s.x,
    y = e * p.y + f * q.y + g * r.y + h * s.y;
  const n = Math.hypot(x, y);
  return {
    point: { x: a * p.x + b * q.x + c * r.x + d * s.x, y: a * p.y + b * q.y + c * r.y + d * s.y },
    tangent: { x: x / n, y: y / n },
  };
}

/** Samples of a path, `count` a segment, ends of segments included. */
export const sampled = (path: Path, count: number): readonly Sample[] =>
  path.segments.flatMap(s => Array.from({ length: count + 1 }, (_, i) => evaluated(s, i / count)));

/** The same without the ends of segments. */
export const sampledWithin = (path: Path, count: number): readonly Sample[] =>
  path.segments.flatMap(s => Array.from({ length: count }, (_, i) => evaluated(s, (i + 0.5) / count)));

/** Distance from a point to a path: the best of a dense scan, refined by golden section about it. */
export function distanceTo(path: Path, p: Point): { readonly distance: number; readonly atEnd: boolean } {
  let best = { distance: Number.POSITIVE_INFINITY, atEnd: false };
  for (const [index, segment] of path.segments.entries()) {
    if (farFrom(segment, p) >= best.distance) continue;
    const scan = segment.length === 2 ? 2 : 32;
    const far = (t: number) => {
      const q = evaluated(segment, t).point;
      return Math.hypot(q.x - p.x, q.y - p.y);
    };
    const values = Array.from({ length: scan + 1 }, (_, i) => far(i / scan));
    for (let i = 0; i <= scan; i++) {
      if (
        values[i]! > (values[i - 1] ?? Number.POSITIVE_INFINITY) ||
        values[i]! > (values[i + 1] ?? Number.POSITIVE_INFINITY)
      )
        continue;
      let low = Math.max(0, (i - 1) / scan),
        high = Math.min(1, (i + 1) / scan);
      for (let k = 0; k < 60; k++) {
        const a = low + (high - low) * 0.381966,
          b = low + (high - low) * 0.618034;
        if (far(a) < far(b)) high = b;
        else low = a;
      }
      const t = (low + high) / 2,
        d = Math.min(far(t), values[i]!);
      if (d < best.distance) {
        const isLast = index === path.segments.length - 1;
        const q = evaluated(segment, t).point;
        const from = (end: Point) => Math.hypot(q.x - end.x, q.y - end.y);
        best = {
          distance: d,
          atEnd: (index === 0 && from(segment[0]) < endReach) || (isLast && from(segment.at(-1)!) < endReach),
        };
      }
    }
  }
  return best;
}

/** mm. "Away from corners"; and about a centre of curvature the nearest place cannot be told any finer. */
const endReach = 1;

/** No point of the segment is nearer: the distance to the box about its control points. */
function farFrom(segment: Segment, p: Point): number {
  const xs = segment.map(q => q.x),
    ys = segment.map(q => q.y);
  const dx = Math.max(Math.min(...xs) - p.x, p.x - Math.max(...xs), 0);
  const dy = Math.max(Math.min(...ys) - p.y, p.y - Math.max(...ys), 0);
  return Math.hypot(dx, dy);
}

export const edgesOf = (piece: Piece): readonly Edge[] =>
  piece.outline.parts.filter((p): p is Edge => p.type === 'edge');

/** The places where a closed polyline through dense samples crosses itself. */
export function polylineCrossings(path: Path, count = 12): readonly Point[] {
  const points = path.segments.flatMap(s =>
    Array.from(
      { length: s.length === 2 ? 1 : count },
      (_, i) => evaluated(s, i / (s.length === 2 ? 1 : count)).point,
    ),
  );
  const n = points.length;
  const found: Point[] = [];
  const side = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  for (let i = 0; i < n; i++)
    for (let k = i + 2; k < n; k++) {
      if (i === 0 && k === n - 1) continue;
      const a = points[i]!,
        b = points[(i + 1) % n]!,
        c = points[k]!,
        d = points[(k + 1) % n]!;
      if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) continue;
      if (Math.max(a.y, b.y) < Math.min(c.y, d.y) || Math.max(c.y, d.y) < Math.min(a.y, b.y)) continue;
      const s = side(a, b, c) * side(a, b, d),
        t = side(c, d, a) * side(c, d, b);
      if (s < -1e-12 && t < -1e-12) found.push(a);
    }
  return found;
}

/** Twice nothing lost: the largest gap between the end of a segment and the start of the next, in mm. */
export const largestGap = (path: Path): number =>
  Math.max(
    ...path.segments.map((s, i) => {
      const next = path.segments[(i + 1) % path.segments.length]![0],
        end = s[s.length - 1]!;
      return Math.hypot(next.x - end.x, next.y - end.y);
    }),
  );

/** Signed area by the shoelace of dense samples; positive clockwise as seen. */
export function shoelace(path: Path, count = 400): number {
  const points = sampled(path, count).map(s => s.point);
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + (p.x * q.y - p.y * q.x) / 2;
  }, 0);
}
