import type { FloorMap } from './floor-map.js';
import { type PenColour, type PenSeen, penColourOf } from './pen.js';

/** Where lines are drawn on a floor: even cells, each with how much line there is, 0 to 1. */
export interface InkMap extends Pick<FloorMap, 'origin' | 'cell' | 'width' | 'height'> {
  readonly ink: Float32Array;
  /** Where lines are dashed: 1 on drawn ones. */
  readonly drawn?: Uint8Array;
}

/** mm: cells in which lines are followed; their middles are found in the picture itself. */
const coarse = 0.5;
/** mm about a cell over which the paper's own brightness is taken. */
const paperReach = 5;
/** mm to each side of a cell along which a line is looked for: dashes run together. */
const lineReach = 4.5;
/** Directions looked along; more where dashes are told from drawn lines, which a line aslant would be lost on. */
const directions = 12,
  directionsForDashes = 36;

/**
 * How much of a line each cell lies on: how much darker than the paper about it, in the mean along the direction in
 * which that is most. So a dashed line is as much of one as a drawn one, and a dot is none. Darkness is that of the
 * channel in which it is most: a red line is dark in green and blue.
 * @param pen what other pens have drawn is no line
 * @param shared black lines are lines as well, though fainter: what all sizes of a nest have in common
 */
export function inkMap(map: FloorMap, pen: PenSeen = {}, shared = false): InkMap {
  const { dark, ...grid } = darkness(map, pen.colour, shared);
  const { width, height, cell } = grid;
  const steps = Math.max(2, Math.round(lineReach / cell));
  const ink = new Float32Array(width * height),
    shares = new Float32Array(width * height);
  // Where nothing is drawn within reach there is no line either.
  const inked = boxMean(dark, width, height, steps);
  const count = pen.dashed === undefined ? directions : directionsForDashes;
  for (let d = 0; d < count; d++) {
    const angle = (Math.PI * d) / count;
    const offsets: { readonly x: number; readonly y: number }[] = [];
    for (let k = -steps; k <= steps; k++)
      offsets.push({ x: Math.round(k * Math.cos(angle)), y: Math.round(k * Math.sin(angle)) });
    const shifts = offsets.map(({ x, y }) => y * width + x);
    for (let j = steps; j < height - steps; j++)
      for (let i = steps, k = j * width + steps; i < width - steps; i++, k++) {
        if (inked[k]! < bareInk) continue;
        let sum = 0,
          most = 0;
        for (let s = 0; s < shifts.length; s++) {
          const d = dark[k + shifts[s]!]!;
          sum += d;
          if (d > most) most = d;
        }
        const mean = sum / shifts.length;
        if (mean > ink[k]!) {
          ink[k] = mean;
          shares[k] = mean / most;
        }
      }
  }
  return { ...grid, ...(pen.dashed === undefined ? { ink } : ofKind(ink, shares, width, pen.dashed)) };
}

/** Less ink about a cell is noise of the paper. */
const bareInk = 0.004;

/** Of a stretch of line, so much is ink: a drawn line is more of it, a dashed one less; what the wrong kind counts for. */
const drawnShare = 0.87,
  wrongKind = 0.08;

/** Darker than this in the mean, a line is a line; and cells beside a drawn line that seem to be dashes aslant. */
const leastLine = 0.2,
  halo = 2;

/**
 * Ink of dashed lines, or of drawn ones, with the other kind made faint.
 * @param shares how much of the line that each cell lies on is ink
 */
function ofKind(
  ink: Float32Array,
  shares: Float32Array,
  width: number,
  dashed: boolean,
): Pick<InkMap, 'ink' | 'drawn'> {
  if (!dashed) return { ink: ink.map((v, k) => (shares[k]! >= drawnShare ? v : v * wrongKind)) };
  const drawn = Uint8Array.from(shares, (share, k) => (share >= drawnShare && ink[k]! > leastLine ? 1 : 0));
  const near = (k: number): boolean => {
    for (let v = -halo; v <= halo; v++)
      for (let u = -halo; u <= halo; u++) if (drawn[k + v * width + u] === 1) return true;
    return false;
  };
  return { ink: ink.map((v, k) => (v > 0 && near(k) ? v * wrongKind : v)), drawn };
}

function darkness(map: FloorMap, colour: PenColour | undefined, shared: boolean) {
  const { origin, cell, width: w, height: h, rgb, from } = map;
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
  const grid = { origin, cell: cell * times, width, height };
  if (colour !== undefined)
    keepColour(map, { ...grid, dark }, times, found =>
      found === colour ? 1 : shared && found === 'black' ? sharedInk : 0,
    );
  return { ...grid, dark };
}

/** Less darkness is paper: its colour tells nothing. */
const leastDark = 0.08;

/** What the ink of a line that all sizes share counts for: a size's own line beside it is followed first. */
const sharedInk = 0.5;

/** Makes ink count for as much as its pen does. */
function keepColour(
  { width: w, rgb }: FloorMap,
  { width, height, cell, dark }: Omit<InkMap, 'ink'> & { readonly dark: Float32Array },
  times: number,
  countsFor: (found: PenColour) => number,
): void {
  const channels = [0, 1, 2].map(c =>
    Float32Array.from({ length: width * height }, (_, k) => {
      const j = Math.floor(k / width) * times,
        i = (k % width) * times;
      let darkest = 255;
      for (let b = 0; b < times; b++)
        for (let a = 0; a < times; a++) darkest = Math.min(darkest, rgb[3 * ((j + b) * w + i + a) + c]!);
      return darkest;
    }),
  );
  const paper = channels.map(values => boxMean(values, width, height, Math.round(paperReach / cell)));
  const taken = (k: number, c: number): number =>
    Math.max(0, Math.log((paper[c]![k]! + 1) / (channels[c]![k]! + 1)));
  for (let k = 0; k < dark.length; k++)
    if (dark[k]! > leastDark)
      dark[k] = dark[k]! * countsFor(penColourOf([taken(k, 0), taken(k, 1), taken(k, 2)]));
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
