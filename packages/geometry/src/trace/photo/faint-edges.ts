import type { FloorBlocks } from './floor-blocks.js';

/** Blocks: how far a step is taken over, and how far the slow change of light that is told from one. */
const fine = 2,
  slow = 6;
/** Levels of 255: rounding alone makes steps of one level, which must not be taken for edges. */
const leastNoise = 0.8;
/** Blocks of a tile in which noise is taken to be the same. */
const tile = 20;
/** Of what changes over `fine`, what a slow change would make of it. */
const slowShare = 1.2;
/**
 * Half of all blocks of bare ground look less like an edge than this. Where more do not, noise hangs together from block
 * to block, as in the far end of a slanting picture or behind strong compression, and is larger than neighbours tell.
 */
const quiet = 3.4;

/** How much each block looks like an edge: its change of colour over what noise makes of it; 0 where nothing is known. */
export function edgeStrength(blocks: FloorBlocks): Float32Array {
  const { width, height, open } = blocks;
  const inside = shrunk(blocks, open, 2);
  const square = new Float32Array(open.length),
    slowly = new Float32Array(open.length);
  for (const [c, values] of blocks.channels.entries()) {
    const noise = noiseOf(blocks, c);
    const filled = filledIn(values, open, width, height);
    for (const [reach, into] of [
      [fine, square],
      [slow, slowly],
    ] as const) {
      const soft = blurred(filled, width, height, reach);
      // A step h leaves h / (reach √2π) in the slope; noise σ of blocks leaves σ / (reach² √8π).
      const scale =
        reach === fine ? reach * reach * Math.sqrt(8 * Math.PI) : fine * fine * Math.sqrt(8 * Math.PI);
      for (let j = 1; j < height - 1; j++)
        for (let i = 1; i < width - 1; i++) {
          const block = j * width + i;
          if (inside[block] === 0) continue;
          const dx = (soft[block + 1]! - soft[block - 1]!) / 2,
            dy = (soft[block + width]! - soft[block - width]!) / 2;
          into[block]! += (dx * dx + dy * dy) * (scale / noise[block]!) ** 2;
        }
    }
  }
  const strength = square.map((s, k) => Math.max(0, Math.sqrt(s) - slowShare * Math.sqrt(slowly[k]!)));
  return quieted(blocks, strength, inside);
}

/** The same with every tile's noise brought down to what noise is elsewhere. */
function quieted({ width, height }: FloorBlocks, strength: Float32Array, inside: Uint8Array): Float32Array {
  const out = new Float32Array(strength.length);
  for (const { around, own } of tiles(width, height)) {
    const middle = middleOf(around.filter(k => inside[k] === 1).map(k => strength[k]!)) ?? 0;
    const share = quiet / Math.max(quiet, middle);
    for (const k of own) out[k] = strength[k]! * share;
  }
  return out;
}

/** Tiles of blocks, each with those about it. */
function* tiles(
  width: number,
  height: number,
): Generator<{ readonly own: readonly number[]; readonly around: readonly number[] }> {
  const blocksIn = (left: number, top: number, right: number, bottom: number): readonly number[] => {
    const out: number[] = [];
    for (let j = Math.max(0, top); j < Math.min(height, bottom); j++)
      for (let i = Math.max(0, left); i < Math.min(width, right); i++) out.push(j * width + i);
    return out;
  };
  for (let top = 0; top < height; top += tile)
    for (let left = 0; left < width; left += tile)
      yield {
        own: blocksIn(left, top, left + tile, top + tile),
        around: blocksIn(left - tile / 2, top - tile / 2, left + 1.5 * tile, top + 1.5 * tile),
      };
}

const middleOf = (values: readonly number[]): number | undefined =>
  [...values].sort((a, b) => a - b)[values.length >> 1];

