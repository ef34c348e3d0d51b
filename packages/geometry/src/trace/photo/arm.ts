import { coincidenceTolerance, oneLineSine } from '../../tolerance.js';
import type { Point } from '../../vector.js';

/** A stretch of an outline beside a corner as a parabola: y = a + b x + c x² in a frame of its own. */
export interface Arm {
  readonly origin: Point;
  /** Unit vector of the frame's x, away from the corner. */
  readonly along: Point;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** mm: typical distance of its points from it. */
  readonly rms: number;
}

/** The parabola through points that lead away from a corner; a straight line where there are few. */
export function armThrough(points: readonly Point[], straight: boolean): Arm {
  const origin = points[0]!,
    last = points.at(-1)!;
  const length = Math.hypot(last.x - origin.x, last.y - origin.y) || 1;
  const along = { x: (last.x - origin.x) / length, y: (last.y - origin.y) / length };
  const at = points.map(p => {
    const dx = p.x - origin.x,
      dy = p.y - origin.y;
    return { x: (dx * along.x + dy * along.y) / length, y: along.x * dy - along.y * dx };
  });
  const [a, b, c] = parabola(at, straight);
  const square = at.reduce((sum, { x, y }) => sum + (y - a - b * x - c * x * x) ** 2, 0);
  return { origin, along, a, b: b / length, c: c / length ** 2, rms: Math.sqrt(square / at.length) };
}

function parabola(at: readonly { readonly x: number; readonly y: number }[], straight: boolean) {
  let [s1, s2, s3, s4, t0, t1, t2] = [0, 0, 0, 0, 0, 0, 0];
  const n = at.length;
  for (const { x, y } of at) {
    s1 += x;
    s2 += x * x;
    s3 += x ** 3;
    s4 += x ** 4;
    t0 += y;
    t1 += x * y;
    t2 += x * x * y;
  }
  if (straight || n < 6) {
    const d = n * s2 - s1 * s1 || 1;
    const b = (n * t1 - s1 * t0) / d;
    return [(t0 - b * s1) / n, b, 0] as const;
  }
  // Cramer's rule on the three normal equations.
  const det = n * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s3 * s2) + s2 * (s1 * s3 - s2 * s2);
  const a = (t0 * (s2 * s4 - s3 * s3) - s1 * (t1 * s4 - s3 * t2) + s2 * (t1 * s3 - s2 * t2)) / det;
  const b = (n * (t1 * s4 - t2 * s3) - t0 * (s1 * s4 - s3 * s2) + s2 * (s1 * t2 - t1 * s2)) / det;
  const c = (n * (s2 * t2 - s3 * t1) - s1 * (s1 * t2 - t1 * s2) + t0 * (s1 * s3 - s2 * s2)) / det;
  return [a, b, c] as const;
}

/** The point of an arm at x mm along its frame, before it (negative) too. */
function pointOfArm({ origin, along, a, b, c }: Arm, x: number): Point {
  const y = a + b * x + c * x * x;
  return { x: origin.x + along.x * x - along.y * y, y: origin.y + along.y * x + along.x * y };
}

/** How far a point lies off an arm, across its frame, mm. */
export function offArm({ origin, along, a, b, c }: Arm, p: Point): number {
  const dx = p.x - origin.x,
    dy = p.y - origin.y;
  const x = dx * along.x + dy * along.y;
  return along.x * dy - along.y * dx - (a + b * x + c * x * x);
}

/** Unit direction away from the corner, at x mm along the frame. */
export function directionOfArm({ along, b, c }: Arm, x: number): Point {
  const slope = b + 2 * c * x,
    k = Math.hypot(1, slope);
  return { x: (along.x - along.y * slope) / k, y: (along.y + along.x * slope) / k };
}

/** Where two arms that lead away from one corner meet when run on backwards; undefined if they do not. */
export function meetingOfArms(
  p: Arm,
  q: Arm,
): { readonly at: Point; readonly s: number; readonly t: number } | undefined {
  let s = 0,
    t = 0;
  for (let step = 0; step < 20; step++) {
    const a = pointOfArm(p, s),
      b = pointOfArm(q, t);
    const u = directionOfArm(p, s),
      v = directionOfArm(q, t);
    const det = u.x * v.y - u.y * v.x;
    if (Math.abs(det) < oneLineSine) return undefined;
    const dx = b.x - a.x,
      dy = b.y - a.y;
    s += (dx * v.y - dy * v.x) / det;
    t += (dx * u.y - dy * u.x) / det;
    if (Math.hypot(dx, dy) < coincidenceTolerance) return { at: a, s, t };
    if (Math.abs(s) > farthest || Math.abs(t) > farthest) return undefined;
  }
  return undefined;
}

/** mm along an arm: beyond it a crossing is none of its corner. */
const farthest = 70;
