import { mirror } from '../affine.js';
import { boundsOf, boxAround } from '../curve/bounds.js';
import type { Segment } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { coincidenceTolerance } from '../tolerance.js';
import { add, cross, distance, leftOf, type Point, scale, subtract, unit } from '../vector.js';
import type { Run } from './run.js';
import { pathOfStrands, type Strand, strandsReversed, strandsTransformed } from './strand.js';

/**
 * What lies beyond each fold of a piece that its cutting line strays over: there lies the piece's other half, which strays
 * over this one as much. Of a piece that itself lies on both sides of a fold, none.
 */
export function beyondFolds(runs: readonly Run[], raw: readonly Strand[]): readonly OtherHalf[] {
  const strays = (fold: Run, segments: readonly Segment[]): boolean =>
    segments.some(segment => segment.some(p => isBeyond(fold, p)));
  const stitching = runs.flatMap(run => run.stitching);
  return runs
    .filter(run => run.edge?.kind === 'fold')
    .filter(fold => strays(fold, pathOfStrands(raw).segments) && !strays(fold, stitching))
    .map(fold => ({
      fold: fold.of,
      beyond: groundBeyond(fold, raw),
      stray: strandsReversed(strandsTransformed(raw, mirror(fold.start, fold.startTangent))),
    }));
}

/** The half of a piece beyond a fold, by the fold's name. */
export interface OtherHalf {
  readonly fold: string;
  readonly beyond: Path;
  /** Its own chain of parallels, clockwise. */
  readonly stray: readonly Strand[];
}

/** Whether a point lies on the outer side of a fold's line. */
const isBeyond = ({ start, end }: Run, p: Point): boolean =>
  cross(unit(subtract(end, start)), subtract(p, start)) < -coincidenceTolerance;

/** Along the fold, straight on beyond both its ends, and back far outside. */
function groundBeyond(
  { stitching, start, end, startTangent, endTangent }: Run,
  raw: readonly Strand[],
): Path {
  const { min, max } = raw.map(s => boundsOf(s.segment)).reduce(boxAround);
  const far = distance(min, max);
  const out = scale(leftOf(unit(subtract(end, start))), far);
  const first = subtract(start, scale(startTangent, far)),
    last = add(end, scale(endTangent, far));
  return {
    segments: [
      [first, start],
      ...stitching,
      [end, last],
      [last, add(last, out)],
      [add(last, out), add(first, out)],
      [add(first, out), first],
    ],
  };
}
