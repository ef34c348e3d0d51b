import type { Colour } from './evened-floor.js';

// Across an edge, each level as the share of the way that it has come from the colour outside (0) to the one inside (1).

/** Of the step between two colours: with more noise there is no edge. */
export const mostNoise = 0.8;
/** What is calm enough to find it at every point by itself. */
const calm = 0.07;
/** Of the step: with less noise an outline is as true as is promised; seen on rendered scenes, from 0.065 on it is not. */
const clearNoise = 0.06;
/** Whether an outline found in so much noise is as true as is promised. */
export const isClear = (noise: number): boolean => noise <= clearNoise;

/** Whether each point's edge is clear by itself. */
export const isCalm = (noise: number): boolean => noise <= calm;
/** Points to each side that are taken together at most, where the step is faint, and what noise they leave. */
const mostTogether = 12,
  leftNoise = 0.05;

/** Points to each side that are taken together: a faint step is lost in noise, and moved by what packing a picture does. */
export const togetherAt = (noise: number): number =>
  Math.min(mostTogether, Math.max(0, Math.ceil(((noise / leftNoise) ** 2 - 1) / 2)));

/**
 * Steps from the middle inwards to the step that levels full of noise speak for: where what lies before is nearest to
 * the colour outside and what lies after to the colour inside, in least squares.
 */
export function likeliestStep(shares: Float64Array, steps: number): number | undefined {
  const sums = new Float64Array(shares.length + 1);
  for (let k = 0; k < shares.length; k++) sums[k + 1] = sums[k]! + shares[k]! - 0.5;
  let best = 0;
  for (let k = 1; k < sums.length; k++) if (sums[k]! < sums[best]!) best = k;
  if (best < 2 || best > sums.length - 3) return undefined;
  const [a, b, c] = [sums[best - 1]!, sums[best]!, sums[best + 1]!];
  // Sums stand between levels: the first before level 0.
  return best - 0.5 + (a - c) / (2 * (a - 2 * b + c)) - steps;
}

/** Levels across an edge from outside to inside, three channels a step, in light. */
export interface LevelsAcross {
  readonly levels: Float64Array;
  /** By step: 1 where a sheet lies, or its rim. */
  readonly sheet: Uint8Array;
}

/** How far each level has come from the colour outside (0) to the colour inside (1). */
export function sharesOf(
  { levels, sheet }: LevelsAcross,
  outside: Colour,
  inside: Colour,
  faint: boolean,
): Float64Array {
  const d = inside.map((v, c) => v - outside[c]!) as unknown as Colour;
  const size = d[0] * d[0] + d[1] * d[1] + d[2] * d[2];
  return Float64Array.from({ length: levels.length / 3 }, (_, k) => {
    // Beside a faint edge a sheet is as far from the ground as what is looked for is near to it.
    if (faint && sheet[k] === 1) return 0;
    let sum = 0;
    for (let c = 0; c < 3; c++) sum += (levels[3 * k + c]! - outside[c]!) * d[c]!;
    return sum / size;
  });
}

/** What shares stray from 0 and 1 at the two ends, typically. */
export function noiseOf(shares: readonly (Float64Array | undefined)[]): number {
  const strays = shares.flatMap(s => (s ? [Math.abs(s[0]!), Math.abs(s.at(-1)! - 1)] : []));
  return (strays.sort((a, b) => a - b)[strays.length >> 1] ?? Number.POSITIVE_INFINITY) / middleOfNormal;
}
/** Of a normal spread: half of all lie nearer than this. */
const middleOfNormal = 0.6745;

/** The shares of points side by side, level by level. */
export function meanOf(
  shares: readonly (Float64Array | undefined)[],
  i: number,
  reach: number,
): Float64Array | undefined {
  const n = shares.length;
  if (!shares[i]) return undefined;
  const sum = new Float64Array(shares[i].length);
  let count = 0;
  for (let k = -reach; k <= reach; k++) {
    const s = shares[(i + k + n) % n];
    if (!s) continue;
    count++;
    for (let at = 0; at < sum.length; at++) sum[at]! += s[at]!;
  }
  return sum.map(v => v / count);
}

/** Steps from the middle inwards to where the colours are half way; the crossing nearest to the middle. */
export function halfWay(shares: Float64Array, steps: number): number | undefined {
  const count = shares.length;
  const share = (k: number): number => shares[k]!;
  const soft = Array.from({ length: count }, (_, k) =>
    k === 0 || k === count - 1 ? share(k) : (share(k - 1) + 2 * share(k) + share(k + 1)) / 4,
  );
  let best: number | undefined;
  for (let k = 1; k < count; k++) {
    const a = soft[k - 1]!,
      b = soft[k]!;
    if (a >= 0.5 || b < 0.5) continue;
    const off = k - 1 + (0.5 - a) / (b - a) - steps;
    if (best === undefined || Math.abs(off) < Math.abs(best)) best = off;
  }
  return best;
}
