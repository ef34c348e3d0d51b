import { handleDamping, shortestHandle } from '../tolerance.js';
import { distance, type Point } from '../vector.js';
import { type PowerForm, powerForm, xAt, yAt } from './power-form.js';
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
 * nothing. Steps end when they gain nothing, or early when `tolerance` is kept with room to spare or far out of reach.
 * Sources: Levien, Parallel curves of cubic Béziers, 2022 (two handle lengths suffice, error of sixth order);
 * Hoschek, Spline approximation of offset curves, 1988 (fitting with reparametrisation).
 */
export function fitHandles(
  from: Station,
  to: Station,
  inner: readonly Station[],
  tolerance: number,
): HermiteFit {
  const { at, length } = chordParameters(from, inner, to);
  let handles: Handles = { a: length / 3, b: length / 3 },
    best = handles;
  let deviation = Number.POSITIVE_INFINITY;
  for (let step = 0; step < mostSteps; step++) {
    const form = powerForm(curveWith(from, to, handles));
    for (let i = 0; i < inner.length; i++) {
      if (step === 0) at[i] = nearerFoot(form, inner[i]!, at[i]!);
      at[i] = nearerFoot(form, inner[i]!, at[i]!);
    }
    const sums = sumsOver(form, inner, at, { from: from.direction, to: to.direction });
    // What is left along the direction shows that no foot was found: it counts.
    const worst = Math.max(sums.off, sums.left > length * stray ? sums.left : 0);
    const gained = worst < deviation * (1 - leastGain);
    if (worst < deviation) {
      deviation = worst;
      best = handles;
    }
    if (deviation <= nearEnough * tolerance) break;
    if ((step > 1 && !gained) || (step > 2 && deviation > hopeless * tolerance)) break;
    handles = stepped(handles, sums, length);
  }
  return { curve: curveWith(from, to, best), deviation };
}

/** Lengths in mm of the handles at both ends. */
interface Handles {
  readonly a: number;
  readonly b: number;
}

function curveWith(
  { point: p, direction: u }: Station,
  { point: s, direction: v }: Station,
  { a, b }: Handles,
): Cubic {
  return [p, { x: p.x + a * u.x, y: p.y + a * u.y }, { x: s.x - b * v.x, y: s.y - b * v.y }, s];
}

/** First parameters of the inner stations, by the lengths of the chords between them, and the sum of those in mm. */
function chordParameters(from: Station, inner: readonly Station[], to: Station) {
  const at: number[] = [];
  let length = 0,
    last = from.point;
  for (const { point } of inner) {
    length += distance(last, point);
    at.push(length);
    last = point;
  }
  length += distance(last, to.point);
  for (let i = 0; i < at.length; i++) at[i]! /= length || 1;
  return { at, length };
}

/** One Newton step from t to where the curve stands square to a station's direction. */
function nearerFoot(f: PowerForm, { point, direction: d }: Station, t: number): number {
  const along = (xAt(f, t) - point.x) * d.x + (yAt(f, t) - point.y) * d.y;
  const slope = ((3 * f.x3 * t + 2 * f.x2) * t + f.x1) * d.x + ((3 * f.y3 * t + 2 * f.y2) * t + f.y1) * d.y;
  return slope > 0 ? Math.min(1, Math.max(0, t - along / slope)) : t;
}

/** The normal equations of a Gauss–Newton step, and the largest distances square to the directions and along them. */
interface Sums {
  readonly aa: number;
  readonly ab: number;
  readonly bb: number;
  readonly ra: number;
  readonly rb: number;
  readonly off: number;
  readonly left: number;
}

function sumsOver(
  f: PowerForm,
  inner: readonly Station[],
  at: readonly number[],
  { from: u, to: v }: { readonly from: Point; readonly to: Point },
): Sums {
  let aa = handleDamping,
    ab = 0,
    bb = handleDamping,
    ra = 0,
    rb = 0,
    off = 0,
    left = 0;
  for (let i = 0; i < inner.length; i++) {
    const { point, direction: d } = inner[i]!;
    const t = at[i]!,
      w = 1 - t;
    const x = xAt(f, t) - point.x,
      y = yAt(f, t) - point.y;
    const square = y * d.x - x * d.y;
    off = Math.max(off, Math.abs(square));
    left = Math.max(left, Math.abs(x * d.x + y * d.y));
    // By how much a millimetre more of either handle moves the curve square to the station's direction.
    const ja = 3 * w * w * t * (u.y * d.x - u.x * d.y),
      jb = -3 * w * t * t * (v.y * d.x - v.x * d.y);
    aa += ja * ja;
    ab += ja * jb;
    bb += jb * jb;
    ra += ja * square;
    rb += jb * square;
  }
  return { aa, ab, bb, ra, rb, off, left };
}

/** Handles keep between a least and three times the length of the chords. */
function stepped({ a, b }: Handles, { aa, ab, bb, ra, rb }: Sums, length: number): Handles {
  const det = aa * bb - ab * ab;
  const kept = (handle: number): number => Math.min(3 * length, Math.max(length * shortestHandle, handle));
  return { a: kept(a - (ra * bb - rb * ab) / det), b: kept(b - (aa * rb - ab * ra) / det) };
}

/** Three or four steps converge; a curve that needs more is going to be cut. */
const mostSteps = 7;
/** A step that betters the fit by less than this share was the last. */
const leastGain = 0.02;
/** Of the tolerance: nearer than this nobody asks for. */
const nearEnough = 0.25;
/** Times the tolerance: from here more steps will not help, only cutting. */
const hopeless = 30;
/** Of the length: a foot this far off was not found. */
const stray = 0.01;
