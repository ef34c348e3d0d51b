import { pathLength, pointAlong } from '../path/length.js';
import { pathEnd, pathStart } from '../path/path.js';
import { edgeNames, edgePath, neighboursOf, pieceNamed } from '../pattern/outline.js';
import type { EdgeRun, Pattern, Piece, Seam } from '../pattern/types.js';
import { joiningGap } from '../tolerance.js';
import { distance } from '../vector.js';

/**
 * A seam with the ends of ties and straps that are folded along their length, by the fold line that runs from the end's
 * middle, as they are sewn: half as broad. The same seam where it has none.
 */
export function withFoldedEnds(pattern: Pattern, seam: Seam): Seam {
  const side = (runs: readonly EdgeRun[]) =>
    runs.map(run => {
      const piece = pieceNamed(pattern, run.piece);
      if (run.part || !isFoldedEnd(piece, run.edge)) return run;
      return { ...run, part: { from: 0, to: pathLength(edgePath(piece, run.edge)) / 2 } };
    });
  const [a, b] = [side(seam.a), side(seam.b)];
  const isSame = a.every((run, i) => run === seam.a[i]) && b.every((run, i) => run === seam.b[i]);
  return isSame ? seam : { ...seam, a, b };
}

/** Whether an edge is the narrow end of a piece that a fold line runs along from its middle. */
function isFoldedEnd(piece: Piece, edge: string): boolean {
  const folds = piece.lines.filter(line => line.kind === 'fold');
  if (folds.length === 0 || !edgeNames(piece).includes(edge)) return false;
  const path = edgePath(piece, edge);
  const endMm = pathLength(path);
  const middle = pointAlong(path, endMm / 2);
  const { start, end } = neighboursOf(piece, edge);
  return (
    [start, end].every(
      beside => edgeNames(piece).includes(beside) && pathLength(edgePath(piece, beside)) >= slender * endMm,
    ) &&
    folds.some(({ path: fold }) =>
      [pathStart(fold), pathEnd(fold)].some(place => distance(place, middle) <= joiningGap),
    )
  );
}

/** Its sides are at least twice as long as the end is broad. Common practice, no source. */
const slender = 2;
