import type { FloorMap } from './floor-map.js';
import type { LightField } from './light-field.js';

/** Of 255: added before the logarithm, so that noise of black cloth stays small. */
const floorOfLog = 6;
/** The logarithm that a channel's figure stands for. */
export const logs = Float32Array.from({ length: 256 }, (_, v) => Math.log(v + floorOfLog));
/** What one level of a channel is in its logarithm, about a level. */
export const levelInLog = (level: number): number => 1 / (level + floorOfLog);

/** Logarithms of red, green and blue. */
export type Colour = readonly [number, number, number];

/** A place of the map in the units of a light field. */
export const placeAt = (
  { width, height }: Pick<FloorMap, 'width' | 'height'>,
  i: number,
  j: number,
): { readonly x: number; readonly y: number } => {
  const size = Math.max(width, height) / 2;
  return { x: (i - width / 2) / size, y: (j - height / 2) / size };
};

/** Each cell with those of its eight neighbours that the same picture shows, that noise counts for less. */
export function softened(map: FloorMap): Uint8Array {
  const { width, height, rgb } = map;
  const across = new Uint16Array(rgb.length),
    out = new Uint8Array(rgb.length);
  const row = 3 * width;
  for (let k = 3; k < rgb.length - 3; k++) across[k] = rgb[k - 3]! + rgb[k]! + rgb[k + 3]!;
  for (let k = row; k < rgb.length - row; k++)
    out[k] = (across[k - row]! + across[k]! + across[k + row]! + 4) / 9;
  for (let k = 0; k < row; k++) {
    out[k] = rgb[k]!;
    out[rgb.length - 1 - k] = rgb[rgb.length - 1 - k]!;
  }
  for (let j = 1; j < height - 1; j++)
    for (let c = 0; c < 3; c++) {
      out[j * row + c] = rgb[j * row + c]!;
      out[j * row + row - 3 + c] = rgb[j * row + row - 3 + c]!;
    }
  keptApart(map, out);
  return out;
}

/** Where pictures meet, each in its own light, colours of the one are not mixed with those of the other. */
function keptApart({ width, height, rgb, from }: FloorMap, soft: Uint8Array): void {
  for (let j = 1; j < height - 1; j++)
    for (let i = 1, cell = j * width + 1; i < width - 1; i++, cell++) {
      const about = [-width - 1, -width, -width + 1, -1, 0, 1, width - 1, width, width + 1];
      if (about.every(step => from[cell + step] === from[cell])) continue;
      const own = about.filter(step => from[cell + step] === from[cell]);
      for (let c = 0; c < 3; c++)
        soft[3 * cell + c] = Math.round(
          own.reduce((sum, step) => sum + rgb[3 * (cell + step) + c]!, 0) / own.length,
        );
    }
}

/** Cells between the nodes that the field is worked out at; between them it is taken as straight. */
const nodes = 16;

/**
 * The logarithms of every cell's channels over the ground's there, three a cell; 0 where no picture shows the floor.
 * @param fields the light of each picture, by its number
 */
export function evenedFloor(map: FloorMap, soft: Uint8Array, fields: readonly LightField[]): Float32Array {
  const { width, height } = map;
  const across = Math.ceil(width / nodes) + 1,
    down = Math.ceil(height / nodes) + 1;
  const grids = fields.map(field =>
    [0, 1, 2].map(channel =>
      Float32Array.from({ length: across * down }, (_, k) => {
        const j = Math.floor(k / across);
        const { x, y } = placeAt(map, (k - j * across) * nodes, j * nodes);
        return field.at(x, y, channel);
      }),
    ),
  );
  const values = new Float32Array(3 * width * height);
  for (let j = 0, cell = 0; j < height; j++) {
    const v = j / nodes,
      top = Math.floor(v),
      b = v - top;
    for (let i = 0; i < width; i++, cell++) {
      const picture = map.from[cell]!;
      if (picture === 0) continue;
      const grid = grids[picture]!;
      const u = i / nodes,
        left = Math.floor(u),
        a = u - left,
        k = top * across + left;
      for (let c = 0; c < 3; c++) {
        const g = grid[c]!;
        const light =
          (g[k]! * (1 - a) + g[k + 1]! * a) * (1 - b) +
          (g[k + across]! * (1 - a) + g[k + across + 1]! * a) * b;
        values[3 * cell + c] = logs[soft[3 * cell + c]!]! - light;
      }
    }
  }
  return values;
}
