import {
  type EdgeRun,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  type Seam,
} from '@paperhinge/geometry';
import { type EdgePosition, neighboursOf } from '@paperhinge/geometry/pattern';
import { refusal } from './tellings.js';

/** @throws PatternError `unknown-seam` */
export function seamNamed(pattern: Pattern, name: string): Seam {
  const seam = pattern.seams.find(s => s.name === name);
  if (seam) return seam;
  throw refusal('unknown-seam', { name, names: pattern.seams.map(s => s.name) });
}

/** Where a run begins and ends on its edge, in mm from the edge's start. */
export function stretchOf(pattern: Pattern, { piece, edge, part }: EdgeRun): readonly [number, number] {
  return part ? [part.from, part.to] : [0, pathLength(edgePath(pieceNamed(pattern, piece), edge))];
}

/** mm of stitching line on a side of a seam. */
export const sideLength = (pattern: Pattern, side: readonly EdgeRun[]): number =>
  side.reduce((sum, run) => {
    const [from, to] = stretchOf(pattern, run);
    return sum + to - from;
  }, 0);

/**
 * A place on a seam as a share of its length from its beginning; a length is measured on side a, and holds for the
 * same share of side b. `from` may be `start`, `end` or what the seam's beginning or end touches on either side.
 * @throws PatternError `position-off-seam`, `seam-end-ambiguous`, `seam-end-unknown`
 */
export function shareOfSeam(pattern: Pattern, seam: Seam, position: EdgePosition): number {
  const lengthMm = sideLength(pattern, seam.a);
  const share = 'share' in position ? position.share : position.mm / lengthMm;
  if (!(share >= 0 && share <= 1))
    throw refusal('position-off-seam', { seam: { seam: seam.name }, alongMm: share * lengthMm, lengthMm });
  const { from } = position;
  if (from === undefined || from === 'start') return share;
  if (from === 'end') return 1 - share;
  const starts = [seam.a, seam.b].map(side => outerNeighbour(pattern, side[0]!, 'start'));
  const ends = [seam.a, seam.b].map(side => outerNeighbour(pattern, side.at(-1)!, 'end'));
  const atStart = starts.includes(from);
  if (atStart !== ends.includes(from)) return atStart ? share : 1 - share;
  throw atStart
    ? refusal('seam-end-ambiguous', { seam: { seam: seam.name }, from })
    : refusal('seam-end-unknown', {
        seam: { seam: seam.name },
        from,
        neighbours: [...new Set([...starts, ...ends])],
      });
}

function outerNeighbour(pattern: Pattern, run: EdgeRun, end: 'start' | 'end'): string {
  const beside = neighboursOf(pieceNamed(pattern, run.piece), run.edge);
  return (end === 'start') === run.reversed ? beside.end : beside.start;
}
