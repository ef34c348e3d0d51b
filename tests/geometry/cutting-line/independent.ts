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
  const p =
    segment.length === 2 ? [segment[0], mix(segment, 1 / 3), mix(segment, 2 / 3), segment[1]] : segment;
  const u = 1 - t;
  const w = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
  const d = [-3 * u * u, 3 * u * u - 6 * u * t, 6 * u * t - 3 * t * t, 3 * t * t];
  const sum = (k: readonly number[], axis: 'x' | 'y') => k.reduce((s, w, i) => s + w * p[i]![axis], 0);
  const v = { x: sum(d, 'x'), y: sum(d, 'y') };
  const n = Math.hypot(v.x, v.y);
  return { point: { x: sum(w, 'x'), y: sum(w, 'y') }, tangent: { x: v.x / n, y: v.y / n } };
}

const mix = (s: readonly [Point, Point], t: number): Point => ({
  x: s[0].x + (s[1].x - s[0].x) * t,
  y: s[0].y + (s[1].y - s[0].y) * t,
});

/** Samples of a path, `count` a segment, ends of segments included. */
export const sampled = (path: Path, count: number): readonly Sample[] =>
  path.segments.flatMap(s => Array.from({ length: count + 1 }, (_, i) => evaluated(s, i / count)));

/** Distance from a point to a path: the best of a dense scan, refined by golden section about it. */
export function distanceTo(path: Path, p: Point): { readonly distance: number; readonly atEnd: boolean } {
  let best = { distance: Number.POSITIVE_INFINITY, atEnd: false };
  for (const [index, segment] of path.segments.entries()) {
    const scan = segment.length === 2 ? 8 : 48;
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
      if (values[i]! - best.distance > 40) continue;
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
