import type { Finding } from '../errors.js';
import { runLabel } from '../pattern/outline.js';
import type { Seam } from '../pattern/types.js';
import { coincidenceTolerance, notchReach, seamTolerance } from '../tolerance.js';
import type { LaidRun, SeamSide } from './side.js';

/**
 * Seams that cross this one on both sides (the side seams of bodice and skirt at the waist) should meet. Only those
 * between pieces, and within `notchReach` of each other, are taken to be meant for each other; they may still lie
 * apart on purpose, so it is a note.
 */
export function checkCrossings(
  seam: Seam,
  a: SeamSide,
  b: SeamSide,
  easeWantedMm: number,
): readonly Finding[] {
  return crossings(a).flatMap(one => {
    const other = crossings(b).toSorted(
      (p, q) => Math.abs(p.fromMm - one.fromMm) - Math.abs(q.fromMm - one.fromMm),
    )[0];
    if (!other) return [];
    const offMm = beyondEase(one.fromMm - other.fromMm, easeWantedMm);
    if (offMm === 0 || Math.abs(offMm) > notchReach) return [];
    const by = `${Math.abs(offMm).toFixed(1)} mm`;
    return [
      {
        severity: 'note',
        code: 'crossing-seams-apart',
        where: { piece: one.run.piece, edge: one.run.edge },
        message:
          `Seam "${seam.name}": the seam before ${runLabel(one.run)} and the seam before ${runLabel(other.run)} ` +
          `cross it ${by} apart.`,
        figures: { aMm: one.fromMm, bMm: other.fromMm, offMm },
        remedy: `If they should meet, move one of them by ${by}.`,
      },
    ];
  });
}

/** Runs that begin where another piece ends. */
const crossings = (side: SeamSide): readonly LaidRun[] =>
  side.runs.filter((run, i) => i > 0 && side.runs[i - 1]!.run.piece !== run.run.piece);

/** By how much the ease up to a place lies beyond none and beyond all that is wanted; 0 within `seamTolerance`. */
export function beyondEase(easeMm: number, wantedMm: number): number {
  const over = easeMm - Math.max(0, wantedMm),
    under = easeMm - Math.min(0, wantedMm);
  const slack = seamTolerance + coincidenceTolerance;
  return over > slack ? over : under < -slack ? under : 0;
}
