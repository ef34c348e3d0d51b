import {
  coincidenceTolerance,
  contactTolerance,
  cutSlack,
  narrowestStretch,
  sameParameter,
  settledStep,
} from '../tolerance.js';
import { clip } from './clip.js';
import { type Contact, gap, type ParameterPair, touchesAmong } from './intersect-touches.js';
import { type PowerForm, powerForm, xAt, yAt } from './power-form.js';
import type { Cubic } from './segment.js';

interface Search {
  readonly a: PowerForm;
  readonly b: PowerForm;
  readonly hits: ParameterPair[];
  readonly contacts: Contact[];
  steps: number;
  readonly limit: number;
  /** The parameter ranges looked at: a0, a1, b0, b1. */
  readonly ranges: Ranges;
}

type Ranges = readonly [a0: number, a1: number, b0: number, b1: number];

/**
 * Where two cubics meet within two parameter ranges, each place once. Where more than `limit` pairs of pieces would
 * have to be looked at, as happens when the curves all but run along each other: undefined, or, to `settle` it, what
 * was found by then.
 *
 * Fat-line clipping (Sederberg and Nishita, Curve intersection using Bézier clipping, 1990) with halving. As soon
 * as every direction of one piece lies to one side of every direction of the other, they meet at most once: the
 * difference of two chords that close would need a direction in common. Then Newton's method finds the place, or
 * clipping shows there is none. Error: rounding, under 1e-9 mm for curves of a metre, where they cross at an angle.
 */
export function meetingParameters(
  a: Cubic,
  b: Cubic,
  limit: number,
  settle: boolean,
  ranges: Ranges = [0, 1, 0, 1],
): ParameterPair[] | undefined {
  const search: Search = {
    a: powerForm(a),
    b: powerForm(b),
    hits: [],
    contacts: [],
    steps: 0,
    limit,
    ranges,
  };
  const [a0, a1, b0, b1] = ranges;
  for (const ta of [a0, a1])
    for (const tb of [b0, b1]) if (gap(search, ta, tb) <= coincidenceTolerance) search.hits.push([ta, tb]);
  const complete = look(search, a0, a1, b0, b1, 0);
  if (!complete && !settle) return undefined;
  for (const [ta, tb] of touchesAmong(search)) addHit(search, ta, tb);
  return search.hits.sort((p, q) => p[0] - q[0]);
}

function addHit(search: Search, ta: number, tb: number): void {
  const { a, hits } = search;
  const x = xAt(a, ta),
    y = yAt(a, ta);
  for (const [sa, sb] of hits)
    if (
      Math.abs(sa - ta) < sameParameter &&
      Math.abs(sb - tb) < sameParameter &&
      Math.hypot(xAt(a, sa) - x, yAt(a, sa) - y) <= coincidenceTolerance
    )
      return;
  hits.push([ta, tb]);
}

/** mm. Longer pieces are halved before a touch is looked for in them. */
const touchingPiece = 0.01;
const deepest = 60;

