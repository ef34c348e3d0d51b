import { nearestOnSegment } from '../curve/nearest.js';
import { pointAt } from '../curve/segment.js';
import { distance } from '../vector.js';
import type { Arc } from './arcs.js';

/** How an arc bounds what is covered: 1 in its own direction, −1 against it, 0 not at all. */
export type Use = -1 | 0 | 1;

/**
 * A boundary that rounding left open, closed: where curves run side by side, nearer than `thin` mm, which of them it
 * follows hardly matters, so arcs of such needles are taken in or left out until at every crossing as many arrive as
 * leave, the least ground first (shortest ways from crossings with too many arrivals to such with too few).
 * @returns nothing where that takes an arc that lies by itself
 */
export function mended(arcs: readonly Arc[], uses: readonly Use[], thin: number): readonly Use[] | undefined {
  const now = [...uses];
  const links = arcs.flatMap((arc, i): readonly Link[] => {
    const ground = groundBeside(arcs, i, thin);
    return ground === undefined ? [] : [{ i, from: arc.from, to: arc.to, ground }];
  });
  for (let tries = 0; tries <= arcs.length; tries++) {
    const over = overAt(arcs, now);
    const start = [...over].find(([, count]) => count > 0)?.[0];
    if (start === undefined) return now;
    const way = cheapest(links, now, start, crossing => (over.get(crossing) ?? 0) < 0);
    if (!way) return undefined;
    for (const { i, by } of way) now[i] = (now[i]! + by) as Use;
  }
  return undefined;
}

/** An arc that may be taken in or left out, and how much ground that is, in mm². */
interface Link {
  readonly i: number;
  readonly from: number;
  readonly to: number;
  readonly ground: number;
}

/** By how many more steps each crossing is reached than left. */
function overAt(arcs: readonly Arc[], uses: readonly Use[]): ReadonlyMap<number, number> {
  const over = new Map<number, number>();
  for (const [i, { from, to }] of arcs.entries()) {
    over.set(to, (over.get(to) ?? 0) + uses[i]!);
    over.set(from, (over.get(from) ?? 0) - uses[i]!);
  }
  return over;
}

/** Places along an arc at which its neighbour is looked for. */
const places = [0.15, 0.35, 0.5, 0.65, 0.85];

/** mm² between an arc and the curves beside it; undefined where they part by more than `thin` mm. */
function groundBeside(arcs: readonly Arc[], i: number, thin: number): number | undefined {
  const { curve } = arcs[i]!;
  let widest = 0;
  for (const t of places) {
    const p = pointAt(curve, t);
    const beside = arcs.reduce(
      (least, other, k) => (k === i ? least : Math.min(least, nearestOnSegment(other.curve, p).distance)),
      Math.min(distance(p, curve[0]), distance(p, curve.at(-1)!)),
    );
    if (beside > thin) return undefined;
    widest = Math.max(widest, beside);
  }
  return widest * Math.max(...curve.map(p => distance(p, curve[0])));
}

interface Move {
  readonly i: number;
  readonly by: 1 | -1;
}

/** The way of least ground from a crossing to one that is wanted; Dijkstra's shortest path. */
function cheapest(
  links: readonly Link[],
  uses: readonly Use[],
  start: number,
  isWanted: (crossing: number) => boolean,
): readonly Move[] | undefined {
  const ways = new Map<number, { readonly ground: number; readonly moves: readonly Move[] }>([
    [start, { ground: 0, moves: [] }],
  ]);
  const done = new Set<number>();
  for (;;) {
    const open = [...ways].filter(([crossing]) => !done.has(crossing));
    if (open.length === 0) return undefined;
    const [at, way] = open.reduce((best, next) => (next[1].ground < best[1].ground ? next : best));
    if (isWanted(at)) return way.moves;
    done.add(at);
    for (const { i, from, to, ground } of links)
      for (const by of [1, -1] as const) {
        const [here, there] = by === 1 ? [from, to] : [to, from];
        if (here !== at || Math.abs(uses[i]! + by) > 1) continue;
        const known = ways.get(there);
        if (known && known.ground <= way.ground + ground) continue;
        ways.set(there, { ground: way.ground + ground, moves: [...way.moves, { i, by }] });
      }
  }
}
