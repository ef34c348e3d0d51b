import type { Point } from '@paperhinge/geometry';
import type { Polygon } from './polygon.js';
import type { Rectangle } from './rectangle.js';

/**
 * The parts of a polygon that lie in a rectangle, each by itself: a sleeve whose two corners reach onto a page has two
 * parts there. Cut by one side after the other; the crossings along a side pair up in their order.
 */
export function partsIn(polygon: Polygon, [x0, y0, x1, y1]: Rectangle): readonly Polygon[] {
  const sides: readonly (readonly [axis: 'x' | 'y', keep: 1 | -1, limit: number])[] = [
    ['x', 1, x0],
    ['x', -1, x1],
    ['y', 1, y0],
    ['y', -1, y1],
  ];
  return sides.reduce<readonly Polygon[]>(
    (parts, [axis, keep, limit]) => parts.flatMap(part => cutBySide(part, axis, keep, limit)),
    [polygon],
  );
}

/** A stretch of the outline on the kept side, from where it enters to where it leaves. */
interface Stretch {
  readonly points: readonly Point[];
  readonly enters: number;
  readonly leaves: number;
}

function cutBySide(polygon: Polygon, axis: 'x' | 'y', keep: 1 | -1, limit: number): readonly Polygon[] {
  const kept = polygon.map(p => keep * (p[axis] - limit) > 0);
  const first = kept.findIndex((k, i) => k && !kept[(i + kept.length - 1) % kept.length]);
  if (first < 0) return kept[0] ? [polygon] : [];
  const other = axis === 'x' ? 'y' : 'x';
  const crossing = (a: Point, b: Point): Point => {
    const t = (limit - a[axis]) / (b[axis] - a[axis]);
    const across = a[other] + (b[other] - a[other]) * t;
    return axis === 'x' ? { x: limit, y: across } : { x: across, y: limit };
  };
  const stretches: Stretch[] = [];
  for (let n = 0; n < polygon.length; ) {
    const at = (i: number) => (first + i) % polygon.length;
    const enters = crossing(polygon[at(n + polygon.length - 1)]!, polygon[at(n)]!);
    const points = [enters];
    while (n < polygon.length && kept[at(n)]) points.push(polygon[at(n++)]!);
    const leaves = crossing(polygon[at(n + polygon.length - 1)]!, polygon[at(n)]!);
    points.push(leaves);
    stretches.push({ points, enters: enters[other], leaves: leaves[other] });
    while (n < polygon.length && !kept[at(n)]) n++;
  }
  return linked(stretches);
}

/** Joins the stretches along the side they were cut by: inside lies between the first crossing and the second, and so on. */
function linked(stretches: readonly Stretch[]): readonly Polygon[] {
  const ends = stretches
    .flatMap((s, i) => [
      { i, along: s.enters, enters: true },
      { i, along: s.leaves, enters: false },
    ])
    .sort((a, b) => a.along - b.along);
  const next = new Map<number, number>();
  for (let e = 0; e + 1 < ends.length; e += 2) {
    const [a, b] = [ends[e]!, ends[e + 1]!];
    if (a.enters === b.enters) continue;
    next.set(a.enters ? b.i : a.i, a.enters ? a.i : b.i);
  }
  const done = new Set<number>();
  const parts: Polygon[] = [];
  for (const i of stretches.keys()) {
    const points: Point[] = [];
    for (let at: number | undefined = i; at !== undefined && !done.has(at); at = next.get(at)) {
      done.add(at);
      points.push(...stretches[at]!.points);
    }
    if (points.length > 2) parts.push(points);
  }
  return parts;
}
