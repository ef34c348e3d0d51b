import { parallelSine } from '../../tolerance.js';
import { add, distance, type Point, scale, subtract, unit } from '../../vector.js';
import { edgeByArea, inLight, profileAt } from './edge-profile.js';
import type { Grey } from './picture.js';

/** A straight line as fitted: a point on it and its direction. */
export interface SideLine {
  readonly on: Point;
  readonly direction: Point;
}

/** Places along a side of a target at which its edge is looked for. */
const places = 48;
/** Of a side: left out at both ends, where the corner's softness reaches. */
const keptClear = 0.1;
/**
 * Points on the edge between light (to the left of travel, outside a clockwise outline) and dark, to a small part of a
 * dot: what brightness adds up to across the edge says where it lies, whatever the blur, as long as that is even to
 * both sides.
 *
 * @param tone of the picture, as `toneOf` finds it; 1 while it is not known
 * @param reach dots to each side of the line from `from` to `to` in which the edge lies and nothing else does
 */
export function edgePoints(
  grey: Grey,
  from: Point,
  to: Point,
  reach: number,
  tone: number,
): readonly Point[] {
  const along = subtract(to, from);
  const inward = unit({ x: -along.y, y: along.x });
  const count = Math.max(8, Math.min(places, Math.round(distance(from, to) * (1 - 2 * keptClear))));
  const found: Point[] = [];
  for (let i = 0; i < count; i++) {
    const p = add(from, scale(along, keptClear + ((1 - 2 * keptClear) * (i + 0.5)) / count));
    const profile = profileAt(grey, p, inward, reach);
    if (!profile) continue;
    const off = edgeByArea(inLight(profile, tone));
    if (Math.abs(off) < reach * central) found.push(add(p, scale(inward, off)));
  }
  return found;
}

/** Of the reach: an edge nearer to the ends than this is not seen whole. */
const central = 0.7;

/** The line through points, in least squares of the distance, points far off left out. */
export function lineThrough(points: readonly Point[]): SideLine | undefined {
  let kept = points;
  for (let round = 0; ; round++) {
    if (kept.length < 4) return undefined;
    const line = fittedLine(kept);
    const offs = points.map(p => Math.abs(offLine(line, p)));
    const typical = [...offs].sort((a, b) => a - b)[offs.length >> 1]!;
    const next = points.filter((_, i) => offs[i]! <= Math.max(strays * typical, leastStray));
    if (round === 3 || next.length === kept.length) return line;
    kept = next;
  }
}

/** Times the middle distance from the line: what lies farther is something else. */
const strays = 4;
/** Dots: nothing nearer is a stray. */
const leastStray = 0.15;

function fittedLine(points: readonly Point[]): SideLine {
  const n = points.length;
  const on = scale(
    points.reduce((sum, p) => add(sum, p)),
    1 / n,
  );
  let xx = 0,
    xy = 0,
    yy = 0;
  for (const p of points) {
    const { x, y } = subtract(p, on);
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  return { on, direction: { x: Math.cos(angle), y: Math.sin(angle) } };
}

/** Signed distance of a point from a line. */
export const offLine = ({ on, direction }: SideLine, p: Point): number =>
  direction.x * (p.y - on.y) - direction.y * (p.x - on.x);

/** Where two lines cross; undefined if they are parallel. */
export function crossing(a: SideLine, b: SideLine): Point | undefined {
  const k = a.direction.x * b.direction.y - a.direction.y * b.direction.x;
  if (Math.abs(k) < parallelSine) return undefined;
  const { x, y } = subtract(b.on, a.on);
  return add(a.on, scale(a.direction, (x * b.direction.y - y * b.direction.x) / k));
}