/** Looks for meetings of A on [a0, a1] with B on [b0, b1]; false when the limit of steps is passed. */
function look(search: Search, a0: number, a1: number, b0: number, b1: number, depth: number): boolean {
  if (++search.steps > search.limit) return false;
  const { a, b } = search;
  // Control points of both pieces, from ends and end derivatives.
  const ha = (a1 - a0) / 3,
    hb = (b1 - b0) / 3;
  const ax0 = ((a.x3 * a0 + a.x2) * a0 + a.x1) * a0 + a.x0,
    ay0 = ((a.y3 * a0 + a.y2) * a0 + a.y1) * a0 + a.y0;
  const ax3 = ((a.x3 * a1 + a.x2) * a1 + a.x1) * a1 + a.x0,
    ay3 = ((a.y3 * a1 + a.y2) * a1 + a.y1) * a1 + a.y0;
  const ux = ((3 * a.x3 * a0 + 2 * a.x2) * a0 + a.x1) * ha,
    uy = ((3 * a.y3 * a0 + 2 * a.y2) * a0 + a.y1) * ha;
  const wx = ((3 * a.x3 * a1 + 2 * a.x2) * a1 + a.x1) * ha,
    wy = ((3 * a.y3 * a1 + 2 * a.y2) * a1 + a.y1) * ha;
  const ax1 = ax0 + ux,
    ay1 = ay0 + uy,
    ax2 = ax3 - wx,
    ay2 = ay3 - wy;
  const bx0 = ((b.x3 * b0 + b.x2) * b0 + b.x1) * b0 + b.x0,
    by0 = ((b.y3 * b0 + b.y2) * b0 + b.y1) * b0 + b.y0;
  const bx3 = ((b.x3 * b1 + b.x2) * b1 + b.x1) * b1 + b.x0,
    by3 = ((b.y3 * b1 + b.y2) * b1 + b.y1) * b1 + b.y0;
  const px = ((3 * b.x3 * b0 + 2 * b.x2) * b0 + b.x1) * hb,
    py = ((3 * b.y3 * b0 + 2 * b.y2) * b0 + b.y1) * hb;
  const rx = ((3 * b.x3 * b1 + 2 * b.x2) * b1 + b.x1) * hb,
    ry = ((3 * b.y3 * b1 + 2 * b.y2) * b1 + b.y1) * hb;
  const bx1 = bx0 + px,
    by1 = by0 + py,
    bx2 = bx3 - rx,
    by2 = by3 - ry;

  if (
    Math.min(ax0, ax1, ax2, ax3) > Math.max(bx0, bx1, bx2, bx3) + contactTolerance ||
    Math.min(bx0, bx1, bx2, bx3) > Math.max(ax0, ax1, ax2, ax3) + contactTolerance ||
    Math.min(ay0, ay1, ay2, ay3) > Math.max(by0, by1, by2, by3) + contactTolerance ||
    Math.min(by0, by1, by2, by3) > Math.max(ay0, ay1, ay2, ay3) + contactTolerance
  )
    return true;

  const vx = ax2 - ax1,
    vy = ay2 - ay1,
    qx = bx2 - bx1,
    qy = by2 - by1;
  const side = Math.sign(ux * py - uy * px);
  const crossing =
    side !== 0 &&
    (ux * qy - uy * qx) * side > 0 &&
    (ux * ry - uy * rx) * side > 0 &&
    (vx * py - vy * px) * side > 0 &&
    (vx * qy - vy * qx) * side > 0 &&
    (vx * ry - vy * rx) * side > 0 &&
    (wx * py - wy * px) * side > 0 &&
    (wx * qy - wy * qx) * side > 0 &&
    (wx * ry - wy * rx) * side > 0;
  if (crossing && meetsOnce(search, a0, a1, b0, b1)) return true;

  // Clip B to the fat line of A, then A to that of B.
  const widthA = a1 - a0,
    widthB = b1 - b0;
  let na0 = a0,
    na1 = a1,
    nb0 = b0,
    nb1 = b1;
  let flatA = 0,
    flatB = 0;
  const lx = ax3 - ax0,
    ly = ay3 - ay0,
    chordA = Math.hypot(lx, ly);
  if (chordA > 0) {
    const nx = -ly / chordA,
      ny = lx / chordA;
    const d1 = (ax1 - ax0) * nx + (ay1 - ay0) * ny,
      d2 = (ax2 - ax0) * nx + (ay2 - ay0) * ny;
    const factor = d1 * d2 > 0 ? 3 / 4 : 4 / 9;
    const low = factor * Math.min(0, d1, d2),
      high = factor * Math.max(0, d1, d2);
    flatA = high - low;
    const range = clip(
      (bx0 - ax0) * nx + (by0 - ay0) * ny,
      (bx1 - ax0) * nx + (by1 - ay0) * ny,
      (bx2 - ax0) * nx + (by2 - ay0) * ny,
      (bx3 - ax0) * nx + (by3 - ay0) * ny,
      low - contactTolerance,
      high + contactTolerance,
    );
    if (range === undefined) return true;
    nb0 = b0 + widthB * range[0];
    nb1 = b0 + widthB * range[1];
  }
  const mx = bx3 - bx0,
    my = by3 - by0,
    chordB = Math.hypot(mx, my);
  if (chordB > 0) {
    const nx = -my / chordB,
      ny = mx / chordB;
    const d1 = (bx1 - bx0) * nx + (by1 - by0) * ny,
      d2 = (bx2 - bx0) * nx + (by2 - by0) * ny;
    const factor = d1 * d2 > 0 ? 3 / 4 : 4 / 9;
    const low = factor * Math.min(0, d1, d2),
      high = factor * Math.max(0, d1, d2);
    flatB = high - low;
    const range = clip(
      (ax0 - bx0) * nx + (ay0 - by0) * ny,
      (ax1 - bx0) * nx + (ay1 - by0) * ny,
      (ax2 - bx0) * nx + (ay2 - by0) * ny,
      (ax3 - bx0) * nx + (ay3 - by0) * ny,
      low - contactTolerance,
      high + contactTolerance,
    );
    if (range === undefined) return true;
    na0 = a0 + widthA * range[0];
    na1 = a0 + widthA * range[1];
  }

  const sizeA = legs(ux, uy, vx, vy, wx, wy),
    sizeB = legs(px, py, qx, qy, rx, ry);
  if (
    (sizeA < touchingPiece &&
      sizeB < touchingPiece &&
      flatA + flatB < contactTolerance / 2 &&
      Math.abs(lx * my - ly * mx) <= contactTolerance * Math.max(chordA, chordB)) ||
    (sizeA < contactTolerance / 4 && sizeB < contactTolerance / 4) ||
    (widthA < narrowestStretch && widthB < narrowestStretch) ||
    depth > deepest
  ) {
    search.contacts.push({ ta: (na0 + na1) / 2, tb: (nb0 + nb1) / 2, wa: widthA, wb: widthB });
    return true;
  }
  if (na1 - na0 < 0.7 * widthA && nb1 - nb0 < 0.7 * widthB)
    return look(search, na0, na1, nb0, nb1, depth + 1);
  const ma = (na0 + na1) / 2,
    mb = (nb0 + nb1) / 2;
  const longA = (sizeA * (na1 - na0)) / widthA,
    longB = (sizeB * (nb1 - nb0)) / widthB;
  if (longA > 2 * longB)
    return look(search, na0, ma, nb0, nb1, depth + 1) && look(search, ma, na1, nb0, nb1, depth + 1);
  if (longB > 2 * longA)
    return look(search, na0, na1, nb0, mb, depth + 1) && look(search, na0, na1, mb, nb1, depth + 1);
  return (
    look(search, na0, ma, nb0, mb, depth + 1) &&
    look(search, na0, ma, mb, nb1, depth + 1) &&
    look(search, ma, na1, nb0, mb, depth + 1) &&
    look(search, ma, na1, mb, nb1, depth + 1)
  );
}

