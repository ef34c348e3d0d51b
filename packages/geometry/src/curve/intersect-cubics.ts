import { abs, hypot, min } from '../arithmetic.js';
import {
  coincidenceTolerance,
  contactTolerance,
  cutSlack,
  narrowestStretch,
  sameParameter,
  settledStep,
  touchingLength,
} from '../tolerance.js';
import { clipTo, type FatLine, fatLineOf } from './fat-line.js';
import { type Contact, gap, type ParameterPair, touchesAmong } from './intersect-touches.js';
import { type PowerForm, powerForm, slopeX, slopeY, xAt, yAt } from './power-form.js';
import type { Cubic } from './segment.js';
import { boxesApart, legsOf, meetAtMostOnce, type Stretch, stretchOf } from './stretch.js';

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
  const complete = searchPair(search, ranges, 0);
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
      abs(sa - ta) < sameParameter &&
      abs(sb - tb) < sameParameter &&
      hypot(xAt(a, sa) - x, yAt(a, sa) - y) <= coincidenceTolerance
    )
      return;
  hits.push([ta, tb]);
}

const deepest = 60;

/** Looks for meetings of A on [a0, a1] with B on [b0, b1]; false when the limit of steps is passed. */
function searchPair(search: Search, [a0, a1, b0, b1]: Ranges, depth: number): boolean {
  if (++search.steps > search.limit) return false;
  const a = stretchOf(search.a, a0, a1),
    b = stretchOf(search.b, b0, b1);
  if (boxesApart(a, b, contactTolerance)) return true;
  if (meetAtMostOnce(a, b) && foundOnce(search, a, b)) return true;
  const lineA = fatLineOf(a);
  const keptB = clipTo(lineA, b, contactTolerance);
  if (keptB === undefined) return true;
  const lineB = fatLineOf(b);
  const keptA = clipTo(lineB, a, contactTolerance);
  if (keptA === undefined) return true;
  const longA = legsOf(a),
    longB = legsOf(b);
  const widthA = a1 - a0,
    widthB = b1 - b0;
  const kept: Ranges = [
    a0 + widthA * keptA[0],
    a0 + widthA * keptA[1],
    b0 + widthB * keptB[0],
    b0 + widthB * keptB[1],
  ];
  const areNarrow = widthA < narrowestStretch && widthB < narrowestStretch;
  if (areNarrow || depth > deepest || touchAtMost(lineA, longA, lineB, longB)) {
    search.contacts.push({
      ta: (kept[0] + kept[1]) / 2,
      tb: (kept[2] + kept[3]) / 2,
      wa: widthA,
      wb: widthB,
    });
    return true;
  }
  const shareA = keptA[1] - keptA[0],
    shareB = keptB[1] - keptB[0];
  if (shareA < clippedEnough && shareB < clippedEnough) return searchPair(search, kept, depth + 1);
  return searchHalves(search, kept, (longA * shareA) / (longB * shareB), depth + 1);
}

/** Of its stretch: clipping that leaves less than this of both gains more than halving them. */
const clippedEnough = 0.7;

/** Whether two stretches are too small, or too small, straight and parallel, to do more than touch. */
const touchAtMost = (a: FatLine, longA: number, b: FatLine, longB: number): boolean =>
  (longA < contactTolerance / 4 && longB < contactTolerance / 4) ||
  (longA < touchingLength &&
    longB < touchingLength &&
    a.high - a.low + b.high - b.low < contactTolerance / 2 &&
    abs(a.nx * b.ny - a.ny * b.nx) * min(a.chord, b.chord) <= contactTolerance);

/** Searches with both stretches halved, or only the one more than twice as long; `ratio` is A's length by B's. */
function searchHalves(search: Search, [a0, a1, b0, b1]: Ranges, ratio: number, depth: number): boolean {
  const a = (a0 + a1) / 2,
    b = (b0 + b1) / 2;
  if (ratio > 2)
    return searchPair(search, [a0, a, b0, b1], depth) && searchPair(search, [a, a1, b0, b1], depth);
  if (ratio < 1 / 2)
    return searchPair(search, [a0, a1, b0, b], depth) && searchPair(search, [a0, a1, b, b1], depth);
  return (
    searchPair(search, [a0, a, b0, b], depth) &&
    searchPair(search, [a0, a, b, b1], depth) &&
    searchPair(search, [a, a1, b0, b], depth) &&
    searchPair(search, [a, a1, b, b1], depth)
  );
}

/** Newton's method from the crossing of the chords; true when the one meeting of two crossing stretches was found. */
function foundOnce(search: Search, p: Stretch, q: Stretch): boolean {
  const { a, b } = search;
  const { from: a0, to: a1 } = p,
    { from: b0, to: b1 } = q;
  const ax = q.x0 - p.x0,
    ay = q.y0 - p.y0;
  const cx = p.x3 - p.x0,
    cy = p.y3 - p.y0,
    dx = q.x3 - q.x0,
    dy = q.y3 - q.y0;
  const chords = cx * dy - cy * dx;
  if (chords === 0) return false;
  let ta = a0 + ((a1 - a0) * (ax * dy - ay * dx)) / chords;
  let tb = b0 + ((b1 - b0) * (ax * cy - ay * cx)) / chords;
  const reachA = a1 - a0,
    reachB = b1 - b0;
  for (let i = 0; i < 12; i++) {
    if (!(ta > a0 - reachA && ta < a1 + reachA && tb > b0 - reachB && tb < b1 + reachB)) return false;
    const ex = xAt(b, tb) - xAt(a, ta);
    const ey = yAt(b, tb) - yAt(a, ta);
    const ux = slopeX(a, ta),
      uy = slopeY(a, ta);
    const vx = slopeX(b, tb),
      vy = slopeY(b, tb);
    const det = ux * vy - uy * vx;
    const sa = (ex * vy - ey * vx) / det,
      sb = (ex * uy - ey * ux) / det;
    ta += sa;
    tb += sb;
    if (abs(sa) < settledStep && abs(sb) < settledStep) break;
  }
  const ka = within(ta, p, search.ranges[0], search.ranges[1]);
  const kb = within(tb, q, search.ranges[2], search.ranges[3]);
  if (!(gap(search, ka, kb) <= contactTolerance)) return false;
  addHit(search, ka, kb);
  return true;
}

/** A place beyond a cut belongs to the neighbour; one just beyond an end of the curve is taken for that end. */
function within(t: number, { from, to }: Stretch, first: number, last: number): number {
  if (t < from) return from === first || t > from - cutSlack ? from : Number.NaN;
  if (t > to) return to === last || t < to + cutSlack ? to : Number.NaN;
  return t;
}
