import { byLinesAlone } from './any-pairs.js';
import type { LookAround } from './around-corners.js';
import { type Candidate, candidate } from './seam-candidates.js';
import { exact } from './seam-chances.js';
import { runsOf, type SewingLine } from './sewing-lines.js';

/** Odds that lines are sewn that lie on one another where others have come together; before their lengths are compared. */
const closing = 3;
/** rad: cloth all round a corner, give or take what truing leaves. */
const near = 0.4;

/**
 * Lines that lie on one another once other seams are sewn: where the cloth at a corner comes round to a whole turn, as
 * the ends of a waistband's front and back do at the side.
 */
export function closedCorners(
  all: readonly SewingLine[],
  isOpen: (line: SewingLine) => boolean,
  around: LookAround,
): readonly Candidate[] {
  return all.filter(isOpen).flatMap(line =>
    [true, false].flatMap(atStart => {
      const { met, seamsCrossed, cloth } = around({ line, atStart });
      if (!met || seamsCrossed < 2 || cloth === undefined || Math.abs(cloth - 2 * Math.PI) > near) return [];
      if (met.line === line || met.line.layer !== line.layer || all.indexOf(met.line) < all.indexOf(line))
        return [];
      const runs = { a: runsOf(line, !atStart), b: runsOf(met.line, !met.atStart) };
      const name = line.role !== undefined && line.role === met.line.role ? line.role : 'seam';
      return [
        candidate(name, [line], [met.line], exact, { runs, prior: closing, sure: 1, most: byLinesAlone }),
      ];
    }),
  );
}
