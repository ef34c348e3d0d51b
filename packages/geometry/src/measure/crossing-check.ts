import type { Seam } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { coincidenceTolerance, notchReach } from '../tolerance.js';
import type { LaidRun, SeamSide } from './side.js';
import { finding } from './tellings.js';

/**
 * Seams that cross this one on both sides (the side seams of bodice and skirt at the waist) should meet. Only those
 * between pieces, and within `notchReach` of each other, are taken to be meant for each other; they may still lie
 * apart on purpose, so it is a note.
 */
export function checkCrossings(seam: Seam, a: SeamSide, b: SeamSide, within: EaseWithin): readonly Finding[] {
  return crossings(a).flatMap(one => {
    const other = crossings(b).toSorted(
      (p, q) => Math.abs(p.fromMm - one.fromMm) - Math.abs(q.fromMm - one.fromMm),
    )[0];
    if (!other) return [];
    const offMm = beyondEase(one.fromMm - other.fromMm, within);
    if (offMm === 0 || Math.abs(offMm) > notchReach) return [];
    const [first, second] = [one, other].map(({ run: { piece, edge } }) => ({ piece, edge }));
    return [
      finding('note', 'crossing-seams-apart', first!, {
        seam: { seam: seam.name },
        first: first!,
        second: second!,
        aMm: one.fromMm,
        bMm: other.fromMm,
        offMm,
      }),
    ];
  });
}

/** Runs that begin where another piece ends. */
const crossings = (side: SeamSide): readonly LaidRun[] =>
  side.runs.filter((run, i) => i > 0 && side.runs[i - 1]!.run.piece !== run.run.piece);

/** The ease wanted over a seam, and by how much a place of it may lie off. */
export interface EaseWithin {
  readonly wantedMm: number;
  readonly toleranceMm: number;
}

/** By how much the ease up to a place lies beyond none and beyond all that is wanted; 0 within the tolerance. */
export function beyondEase(easeMm: number, { wantedMm, toleranceMm }: EaseWithin): number {
  const over = easeMm - Math.max(0, wantedMm),
    under = easeMm - Math.min(0, wantedMm);
  const slack = toleranceMm + coincidenceTolerance;
  return over > slack ? over : under < -slack ? under : 0;
}
