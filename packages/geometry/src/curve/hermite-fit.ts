import { handleDamping, shortestHandle } from '../tolerance.js';
import type { Point } from '../vector.js';
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
 * nothing. Steps end when they gain nothing, or early when `tolerance` is far out of reach.
 * Sources: Levien, Parallel curves of cubic Béziers, 2022 (two handle lengths suffice, error of sixth order);
 * Hoschek, Spline approximation of offset curves, 1988 (fitting with reparametrisation).
 */
export function fitHandles(
  from: Station,
  to: Station,
  inner: readonly Station[],
  tolerance: number,
): HermiteFit {
  const { x: px, y: py } = from.point,
    { x: ux, y: uy } = from.direction;
  const { x: sx, y: sy } = to.point,
    { x: vx, y: vy } = to.direction;
  const count = inner.length;
  // Chord lengths give first parameters, and their sum the first handles.
  const at: number[] = [];
  let length = 0,
    lx = px,
    ly = py;
  for (const { point } of inner) {
    length += Math.sqrt((point.x - lx) ** 2 + (point.y - ly) ** 2);
    at.push(length);
    lx = point.x;
    ly = point.y;
  }
  length += Math.sqrt((sx - lx) ** 2 + (sy - ly) ** 2);
  for (let i = 0; i < count; i++) at[i]! /= length || 1;
  let a = length / 3,
    b = length / 3,
    bestA = a,
    bestB = b;
  let deviation = Number.POSITIVE_INFINITY;
  for (let step = 0; step < mostSteps; step++) {
    // The curve by powers of t.
    const x1 = 3 * a * ux,
      y1 = 3 * a * uy;
    const x2 = 3 * (sx - b * vx - px) - 2 * x1,
      y2 = 3 * (sy - b * vy - py) - 2 * y1;
    const x3 = sx - px - x1 - x2,
      y3 = sy - py - y1 - y2;
    let aa = handleDamping,
      ab = 0,
      bb = handleDamping,
      ra = 0,
      rb = 0,
      worst = 0;
    for (let i = 0; i < count; i++) {
      const station = inner[i]!;
      const { x: qx, y: qy } = station.point,
        { x: dx, y: dy } = station.direction;
      let t = at[i]!,
        x = 0,
        y = 0;
      for (let k = step === 0 ? 0 : 1; k < 2; k++) {
        x = ((x3 * t + x2) * t + x1) * t + px - qx;
        y = ((y3 * t + y2) * t + y1) * t + py - qy;
        const slope = ((3 * x3 * t + 2 * x2) * t + x1) * dx + ((3 * y3 * t + 2 * y2) * t + y1) * dy;
        if (slope > 0) t = Math.min(1, Math.max(0, t - (x * dx + y * dy) / slope));
      }
      at[i] = t;
      x = ((x3 * t + x2) * t + x1) * t + px - qx;
      y = ((y3 * t + y2) * t + y1) * t + py - qy;
      const off = y * dx - x * dy,
        left = Math.abs(x * dx + y * dy);
      // What is left along the direction shows that no foot was found: it counts.
      worst = Math.max(worst, Math.abs(off), left > length * stray ? left : 0);
      const w = 1 - t,
        fa = 3 * w * w * t,
        fb = -3 * w * t * t;
      const ja = fa * (uy * dx - ux * dy),
        jb = fb * (vy * dx - vx * dy);
      aa += ja * ja;
      ab += ja * jb;
      bb += jb * jb;
      ra += ja * off;
      rb += jb * off;
    }
    const gained = worst < deviation * (1 - leastGain);
    if (worst < deviation) {
      deviation = worst;
      bestA = a;
      bestB = b;
    }
    if ((step > 1 && !gained) || (step > 2 && deviation > hopeless * tolerance)) break;
    const det = aa * bb - ab * ab;
    a = Math.min(3 * length, Math.max(length * shortestHandle, a - (ra * bb - rb * ab) / det));
    b = Math.min(3 * length, Math.max(length * shortestHandle, b - (aa * rb - ab * ra) / det));
  }
  const curve: Cubic = [
    from.point,
    { x: px + bestA * ux, y: py + bestA * uy },
    { x: sx - bestB * vx, y: sy - bestB * vy },
    to.point,
  ];
  return { curve, deviation };
}

/** Three or four steps converge; a curve that needs more is going to be cut. */
const mostSteps = 7;
/** A step that betters the fit by less than this share was the last. */
const leastGain = 0.02;
/** Times the tolerance: from here more steps will not help, only cutting. */
const hopeless = 30;
/** Of the length: a foot this far off was not found. */
const stray = 0.01;