const legs = (ux: number, uy: number, vx: number, vy: number, wx: number, wy: number): number =>
  Math.hypot(ux, uy) + Math.hypot(vx, vy) + Math.hypot(wx, wy);

/** Newton's method from the crossing of the chords; true when the one meeting of two crossing pieces was found. */
function meetsOnce(search: Search, a0: number, a1: number, b0: number, b1: number): boolean {
  const { a, b } = search;
  const ax = xAt(a, a0),
    ay = yAt(a, a0),
    bx = xAt(b, b0),
    by = yAt(b, b0);
  const cx = xAt(a, a1) - ax,
    cy = yAt(a, a1) - ay,
    dx = xAt(b, b1) - bx,
    dy = yAt(b, b1) - by;
  const chords = cx * dy - cy * dx;
  if (chords === 0) return false;
  let ta = a0 + ((a1 - a0) * ((bx - ax) * dy - (by - ay) * dx)) / chords;
  let tb = b0 + ((b1 - b0) * ((bx - ax) * cy - (by - ay) * cx)) / chords;
  const reachA = a1 - a0,
    reachB = b1 - b0;
  for (let i = 0; i < 12; i++) {
    if (!(ta > a0 - reachA && ta < a1 + reachA && tb > b0 - reachB && tb < b1 + reachB)) return false;
    const ex = ((b.x3 * tb + b.x2) * tb + b.x1) * tb + b.x0 - (((a.x3 * ta + a.x2) * ta + a.x1) * ta + a.x0);
    const ey = ((b.y3 * tb + b.y2) * tb + b.y1) * tb + b.y0 - (((a.y3 * ta + a.y2) * ta + a.y1) * ta + a.y0);
    const ux = (3 * a.x3 * ta + 2 * a.x2) * ta + a.x1,
      uy = (3 * a.y3 * ta + 2 * a.y2) * ta + a.y1;
    const vx = (3 * b.x3 * tb + 2 * b.x2) * tb + b.x1,
      vy = (3 * b.y3 * tb + 2 * b.y2) * tb + b.y1;
    const det = ux * vy - uy * vx;
    const sa = (ex * vy - ey * vx) / det,
      sb = (ex * uy - ey * ux) / det;
    ta += sa;
    tb += sb;
    if (Math.abs(sa) < settledStep && Math.abs(sb) < settledStep) break;
  }
  const ka = withinPiece(ta, a0, a1, search.ranges[0], search.ranges[1]);
  const kb = withinPiece(tb, b0, b1, search.ranges[2], search.ranges[3]);
  if (!(gap(search, ka, kb) <= contactTolerance)) return false;
  addHit(search, ka, kb);
  return true;
}

/** A place beyond a cut belongs to the neighbour; one just beyond an end of the curve is taken for that end. */
function withinPiece(t: number, low: number, high: number, first: number, last: number): number {
  if (t < low) return low === first || t > low - cutSlack ? low : Number.NaN;
  if (t > high) return high === last || t < high + cutSlack ? high : Number.NaN;
  return t;
}
