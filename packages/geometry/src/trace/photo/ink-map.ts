import type { FloorMap } from './floor-map.js';

/** Where lines are drawn on a floor: even cells, each with how much line there is, 0 to 1. */
export interface InkMap extends Pick<FloorMap, 'origin' | 'cell' | 'width' | 'height'> {
  readonly ink: Float32Array;
}

/** mm: cells in which lines are followed; their middles are found in the picture itself. */
const coarse = 0.5;
/** mm about a cell over which the paper's own brightness is taken. */
const paperReach = 5;
/** mm to each side of a cell along which a line is looked for: dashes run together. */
const lineReach = 4.5;
const directions = 12;

/**
 * How much of a line each cell lies on: how much darker than the paper about it, in the mean along the direction in
 * which that is most. So a dashed line is as much of one as a drawn one, and a dot is none. Darkness is that of the
 * channel in which it is most: a red line is dark in green and blue.
 */
export function inkMap(map: FloorMap): InkMap {
  const { dark, ...grid } = darkness(map);
  const { width, height, cell } = grid;
  const steps = Math.max(2, Math.round(lineReach / cell));
  const ink = new Float32Array(width * height);
  for (let d = 0; d < directions; d++) {
    const angle = (Math.PI * d) / directions;
    const offsets: { readonly x: number; readonly y: number }[] = [];
    for (let k = -steps; k <= steps; k++)
      offsets.push({ x: Math.round(k * Math.cos(angle)), y: Math.round(k * Math.sin(angle)) });
    const shifts = offsets.map(({ x, y }) => y * width + x);
    for (let j = steps; j < height - steps; j++)
      for (let i = steps, k = j * width + steps; i < width - steps; i++, k++) {
        let sum = 0;
        for (let s = 0; s < shifts.length; s++) sum += dark[k + shifts[s]!]!;
        const mean = sum / shifts.length;
        if (mean > ink[k]!) ink[k] = mean;
      }
  }
  return { ...grid, ink };
}

function darkness({ origin, cell, width: w, height: h, rgb, from }: FloorMap) {
  const times = Math.max(1, Math.round(coarse / cell));
  const width = Math.floor(w / times),
    height = Math.floor(h / times);
  const least = new Float32Array(width * height);
  for (let j = 0, k = 0; j < height; j++)
    for (let i = 0; i < width; i++, k++) {
      let darkest = 255;
      for (let b = 0; b < times; b++)
        for (let a = 0; a < times; a++) {
          const at = (j * times + b) * w + i * times + a;
          if (from[at] !== 0) darkest = Math.min(darkest, rgb[3 * at]!, rgb[3 * at + 1]!, rgb[3 * at + 2]!);
        }
      least[k] = darkest;
    }
  const mean = boxMean(least, width, height, Math.round(paperReach / (cell * times)));
  const dark = least.map((v, k) => Math.max(0, Math.min(1, 1 - v / Math.max(mean[k]!, 1))));
  return { origin, cell: cell * times, width, height, dark };
}

function boxMean(values: Float32Array, width: number, height: number, reach: number): Float32Array {
  const w1 = width + 1;
  const sums = new Float64Array(w1 * (height + 1));
  for (let j = 0; j < height; j++) {
    let row = 0;
    for (let i = 0; i < width; i++) {
      row += values[j * width + i]!;
      sums[(j + 1) * w1 + i + 1] = sums[j * w1 + i + 1]! + row;
    }
  }
  const out = new Float32Array(values.length);
  for (let j = 0, k = 0; j < height; j++)
    for (let i = 0; i < width; i++, k++) {
      const left = Math.max(0, i - reach),
        right = Math.min(width, i + reach + 1),
        top = Math.max(0, j - reach) * w1,
        bottom = Math.min(height, j + reach + 1) * w1;
      const sum = sums[bottom + right]! - sums[bottom + left]! - sums[top + right]! + sums[top + left]!;
      out[k] = sum / ((right - left) * ((bottom - top) / w1));
    }
  return out;
}