/** Marked blocks whose neighbours within so many blocks are marked, too. */
export function shrunk(
  { width, height }: Pick<FloorBlocks, 'width' | 'height'>,
  marked: Uint8Array,
  by: number,
): Uint8Array {
  const pass = (from: Uint8Array, step: number, count: number, line: number): Uint8Array => {
    const out = new Uint8Array(from.length);
    for (let k = 0; k < from.length; k++) {
      const at = Math.floor(k / step) % count;
      let all = from[k]!;
      for (let d = -by; d <= by && all === 1; d++)
        if (at + d >= 0 && at + d < count) all = from[k + d * step]!;
      out[k] = all;
    }
    return line < 0 ? from : out;
  };
  return pass(pass(marked, 1, width, 0), width, height, 0);
}

/** What noise makes of a block's mean: from how far blocks lie from the mean of their four neighbours, tile by tile. */
function noiseOf({ width, height, channels, levels, open }: FloorBlocks, channel: number): Float32Array {
  const values = channels[channel]!,
    level = levels[channel]!;
  const out = new Float32Array(values.length);
  for (const { around, own } of tiles(width, height)) {
    const bare = around.filter(k => {
      const i = k % width;
      const within = i > 0 && i < width - 1 && k >= width && k < width * (height - 1);
      return within && [k, k - 1, k + 1, k - width, k + width].every(one => open[one] === 1);
    });
    const off = (k: number): number =>
      Math.abs(values[k]! - (values[k - 1]! + values[k + 1]! + values[k - width]! + values[k + width]!) / 4);
    const quantum = bare.reduce((sum, k) => sum + level[k]!, 0) / bare.length;
    // Of a normal spread the middle distance is 0.6745; a mean of four adds a quarter to the square.
    const middle = (middleOf(bare.map(off)) ?? 0) / 0.6745 / Math.sqrt(1.25);
    const noise = Math.max(middle, bare.length > 0 ? leastNoise * quantum : 1);
    for (const k of own) out[k] = noise;
  }
  return out;
}

/** Figures with what is not known filled in from what lies around, so that no step stands at its edge. */
function filledIn(values: Float32Array, open: Uint8Array, width: number, height: number): Float32Array {
  const out = values.map((v, k) => (open[k] === 1 ? v : 0));
  const known = Float32Array.from(open);
  for (const reach of [3, 9, 27, 81]) {
    const sum = blurred(
        out.map((v, k) => v * known[k]!),
        width,
        height,
        reach,
      ),
      weight = blurred(known, width, height, reach);
    for (let k = 0; k < out.length; k++)
      if (known[k] === 0 && weight[k]! > 0.02) out[k] = sum[k]! / weight[k]!;
    for (let k = 0; k < out.length; k++) if (known[k] === 0 && weight[k]! > 0.02) known[k] = 1;
  }
  return out;
}

/** Softened by what is nearly a normal spread of so many blocks: three means in turn, across and down. */
export function blurred(values: Float32Array, width: number, height: number, reach: number): Float32Array {
  // Three means over 2 r + 1 have the spread of r (r + 1).
  const r = Math.max(1, Math.round((Math.sqrt(1 + 4 * reach * reach) - 1) / 2));
  let now = values;
  for (let round = 0; round < 3; round++) {
    now = means(now, { lines: height, count: width, line: width, step: 1 }, r);
    now = means(now, { lines: width, count: height, line: 1, step: width }, r);
  }
  return now;
}

interface Lines {
  readonly lines: number;
  readonly count: number;
  readonly line: number;
  readonly step: number;
}

function means(values: Float32Array, { lines, count, line, step }: Lines, r: number): Float32Array {
  const out = new Float32Array(values.length);
  for (let l = 0; l < lines; l++) {
    const at = (k: number): number => values[l * line + Math.min(count - 1, Math.max(0, k)) * step]!;
    let sum = 0;
    for (let k = -r; k <= r; k++) sum += at(k);
    for (let k = 0; k < count; k++) {
      out[l * line + k * step] = sum / (2 * r + 1);
      sum += at(k + r + 1) - at(k - r);
    }
  }
  return out;
}
