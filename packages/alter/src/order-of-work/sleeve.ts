import { neighboursAtEnds, type Pattern, pieceNamed, type Seam } from '@paperhinge/geometry';
import { isKnit, leastStretch } from '../fit/cloth.js';

/** A sleeve's seam, the seams that close it and its armhole into rings, and whether it is sewn in before they are. */
export interface SleeveSeam {
  readonly seam: Seam;
  readonly closing: readonly Seam[];
  readonly flat: boolean;
  readonly because: string;
}

/**
 * The seams of a pattern that set in a sleeve. In knits and shirts a sleeve goes in flat, before the side and
 * underarm seams, which then are one pass; in woven cloth it is set in the round, after them (trade-notes §10).
 */
export const sleeveSeams = (pattern: Pattern): readonly SleeveSeam[] =>
  pattern.seams.flatMap(seam => {
    const isSleeve = (side: Seam['a']) =>
      side.some(r => /^(cap|sleeve)/i.test(r.edge) || /sleeve/i.test(r.piece));
    if (isSleeve(seam.a) === isSleeve(seam.b)) return [];
    const closing = pattern.seams.filter(
      s => s !== seam && (closes(pattern, s, seam.a) || closes(pattern, s, seam.b)),
    );
    if (closing.length === 0) return [];
    const pieces = [...new Set([...seam.a, ...seam.b].map(r => r.piece))].map(name =>
      pieceNamed(pattern, name),
    );
    const knit = isKnit(leastStretch(pattern, pieces)),
      shirt = /(^|[^a-z])shirt/i.test(pattern.name);
    const because = knit
      ? 'in knits the sleeve goes in flat, and side and underarm are closed in one pass after it'
      : shirt
        ? 'in shirts the sleeve goes in flat, and side and underarm are closed in one pass after it'
        : 'in woven cloth a sleeve is set into the closed armhole, in the round, so that its ease can be shared out';
    return [{ seam, closing, flat: knit || shirt, because }];
  });

/** Whether a seam joins the end of a side to its own beginning. */
function closes(pattern: Pattern, seam: Seam, side: Seam['a']): boolean {
  const first = side[0]!,
    last = side.at(-1)!;
  const start = { piece: first.piece, edge: first.edge, end: first.reversed ? 'end' : 'start' };
  const end = { piece: last.piece, edge: last.edge, end: last.reversed ? 'start' : 'end' };
  const same = (p: typeof start, q: typeof start) =>
    p.piece === q.piece && p.edge === q.edge && p.end === q.end;
  return neighboursAtEnds(pattern, seam).some(
    m => (same(m.first, start) && same(m.second, end)) || (same(m.first, end) && same(m.second, start)),
  );
}
