import { distance, type Point } from '../vector.js';
import type { Cubic } from './segment.js';

/** A place a curve shall pass through, in mm, and its unit direction of travel there. */
export interface Station {
  readonly point: Point;
  readonly direction: Point;
}

/** A fitted cubic and its largest distance in mm from the stations between its ends, square to their directions. */
export interface HermiteFit {
  readonly curve: Cubic;
  readonly deviation: number;
}

/**
 * The cubic with given ends and end directions that comes nearest to the stations between, in least squares of the
 * distance square to each station's direction. Its two handle lengths are found by Gauss–Newton steps: moving a
 * handle moves the curve, and where the curve runs along the station's direction the shift of its foot counts for
 * nothing. Sources: Levien, Parallel curves of cubic Béziers, 2022 (two handle lengths suffice, error of sixth
 * order); Hoschek, Spline approximation of offset curves, 1988 (fitting with reparametrisation).
 */
export function fitHandles(from: Station, to: Station, inner: readonly Station[]): HermiteFit {
  const { point: p, direction: u } = from;
  const { point: s, direction: v } = to;
  const count = inner.length;
  // Chord lengths give first parameters, and their sum the first handles.
  const at: number[] = [];
  let length = 0,
    last = p;
  for (const { point } of inner) {
    length += distance(last, point);
    at.push(length);
    last = point;
  }
  length += distance(last, s);
  for (let i = 0; i < count; i++) at[i]! /= length || 1;
  const first = length / 3;
  let a = first,
    b = first;
  let deviation = Number.POSITIVE_INFINITY;
  let best = { a, b };
  for (let step = 0; step < mostSteps; step++) {
    const q = { x: p.x + a * u.x, y: p.y + a * u.y },
      r = { x: s.x - b * v.x, y: s.y - b * v.y };
    let aa = damping,
      ab = 0,
      bb = damping,
      ra = 0,
      rb = 0,
      worst = 0;
    for (let i = 0; i < count; i++) {
      const { point, direction } = inner[i]!;
      let t = at[i]!,
        x = 0,
        y = 0;
      for (let k = 0; k < 2; k++) {
        const w = 1 - t;
        x = w * w * w * p.x + 3 * w * w * t * q.x + 3 * w * t * t * r.x + t * t * t * s.x - point.x;
        y = w * w * w * p.y + 3 * w * w * t * q.y + 3 * w * t * t * r.y + t * t * t * s.y - point.y;
        const dx = w * w * (q.x - p.x) + 2 * w * t * (r.x - q.x) + t * t * (s.x - r.x);
        const dy = w * w * (q.y - p.y) + 2 * w * t * (r.y - q.y) + t * t * (s.y - r.y);
        const slope = 3 * (dx * direction.x + dy * direction.y);
        const along = x * direction.x + y * direction.y;
        if (slope > 0) t = Math.min(1, Math.max(0, t - along / slope));
      }
      at[i] = t;
      const w = 1 - t;
      x = w * w * w * p.x + 3 * w * w * t * q.x + 3 * w * t * t * r.x + t * t * t * s.x - point.x;
      y = w * w * w * p.y + 3 * w * w * t * q.y + 3 * w * t * t * r.y + t * t * t * s.y - point.y;
      // What is left along the direction shows that no foot was found: count it too.
      const off = y * direction.x - x * direction.y;
      const left = x * direction.x + y * direction.y;
      worst = Math.max(
        worst,
        Math.abs(off) + (Math.abs(left) > Math.abs(off) + first / 100 ? Math.abs(left) : 0),
      );
      const ja = 3 * w * w * t * (u.y * direction.x - u.x * direction.y);
      const jb = -3 * w * t * t * (v.y * direction.x - v.x * direction.y);
      aa += ja * ja;
      ab += ja * jb;
      bb += jb * jb;
      ra += ja * off;
      rb += jb * off;
    }
    if (worst < deviation) {
      deviation = worst;
      best = { a, b };
    }
    const det = aa * bb - ab * ab;
    const da = (ra * bb - rb * ab) / det,
      db = (aa * rb - ab * ra) / det;
    const na = Math.min(3 * length, Math.max(first / 1000, a - da)),
      nb = Math.min(3 * length, Math.max(first / 1000, b - db));
    if (Math.abs(na - a) + Math.abs(nb - b) <= length * handleTolerance) break;
    a = na;
    b = nb;
  }
  return {
    curve: [
      p,
      { x: p.x + best.a * u.x, y: p.y + best.a * u.y },
      { x: s.x - best.b * v.x, y: s.y - best.b * v.y },
      s,
    ],
    deviation,
  };
}

/** Steps converge in three or four; a curve that needs more is going to be cut. */
const mostSteps = 7;
/** Keeps the handles of a straight stretch, on which they have no say, where they are. */
const damping = 1e-9;
/** Relative to the length: handles this near move the curve by less than a thousandth of any fit tolerance. */
const handleTolerance = 1e-7;
