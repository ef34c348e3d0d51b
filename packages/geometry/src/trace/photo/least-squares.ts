import { firstDamping, leastDamping, leastGained } from '../../tolerance.js';

/** A misfit: what it is at some unknowns, and which of them it depends on. */
export interface Misfit {
  readonly on: readonly number[];
  /** As many figures as `size`, each in its standard error. */
  readonly size: number;
  at(unknowns: Float64Array, out: Float64Array): void;
}

/** Unknowns as found, and the least sum of weighed squares. */
export interface Fitted {
  readonly unknowns: Float64Array;
  readonly cost: number;
}

/** What the search for the least sum needs. */
export interface SearchOptions {
  /** For each unknown, a change that matters little: derivatives are taken over it. */
  readonly steps: readonly number[];
  readonly rounds: number;
  /** Standard errors beyond which a misfit counts less and less (Cauchy's weight); infinite for plain squares. */
  readonly doubt: number;
}

/**
 * Unknowns with the least sum of squared misfits, from a start near enough. Source: Marquardt, An algorithm for
 * least-squares estimation of nonlinear parameters, 1963; doubtful misfits weighed down round by round (Holland and
 * Welsch 1977). Ends when a round gains less than `leastGained`.
 */
export function leastSquares(
  start: Float64Array,
  misfits: readonly Misfit[],
  options: SearchOptions,
): Fitted {
  let unknowns = start,
    cost = costOf(start, misfits, options.doubt),
    damping = firstDamping;
  for (let round = 0; round < options.rounds; round++) {
    const { matrix, right } = normalEquations(unknowns, misfits, options);
    let better: Fitted | undefined;
    for (let tries = 0; tries < 8 && !better; tries++) {
      const change = solvedDamped(matrix, right, damping);
      const next = unknowns.map((v, i) => v - (change?.[i] ?? 0));
      const nextCost = change ? costOf(next, misfits, options.doubt) : Number.POSITIVE_INFINITY;
      if (nextCost < cost) better = { unknowns: next, cost: nextCost };
      damping = better ? Math.max(damping / 8, leastDamping) : damping * 6;
    }
    if (!better) break;
    const gained = cost - better.cost;
    ({ unknowns, cost } = better);
    if (gained < leastGained * cost) break;
  }
  return { unknowns, cost };
}

function costOf(unknowns: Float64Array, misfits: readonly Misfit[], doubt: number): number {
  const out = new Float64Array(2);
  let cost = 0;
  for (const misfit of misfits) {
    misfit.at(unknowns, out);
    let square = 0;
    for (let i = 0; i < misfit.size; i++) square += out[i]! ** 2;
    if (Number.isNaN(square)) return Number.POSITIVE_INFINITY;
    cost +=
      doubt === Number.POSITIVE_INFINITY ? square : doubt * doubt * Math.log1p(square / (doubt * doubt));
  }
  return cost;
}

/** The matrix of second derivatives (without curvature) and the slope, lower triangle filled. */
function normalEquations(
  unknowns: Float64Array,
  misfits: readonly Misfit[],
  { steps, doubt }: Pick<SearchOptions, 'steps' | 'doubt'>,
): { readonly matrix: Float64Array; readonly right: Float64Array } {
  const n = unknowns.length;
  const matrix = new Float64Array(n * n),
    right = new Float64Array(n);
  const here = new Float64Array(2),
    more = new Float64Array(2),
    less = new Float64Array(2);
  const moved = unknowns.slice();
  for (const { on, size, at } of misfits) {
    at(unknowns, here);
    const square = size === 2 ? here[0]! ** 2 + here[1]! ** 2 : here[0]! ** 2;
    const weight = 1 / (1 + square / (doubt * doubt));
    const slopes = on.map(i => {
      const step = steps[i]!;
      moved[i] = unknowns[i]! + step;
      at(moved, more);
      moved[i] = unknowns[i]! - step;
      at(moved, less);
      moved[i] = unknowns[i]!;
      return [
        (more[0]! - less[0]!) / (2 * step),
        size === 2 ? (more[1]! - less[1]!) / (2 * step) : 0,
      ] as const;
    });
    for (let p = 0; p < on.length; p++) {
      const i = on[p]!,
        [sx, sy] = slopes[p]!;
      right[i]! += weight * (sx * here[0]! + (size === 2 ? sy * here[1]! : 0));
      for (let q = 0; q <= p; q++) {
        const j = on[q]!,
          [tx, ty] = slopes[q]!;
        matrix[Math.max(i, j) * n + Math.min(i, j)]! += weight * (sx * tx + sy * ty);
      }
    }
  }
  return { matrix, right };
}

/** Solves (M + damping · diag M) x = r by Cholesky; undefined if that is not positive. */
export function solvedDamped(
  matrix: Float64Array,
  right: Float64Array,
  damping: number,
): Float64Array | undefined {
  const n = right.length;
  const lower = matrix.slice();
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = lower[i * n + j]!;
      if (i === j) sum += damping * sum;
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!;
      if (i === j) {
        if (!(sum > 0)) return undefined;
        lower[i * n + i] = Math.sqrt(sum);
      } else lower[i * n + j] = sum / lower[j * n + j]!;
    }
  }
  const x = right.slice();
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= lower[i * n + k]! * x[k]!;
    x[i]! /= lower[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= lower[k * n + i]! * x[k]!;
    x[i]! /= lower[i * n + i]!;
  }
  return x;
}
