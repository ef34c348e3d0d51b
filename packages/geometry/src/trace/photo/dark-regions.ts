import type { Point } from '../../vector.js';
import { hullOf } from './hull.js';
import type { Grey } from './picture.js';

/** A dark patch of a picture that is all of a piece: the hull round its dots, and how many dots it has. */
export interface DarkRegion {
  readonly hull: readonly Point[];
  readonly dots: number;
}

/** Ink is darker than what lies round it by at least this share: less is shading, more misses ink in soft pictures. */
const darkerBy = 0.12;
/** Of 255: noise of a dark ground does not make ink. */
const leastStep = 6;

/**
 * The dark patches between a least and a greatest size (dots along the longer side of the box), found against the mean
 * of a window round each dot, so that uneven light does not matter.
 */
export function darkRegions(
  grey: Grey,
  window: number,
  least: number,
  greatest: number,
): readonly DarkRegion[] {
  const { width, height } = grey;
  const dark = darkDots(grey, window);
  const regions: DarkRegion[] = [];
  const stack = new Int32Array(width * height);
  for (let seed = 0; seed < dark.length; seed++) {
    if (dark[seed] !== 1) continue;
    const count = flood(dark, width, seed, stack);
    if (count < least * 2) continue;
    const rows = rowEnds(stack, count, width);
    const box = sizeOf(rows);
    if (box < least || box > greatest) continue;
    regions.push({
      hull: hullOf(
        rows.flatMap(r => [
          { x: r.left, y: r.y },
          { x: r.right, y: r.y },
        ]),
      ),
      dots: count,
    });
  }
  return regions;
}

/** 1 where a dot is darker than the mean of the window round it. A border of one dot stays 0. */
function darkDots({ width, height, values }: Grey, window: number): Uint8Array {
  const w1 = width + 1;
  const sums = new Uint32Array(w1 * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++) {
      row += values[y * width + x]!;
      sums[(y + 1) * w1 + x + 1] = sums[y * w1 + x + 1]! + row;
    }
  }
  const dark = new Uint8Array(width * height);
  const half = window >> 1;
  for (let y = 1; y < height - 1; y++) {
    const top = Math.max(0, y - half) * w1,
      bottom = Math.min(height, y + half + 1) * w1,
      rows = (bottom - top) / w1;
    for (let x = 1; x < width - 1; x++) {
      const left = Math.max(0, x - half),
        right = Math.min(width, x + half + 1);
      // The sums run over at 4 GiB; their differences are right all the same.
      const sum =
        (sums[bottom + right]! - sums[bottom + left]! - sums[top + right]! + sums[top + left]!) >>> 0;
      const mean = sum / (rows * (right - left));
      const value = values[y * width + x]!;
      if (value < mean * (1 - darkerBy) && value < mean - leastStep) dark[y * width + x] = 1;
    }
  }
  return dark;
}

/** Takes a patch (dots joined by their sides) out of `dark`; its dots stand in `stack`. @returns how many */
function flood(dark: Uint8Array, width: number, seed: number, stack: Int32Array): number {
  // The stack doubles as the list: what lies below `next` has been looked at.
  let end = 0,
    next = 0;
  const take = (dot: number) => {
    if (dark[dot] !== 1) return;
    dark[dot] = 2;
    stack[end++] = dot;
  };
  take(seed);
  while (next < end) {
    const dot = stack[next++]!;
    take(dot - 1);
    take(dot + 1);
    take(dot - width);
    take(dot + width);
  }
  return end;
}

interface RowEnds {
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

/** Leftmost and rightmost dot of each row, at dots' middles. */
function rowEnds(dots: Int32Array, count: number, width: number): readonly RowEnds[] {
  const left = new Map<number, number>(),
    right = new Map<number, number>();
  for (let i = 0; i < count; i++) {
    const y = Math.floor(dots[i]! / width),
      x = dots[i]! - y * width;
    const l = left.get(y);
    if (l === undefined || x < l) left.set(y, x);
    const r = right.get(y);
    if (r === undefined || x > r) right.set(y, x);
  }
  return [...left].map(([y, x]) => ({ y: y + 0.5, left: x + 0.5, right: right.get(y)! + 0.5 }));
}

function sizeOf(rows: readonly RowEnds[]): number {
  let left = Number.POSITIVE_INFINITY,
    right = Number.NEGATIVE_INFINITY,
    top = left,
    bottom = right;
  for (const row of rows) {
    left = Math.min(left, row.left);
    right = Math.max(right, row.right);
    top = Math.min(top, row.y);
    bottom = Math.max(bottom, row.y);
  }
  return Math.max(right - left, bottom - top);
}
