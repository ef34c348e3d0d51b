import { coincidenceTolerance, leastSeen, readByHand } from '../../tolerance.js';
import { add, distance, dot, leftOf, type Point, rightOf, scale, subtract, unit } from '../../vector.js';
import { refusal } from './tellings.js';
import type { Towards } from './types.js';

/** A point that stands, and how far from it another was measured, in mm. */
export interface Distance {
  readonly name: string;
  readonly at: Point;
  readonly mm: number;
}

interface Triangulated {
  readonly at: Point;
  /** The distance that agrees least with the place, where the eye could see it. */
  readonly worst?: { readonly grave: boolean; readonly facts: { from: string; worstMm: number } };
}

/**
 * The place whose distances from known points come nearest to those measured: where two circles cross, or by least
 * squares where more distances are given than it takes. Two circles cross twice, and points in a line cannot tell one
 * side from the other: then `towards` chooses.
 *
 * @throws PatternError `distances-too-few`; `distances-do-not-meet` by more than `readByHand`; `point-in-two-places`
 */
export function pointFromDistances(
  name: string,
  known: readonly Distance[],
  towards: Towards | undefined,
): Triangulated {
  if (known.length < 2) throw refusal('distances-too-few', { name });
  for (const [a, b] of pairsOf(known)) {
    const gapMm = gapBetween(a, b);
    if (gapMm > 2 * readByHand)
      throw refusal('distances-do-not-meet', { name, from: [a.name, b.name], gapMm });
  }
  const places = distinct(
    pairsOf(known)
      .flatMap(([a, b]) => crossings(a, b))
      .map(start => settled(start, known)),
  );
  if (places.length === 0) throw refusal('distances-too-few', { name });
  const worstAt = (p: Point): number => Math.max(...known.map(k => residual(k, p)));
  const least = Math.min(...places.map(worstAt));
  const at = chosen(
    name,
    places.filter(p => worstAt(p) <= least + readByHand),
    towards,
  );
  const worst = known.reduce((a, b) => (residual(b, at) > residual(a, at) ? b : a));
  const worstMm = residual(worst, at);
  if (worstMm <= leastSeen) return { at };
  return { at, worst: { grave: worstMm > readByHand, facts: { from: worst.name, worstMm } } };
}

const residual = ({ at, mm }: Distance, p: Point): number => Math.abs(distance(at, p) - mm);

/** mm by which two circles miss each other; 0 where they meet. */
function gapBetween(a: Distance, b: Distance): number {
  const d = distance(a.at, b.at);
  return Math.max(0, d - a.mm - b.mm, Math.abs(a.mm - b.mm) - d);
}

const pairsOf = (known: readonly Distance[]): readonly (readonly [Distance, Distance])[] =>
  known.flatMap((a, i) => known.slice(i + 1).map(b => [a, b] as const));

/** Where two circles cross; where they miss each other, the place between them that is nearest to both. */
function crossings(a: Distance, b: Distance): readonly Point[] {
  const d = distance(a.at, b.at);
  if (d <= coincidenceTolerance) return [];
  const along = unit(subtract(b.at, a.at));
  if (gapBetween(a, b) > 0) return [add(a.at, scale(along, betweenCircles(a.mm, b.mm, d)))];
  const x = (d * d + a.mm * a.mm - b.mm * b.mm) / (2 * d);
  const y = Math.sqrt(Math.max(0, a.mm * a.mm - x * x));
  const foot = add(a.at, scale(along, x));
  return [add(foot, scale(rightOf(along), y)), add(foot, scale(leftOf(along), y))];
}

/** How far along the line from one middle to the other, `d` mm on, the place midway between circles that miss lies. */
function betweenCircles(first: number, second: number, d: number): number {
  if (first + second < d) return (first + d - second) / 2;
  return first > second ? (first + d + second) / 2 : (d - second - first) / 2;
}

/** Gauss's steps to the least sum of squared residuals, halved while they make it worse. */
function settled(start: Point, known: readonly Distance[]): Point {
  let at = start;
  for (let i = 0; i < mostSteps; i++) {
    const step = gaussStep(at, known);
    let share = 1;
    while (share > leastShare && squares(add(at, scale(step, share)), known) > squares(at, known)) share /= 2;
    if (share <= leastShare) return at;
    at = add(at, scale(step, share));
    if (Math.hypot(step.x, step.y) * share <= coincidenceTolerance / 1000) return at;
  }
  return at;
}
const mostSteps = 50;
const leastShare = 2 ** -20;

const squares = (p: Point, known: readonly Distance[]): number =>
  known.reduce((sum, { at, mm }) => sum + (distance(at, p) - mm) ** 2, 0);

function gaussStep(p: Point, known: readonly Distance[]): Point {
  let xx = 0,
    xy = 0,
    yy = 0,
    rx = 0,
    ry = 0;
  for (const { at, mm } of known) {
    const u = unit(subtract(p, at)),
      excess = distance(at, p) - mm;
    xx += u.x * u.x;
    xy += u.x * u.y;
    yy += u.y * u.y;
    rx -= u.x * excess;
    ry -= u.y * excess;
  }
  const determinant = xx * yy - xy * xy;
  // All in one line with the point: only along that line do the distances say anything.
  if (determinant <= Number.EPSILON * (xx + yy) ** 2) {
    const trace = xx + yy;
    return trace > 0 ? { x: rx / trace, y: ry / trace } : { x: 0, y: 0 };
  }
  return { x: (yy * rx - xy * ry) / determinant, y: (xx * ry - xy * rx) / determinant };
}

/** Places farther apart than a hand reads a ruler. */
const distinct = (places: readonly Point[]): readonly Point[] =>
  places.filter((p, i) => !places.slice(0, i).some(q => distance(p, q) <= readByHand));

function chosen(name: string, places: readonly Point[], towards: Towards | undefined): Point {
  const [only] = places;
  if (places.length === 1) return only!;
  const reach = (way: Towards): readonly number[] => places.map(p => dot(p, directions[way]));
  const tells = (way: Towards): boolean => {
    const [first, second] = [...reach(way)].sort((a, b) => b - a);
    return first! - second! > readByHand;
  };
  if (towards === undefined || !tells(towards)) {
    const ways = (Object.keys(directions) as Towards[]).filter(tells);
    throw refusal('point-in-two-places', { name, ways });
  }
  const far = reach(towards);
  return places[far.indexOf(Math.max(...far))]!;
}

const directions: Readonly<Record<Towards, Point>> = {
  up: { x: 0, y: -1 },
  down: { x: 0, y: 1 },
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
};
