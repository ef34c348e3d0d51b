import { easeWanted, matches, runsTaken, sumsTaken } from '../joining/runs-taken.js';
import { edgeNames } from '../pattern/outline.js';
import type { EdgeRun, Pattern, Seam } from '../pattern/types.js';

/**
 * Of the runs of a side that is too long or too short, the one to change: its piece is the same way off in the most of
 * its other seams, the other way in the fewest, and has the fewest that match now and would not then; of several alike
 * the last. A seam of a piece with itself says nothing, as both its sides change together.
 */
export function likelierRun(
  pattern: Pattern,
  seam: Seam,
  runs: readonly EdgeRun[],
  off: 'long' | 'short',
): EdgeRun {
  const score = new Map<string, number>();
  for (const { piece } of runs) if (!score.has(piece)) score.set(piece, scoreOf(pattern, seam, piece, off));
  return runs.reduce((best, run) => (score.get(run.piece)! >= score.get(best.piece)! ? run : best));
}

function scoreOf(pattern: Pattern, seam: Seam, piece: string, off: 'long' | 'short'): number {
  const holds = (side: readonly EdgeRun[]): boolean => side.some(run => run.piece === piece);
  return pattern.seams
    .filter(other => other !== seam && holds(other.a) !== holds(other.b) && isThere(pattern, other))
    .map(other => {
      const sums = sumsTaken(pattern, runsTaken(pattern, other));
      if (matches(pattern, other, sums)) return -matching;
      const offMm = sums.aMm - sums.bMm - easeWanted(other, sums.bMm);
      return (offMm > 0 === holds(other.a) ? 'long' : 'short') === off ? 1 : -1;
    })
    .reduce<number>((sum, weight) => sum + weight, 0);
}

/** Amid a step a seam may still name an edge that the step cut away. */
const isThere = ({ pieces }: Pattern, { a, b }: Seam): boolean =>
  [...a, ...b].every(run =>
    pieces.some(piece => piece.name === run.piece && edgeNames(piece).includes(run.edge)),
  );

/** What a seam that matches weighs beside one that is off: less than any number of seams that a piece is sewn with. */
const matching = 1e-3;
