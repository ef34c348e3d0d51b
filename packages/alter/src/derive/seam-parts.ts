import type { EdgeRun, Pattern } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { stretchOf } from '../moved-edges/seam-place.js';

/** A side of a seam cut at two places: its runs before the first, between, and after the second. */
export interface SideParts {
  readonly before: readonly EdgeRun[];
  readonly within: readonly EdgeRun[];
  readonly after: readonly EdgeRun[];
}

/** @param from, to mm from the seam's beginning */
export function sideParts(
  pattern: Pattern,
  side: readonly EdgeRun[],
  { from, to }: { readonly from: number; readonly to: number },
): SideParts {
  const before: EdgeRun[] = [],
    within: EdgeRun[] = [],
    after: EdgeRun[] = [];
  let along = 0;
  for (const run of side) {
    const [start, end] = stretchOf(pattern, run);
    const length = end - start;
    const cut = (a: number, b: number, into: EdgeRun[]): void => {
      const low = Math.max(0, a - along),
        high = Math.min(length, b - along);
      if (high - low <= tolerances.coincidenceTolerance) return;
      // Against the clock a run is walked from its end.
      const part = run.reversed
        ? { from: end - high, to: end - low }
        : { from: start + low, to: start + high };
      into.push(low === 0 && high === length ? run : { ...run, part });
    };
    cut(0, from, before);
    cut(from, to, within);
    cut(to, Number.POSITIVE_INFINITY, after);
    along += length;
  }
  return { before, within, after };
}
