import { expect, test } from 'vitest';
import { blurred } from '../../../packages/geometry/src/trace/photo/faint-edges.js';
import { faintPatches } from '../../../packages/geometry/src/trace/photo/faint-patches.js';
import type { FloorBlocks } from '../../../packages/geometry/src/trace/photo/floor-blocks.js';
import type { FloorMap } from '../../../packages/geometry/src/trace/photo/floor-map.js';
import { chance } from '../../support/photo-scene.js';

// Bare ground in blocks, as pictures show it: with noise that hangs together, and with the soft rims of sheets.

const [width, height] = [200, 160];

/** Noise of a normal spread, alike over so many blocks. */
function noise(reach: number, seed: number): Float32Array {
  const next = chance(seed);
  const white = Float32Array.from(
    { length: width * height },
    () => Math.sqrt(-2 * Math.log(next() + 1e-12)) * Math.cos(2 * Math.PI * next()),
  );
  const soft = reach > 0 ? blurred(white, width, height, reach) : white;
  const spread = Math.sqrt(soft.reduce((sum, v) => sum + v * v, 0) / soft.length);
  return soft.map(v => (0.004 * v) / spread);
}

interface Ground {
  /** Blocks over which noise is alike. */
  readonly reach: number;
  /** What lies there, added to the noise of every channel. */
  readonly lies?: (i: number, j: number) => number;
  readonly isSheet?: (i: number, j: number) => boolean;
}

function ground({ reach, lies = () => 0, isSheet = () => false }: Ground): FloorBlocks {
  const at = Array.from({ length: width * height }, (_, k) => [k % width, Math.floor(k / width)] as const);
  const channels = [1, 2, 3].map(seed => noise(reach, seed).map((v, k) => v + lies(...at[k]!)));
  const levels = channels.map(() => new Float32Array(width * height).fill(0.0005));
  const sheet = Uint8Array.from(at, place => (isSheet(...place) ? 1 : 0));
  return { side: 2, width, height, channels, levels, ownEdge: sheet, open: sheet.map(is => 1 - is) };
}

const map = { width: 2 * width, height: 2 * height, cell: 1.1, origin: { x: 0, y: 0 } } as FloorMap;
const within = (i: number, j: number): boolean => i >= 60 && i < 120 && j >= 50 && j < 100;

test.each([0, 1, 2])('noise that is alike over %i blocks is no edge', reach => {
  expect(faintPatches(map, ground({ reach }))).toEqual({ cells: [], loose: [] });
});

test.each([0, 1])('what is a little darker is found in noise that is alike over %i blocks', reach => {
  const { cells, loose } = faintPatches(map, ground({ reach, lies: (i, j) => (within(i, j) ? -0.03 : 0) }));
  expect(loose).toEqual([]);
  // Four cells a block, and the edge is found to a block or two.
  expect(Math.abs(cells.length / 4 - 60 * 50)).toBeLessThan(2 * 2 * (60 + 50));
});

test('the soft rim of a sheet is no edge of something else, one beside it is', () => {
  const off = (i: number, j: number): number =>
    Math.hypot(Math.max(60 - i, i - 119, 0), Math.max(50 - j, j - 99, 0));
  // Lighter towards the sheet, by less and less over a blur of two blocks.
  const rim = (i: number, j: number): number => 0.4 * Math.exp(-((off(i, j) / 1.6) ** 2));
  expect(faintPatches(map, ground({ reach: 0, lies: rim, isSheet: within })).loose).toEqual([]);
  const beside = (i: number, j: number): number => rim(i, j) + (i > 150 && j < 120 ? -0.05 : 0);
  expect(faintPatches(map, ground({ reach: 0, lies: beside, isSheet: within })).loose.length).toBeGreaterThan(
    0,
  );
});
