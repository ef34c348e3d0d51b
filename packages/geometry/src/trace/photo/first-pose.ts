import type { Point } from '../../vector.js';
import { type Camera, type Matrix3, turnOf, type View } from './camera.js';
import { homographyFrom } from './homography.js';
import type { SeenSheet } from './seen-sheets.js';

/** A place and angle (rad, clockwise as seen) of a sheet's middle on the floor, mm. */
export interface SheetPlace {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}

/** All corners of a sheet's targets that were seen: on the sheet, mm, and in the picture, dots. */
export const cornersOf = ({ targets }: SeenSheet): readonly { readonly on: Point; readonly seen: Point }[] =>
  targets.flatMap(({ on, corners }) => on.map((p, i) => ({ on: p, seen: corners[i]! })));

/**
 * A camera with a guessed focal length and a straight lens, from points of the floor and where they are seen.
 * Source: Zhang, A flexible new technique for camera calibration, 2000, §3.1: the columns of the floor's map.
 */
export function firstCamera(
  points: readonly { readonly on: Point; readonly seen: Point }[],
  focal: number,
  centre: Point,
): Camera | undefined {
  const map = homographyFrom(
    points.map(p => p.on),
    points.map(({ seen }) => ({ x: (seen.x - centre.x) / focal, y: (seen.y - centre.y) / focal })),
  );
  if (!map) return undefined;
  const column = (i: number): Vector => [map[i]!, map[3 + i]!, map[6 + i]!];
  const [u, v, t] = [column(0), column(1), column(2)];
  const size = ((length(u) + length(v)) / 2) * (t[2] < 0 ? -1 : 1);
  // Half of what the two are short of square is taken from each.
  const a = unit(u),
    b = unit(v);
  const sum = unit([a[0] + b[0], a[1] + b[1], a[2] + b[2]]),
    difference = unit([a[0] - b[0], a[1] - b[1], a[2] - b[2]]);
  const sign = size < 0 ? -1 : 1;
  const r1 = sum.map((s, i) => (sign * (s + difference[i]!)) / Math.SQRT2) as unknown as Vector,
    r2 = sum.map((s, i) => (sign * (s - difference[i]!)) / Math.SQRT2) as unknown as Vector;
  const r3 = across(r1, r2);
  const matrix: Matrix3 = [r1[0], r2[0], r3[0], r1[1], r2[1], r3[1], r1[2], r2[2], r3[2]];
  return {
    focal,
    centre,
    bend: [0, 0, 0],
    turn: turnOf(matrix),
    shift: t.map(x => x / size) as unknown as Vector,
  };
}

type Vector = readonly [number, number, number];
const length = (v: Vector): number => Math.hypot(...v);
const unit = (v: Vector): Vector => v.map(x => x / length(v)) as unknown as Vector;
const across = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Where a sheet lies on the floor as a camera sees it: the rigid motion nearest to its corners. */
export function placeOf(sheet: SeenSheet, view: View): SheetPlace {
  const corners = cornersOf(sheet).map(({ on, seen }) => ({ on, at: view.toFloor(seen.x, seen.y) }));
  const n = corners.length;
  const mean = (of: (c: (typeof corners)[number]) => number) => corners.reduce((s, c) => s + of(c), 0) / n;
  const [mx, my, px, py] = [mean(c => c.on.x), mean(c => c.on.y), mean(c => c.at.x), mean(c => c.at.y)];
  let cosine = 0,
    sine = 0;
  for (const { on, at } of corners) {
    cosine += (on.x - mx) * (at.x - px) + (on.y - my) * (at.y - py);
    sine += (on.x - mx) * (at.y - py) - (on.y - my) * (at.x - px);
  }
  const angle = Math.atan2(sine, cosine);
  const c = Math.cos(angle),
    s = Math.sin(angle);
  return { x: px - c * mx + s * my, y: py - s * mx - c * my, angle };
}
