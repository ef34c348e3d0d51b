import type { Point } from '../../vector.js';
import type { FloorMap } from './floor-map.js';
import { covered } from './floor-of-sheets.js';

/** A patch of the floor that is not ground: the ring round it, clockwise as seen, in floor mm, one point a cell side. */
export interface Patch {
  readonly ring: readonly Point[];
  /** mm². */
  readonly area: number;
  /** mm² of it that lie on sheets. */
  readonly onPaper: number;
  /** Whether it runs out of what the pictures show. */
  readonly cutOff: boolean;
}

/**
 * Patches of cells marked 1 that are joined by their sides, no smaller than an area in mm².
 */
export function patchesOf(
  map: FloorMap,
  marked: Uint8Array,
  codes: Uint8Array,
  leastArea: number,
): readonly Patch[] {
  const { width, height, cell, from } = map;
  const labels = new Int32Array(marked.length);
  const stack: number[] = [];
  const patches: Patch[] = [];
  let label = 0;
  for (let seed = 0; seed < marked.length; seed++) {
    if (marked[seed] !== 1 || labels[seed] !== 0) continue;
    label++;
    let count = 0,
      onPaper = 0,
      cutOff = false;
    labels[seed] = label;
    stack.push(seed);
    while (stack.length > 0) {
      const at = stack.pop()!;
      count++;
      if (codes[at] === covered) onPaper++;
      const i = at % width;
      const neighbours = [i > 0 ? at - 1 : -1, i < width - 1 ? at + 1 : -1, at - width, at + width];
      for (const next of neighbours) {
        if (next < 0 || next >= width * height || from[next] === 0) cutOff = true;
        else if (marked[next] === 1 && labels[next] === 0) {
          labels[next] = label;
          stack.push(next);
        }
      }
    }
    // The first dot met, row by row, has nothing of its patch above it.
    const area = count * cell * cell;
    if (area >= leastArea)
      patches.push({
        ring: ringAround(map, labels, seed, label),
        area,
        onPaper: onPaper * cell * cell,
        cutOff,
      });
  }
  return patches;
}

/** Steps along cell sides: right, down, left, up. */
const steps = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** Follows the sides of a patch's cells, the patch to the right, from the upper left corner of its first cell. */
function ringAround(map: FloorMap, labels: Int32Array, seed: number, label: number): readonly Point[] {
  const { width, height, origin, cell } = map;
  const own = (i: number, j: number) =>
    i >= 0 && j >= 0 && i < width && j < height && labels[j * width + i] === label;
  const start = [seed % width, Math.floor(seed / width)] as const;
  const ring: Point[] = [];
  let [x, y] = start,
    way = 0;
  do {
    ring.push({ x: origin.x + x * cell, y: origin.y + y * cell });
    // The cells ahead of a corner, to the left and to the right of the way.
    const [dx, dy] = steps[way]!;
    x += dx;
    y += dy;
    const ahead = (side: number) => {
      // side −1: left of the way, 1: right.
      const i = x + (dx === 0 ? (dy * -side - 1) / 2 : (dx - 1) / 2),
        j = y + (dy === 0 ? (dx * side - 1) / 2 : (dy - 1) / 2);
      return own(i, j);
    };
    if (!ahead(1)) way = (way + 1) % 4;
    else if (ahead(-1)) way = (way + 3) % 4;
  } while (x !== start[0] || y !== start[1] || way !== 0);
  return ring;
}
