import { type EdgeRun, type Pattern, pieceNamed, type Seam, walkSeam } from '@paperhinge/geometry';
import { copiesInGarment, foldEdgeOf } from '@paperhinge/geometry/pattern';
import { distinctRuns, sameRun } from '../edge-refs.js';

/** What a maker has in her hands when she works one side of a seam in; lengths in mm. */
export interface SeamLengths {
  /** Of the longer side, and what it is worked in to; a piece on a fold opened out. */
  readonly fromMm: number;
  readonly toMm: number;
  /** How many times that is done: for each sleeve of a pair, for each gore. */
  readonly times: number;
}

/** The lengths of a seam whose longer side is worked in, as often as it is sewn by itself. */
export function seamLengths(pattern: Pattern, seam: Seam, longer: 'a' | 'b'): SeamLengths {
  const { aMm, bMm, counted } = walkSeam(pattern, seam);
  const [fromMm, toMm] = longer === 'a' ? [aMm, bMm] : [bMm, aMm];
  const { copies, onFold } = alike(pattern, seam[longer]);
  const once = onFold ? Math.max(1, copies / 2) : copies;
  if (counted === 'garment') return { fromMm: fromMm / once, toMm: toMm / once, times: once };
  const opened = copies / once;
  return { fromMm: fromMm * opened, toMm: toMm * opened, times: once };
}

/** How many copies of each piece a side stands for, and whether some are halves on a fold; one where they differ. */
function alike(pattern: Pattern, side: readonly EdgeRun[]) {
  const runs = distinctRuns(side);
  const pieces = runs.map(run => pieceNamed(pattern, run.piece));
  const copies = runs.map(
    (run, i) => copiesInGarment(pieces[i]!) / side.filter(other => sameRun(other, run)).length,
  );
  const onFold = pieces.some(piece => foldEdgeOf(piece) !== undefined);
  return { copies: copies.every(c => c === copies[0]) ? copies[0]! : 1, onFold };
}
