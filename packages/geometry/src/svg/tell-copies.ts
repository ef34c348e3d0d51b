import { foldEdgeOf } from '../pattern/outline.js';
import type { Pattern, Piece } from '../pattern/types.js';
import type { Report } from './report.js';
import type { Element } from './xml.js';

/**
 * A file of before there were versions was written when a piece counted twice at most, as a mirrored pair or on a
 * fold; now every copy counts. Says so of each sewn piece for which that makes a difference.
 */
export function tellCopies(pattern: Pattern, root: Element, report: Report): void {
  const sewn = new Set(pattern.seams.flatMap(({ a, b }) => [...a, ...b].map(run => run.piece)));
  for (const piece of pattern.pieces) {
    const count = copiesNow(piece),
      before = copiesBefore(piece);
    if (sewn.has(piece.name) && count !== before) {
      const owner = { piece: piece.name };
      report.add('note', 'copies-count-now', root.offset, { piece: owner, count, before }, owner);
    }
  }
}

const copiesNow = (piece: Piece): number =>
  (piece.cutting.count / (piece.cutting.layers ?? 1)) * (foldEdgeOf(piece) ? 2 : 1);

const copiesBefore = (piece: Piece): number =>
  foldEdgeOf(piece) || (piece.cutting.mirrored && piece.cutting.count >= 2) ? 2 : 1;
