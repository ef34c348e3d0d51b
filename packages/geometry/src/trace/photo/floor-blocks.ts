import { levelInLog } from './evened-floor.js';
import type { FloorMap } from './floor-map.js';

/** mm: the side of a block, in whose mean most noise has cancelled. */
const blockMm = 2.2;

/** The floor in square blocks of cells. */
export interface FloorBlocks {
  /** Cells along a side. */
  readonly side: number;
  readonly width: number;
  readonly height: number;
  /** Of each channel: a block's mean logarithm over the ground's there, and how much of that one level of 255 is. */
  readonly channels: readonly Float32Array[];
  readonly levels: readonly Float32Array[];
  /** 1 where all of a block may be ground: floor that is seen, no sheet and nothing that is known to lie there. */
  readonly open: Uint8Array;
  /** 1 where an edge is none of a thing: where any of a block is a sheet's, its rim with it, or two pictures meet. */
  readonly ownEdge: Uint8Array;
}

/**
 * The floor in blocks.
 * @param floor the cells' logarithms over the ground's there
 * @param taken 1 where something is known to lie
 */
export function floorBlocks(
  map: FloorMap,
  floor: Float32Array,
  codes: Uint8Array,
  taken: Uint8Array,
): FloorBlocks {
  const side = Math.max(2, Math.round(blockMm / map.cell));
  const width = Math.floor(map.width / side),
    height = Math.floor(map.height / side),
    cells = side * side;
  const channels = [0, 1, 2].map(() => new Float32Array(width * height)),
    levels = [0, 1, 2].map(() => new Float32Array(width * height)),
    open = new Uint8Array(width * height),
    ownEdge = new Uint8Array(width * height);
  for (let j = 0, block = 0; j < height; j++)
    for (let i = 0; i < width; i++, block++) {
      open[block] = 1;
      const picture = map.from[j * side * map.width + i * side];
      for (let v = 0; v < side; v++)
        for (let u = 0, cell = (j * side + v) * map.width + i * side; u < side; u++, cell++) {
          if (codes[cell] !== 0 || map.from[cell] !== picture) ownEdge[block] = 1;
          if (map.from[cell] === 0 || codes[cell] !== 0 || taken[cell] === 1) open[block] = 0;
          for (let c = 0; c < 3; c++) {
            channels[c]![block]! += floor[3 * cell + c]! / cells;
            levels[c]![block]! += map.rgb[3 * cell + c]! / cells;
          }
        }
      for (let c = 0; c < 3; c++) levels[c]![block] = levelInLog(levels[c]![block]!);
    }
  return { side, width, height, channels, levels, open, ownEdge };
}
