import { abs, hypot } from '../arithmetic.js';
import { contactTolerance, touchingReach } from '../tolerance.js';
import { type PowerForm, slopeX, slopeY, xAt, yAt } from './power-form.js';
import { inUnit } from './segment.js';

/** A pair of parameters, one on each curve, at which two curves meet. */
export type ParameterPair = readonly [ta: number, tb: number];

/** Pieces so small and so nearly parallel that only a touch is left to decide: their middles and widths. */
export interface Contact {
  readonly ta: number;
  readonly tb: number;
  readonly wa: number;
  readonly wb: number;
}

interface Curves {
  readonly a: PowerForm;
  readonly b: PowerForm;
}

/** Distance in mm between two curves at given parameters. */
export const gap = ({ a, b }: Curves, ta: number, tb: number): number =>
  hypot(xAt(a, ta) - xAt(b, tb), yAt(a, ta) - yAt(b, tb));

/**
 * Of each run of neighbouring contacts that holds no crossing yet: the places where one curve passes from one side of
 * the other to the other side, however flatly; else where they come nearest, if they touch.
 */
export function touchesAmong(
  search: Curves & { readonly hits: readonly ParameterPair[]; readonly contacts: readonly Contact[] },
): readonly ParameterPair[] {
  const touches: ParameterPair[] = [];
  for (const run of runsOf(search.contacts)) {
    if (
      search.hits.some(([ta, tb]) => run.some(c => abs(c.ta - ta) <= 2 * c.wa && abs(c.tb - tb) <= 2 * c.wb))
    )
      continue;
    const crossings = crossingsAlong(search, run);
    touches.push(...crossings);
    if (crossings.length > 0) continue;
    const start = run.reduce((p, q) => (gap(search, q.ta, q.tb) < gap(search, p.ta, p.tb) ? q : p));
    const best = nearestApproach(search, start.ta, start.tb);
    if (best.gap <= contactTolerance) touches.push([best.ta, best.tb]);
  }
  return touches;
}

/**
 * Crossings too flat for a piece to show them: along a run of contacts the side of A on which B lies is followed, and
 * halved for wherever it changes. A distance below `sideNoise` has no side.
 */
function crossingsAlong(search: Curves, run: readonly Contact[]): readonly ParameterPair[] {
  const found: ParameterPair[] = [];
  const inOrder = [...run].sort((p, q) => p.ta - q.ta);
  let last: Beside | undefined;
  for (const { ta, tb, wa } of inOrder)
    for (const t of [ta - wa / 2, ta + wa / 2]) {
      const place = beside(search, inUnit(t), tb);
      if (!(abs(place.side) > sideNoise)) continue;
      if (last && last.side < 0 !== place.side < 0 && last.ta < place.ta) {
        const between = crossingBetween(search, last, place);
        if (gap(search, ...between) <= contactTolerance) found.push(between);
      }
      if (!last || place.ta >= last.ta) last = place;
    }
  return found;
}

interface Beside {
  readonly ta: number;
  readonly tb: number;
  /** mm. Signed distance from A to B, square to A. */
  readonly side: number;
}

/** mm. Rounding at 100 m, twice over: flatter than this two curves do not show which side they are on. */
const sideNoise = contactTolerance / 100;

/** The place of B square to A at `ta`, from nearby. */
function beside({ a, b }: Curves, ta: number, near: number): Beside {
  const px = xAt(a, ta),
    py = yAt(a, ta);
  const ux = slopeX(a, ta),
    uy = slopeY(a, ta);
  let tb = near;
  for (let i = 0; i < 4; i++) {
    const vx = slopeX(b, tb),
      vy = slopeY(b, tb);
    const step = ((xAt(b, tb) - px) * ux + (yAt(b, tb) - py) * uy) / (vx * ux + vy * uy);
    const next = inUnit(tb - step);
    if (!(abs(next - near) < touchingReach)) break;
    tb = next;
  }
  const side = (ux * (yAt(b, tb) - py) - uy * (xAt(b, tb) - px)) / hypot(ux, uy);
  return { ta, tb, side };
}

function crossingBetween(search: Curves, from: Beside, to: Beside): ParameterPair {
  let low = from,
    high = to;
  while (true) {
    const ta = (low.ta + high.ta) / 2;
    if (ta <= low.ta || ta >= high.ta) return [ta, high.tb];
    const place = beside(search, ta, (low.tb + high.tb) / 2);
    if (place.side < 0 === low.side < 0) low = place;
    else high = place;
  }
}

/** Contacts that adjoin on both curves, in order along A; only those whose widths still reach are compared. */
function runsOf(contacts: readonly Contact[]): readonly (readonly Contact[])[] {
  const runs: Contact[][] = [];
  let open: Contact[][] = [];
  for (const c of [...contacts].sort((p, q) => p.ta - q.ta)) {
    open = open.filter(run => run.slice(-lookBack).some(p => c.ta - p.ta <= 2 * (c.wa + p.wa)));
    const home = open.find(run =>
      run
        .slice(-lookBack)
        .some(p => c.ta - p.ta <= 2 * (c.wa + p.wa) && abs(c.tb - p.tb) <= 2 * (c.wb + p.wb)),
    );
    if (home) home.push(c);
    else {
      const run = [c];
      runs.push(run);
      open.push(run);
    }
  }
  return runs;
}

/** The last few of a run reach farthest along A. */
const lookBack = 8;

/** Newton's method on (A − B) · A′ = 0, A′ × B′ = 0 from nearby: where two curves run side by side at their nearest. */
function nearestApproach(curves: Curves, fromA: number, fromB: number) {
  const { a, b } = curves;
  let ta = fromA,
    tb = fromB;
  let best = { ta, tb, gap: gap(curves, ta, tb) };
  for (let i = 0; i < 20; i++) {
    const ex = xAt(a, ta) - xAt(b, tb),
      ey = yAt(a, ta) - yAt(b, tb);
    const ux = slopeX(a, ta),
      uy = slopeY(a, ta);
    const vx = slopeX(b, tb),
      vy = slopeY(b, tb);
    const uux = 6 * a.x3 * ta + 2 * a.x2,
      uuy = 6 * a.y3 * ta + 2 * a.y2;
    const vvx = 6 * b.x3 * tb + 2 * b.x2,
      vvy = 6 * b.y3 * tb + 2 * b.y2;
    const f = ex * ux + ey * uy,
      g = ux * vy - uy * vx;
    const fa = ux * ux + uy * uy + ex * uux + ey * uuy,
      fb = -(ux * vx + uy * vy);
    const ga = uux * vy - uuy * vx,
      gb = ux * vvy - uy * vvx;
    const det = fa * gb - fb * ga;
    if (det === 0) break;
    ta = inUnit(ta - (f * gb - fb * g) / det);
    tb = inUnit(tb - (fa * g - f * ga) / det);
    if (!(abs(ta - fromA) < touchingReach && abs(tb - fromB) < touchingReach)) break;
    const apart = gap(curves, ta, tb);
    if (apart < best.gap) best = { ta, tb, gap: apart };
  }
  return best;
}
