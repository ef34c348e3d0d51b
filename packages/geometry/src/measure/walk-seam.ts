import {
  decidedBy,
  easeWanted,
  type RunsCounted,
  runsTaken,
  matches as sidesMatch,
  toleranceOf,
} from '../joining/runs-taken.js';
import { liesUnder } from '../joining/turns-back.js';
import { oncePerAll } from '../once-per.js';
import { pieceNamed } from '../pattern/outline.js';
import { requireWhole, requireWholeSeam } from '../pattern/require-whole.js';
import type { Pattern, Seam, TakenUp } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { joinedLineFinding, turnedBackFinding } from './joined-line-check.js';
import { type JoinedLine, joinedLinesOf, turnedBackLines } from './joined-lines.js';
import { checkNotches, type SeamStretch } from './notch-check.js';
import { type Mismatch, mismatchFinding } from './seam-mismatch.js';
import { laidOut, type SeamSide } from './side.js';

/** What a seam measures when both its sides are walked; lengths in mm on the stitching line, darts and pleats closed. */
export interface SeamWalk {
  readonly seam: string;
  /** Whether both sides are the edges as written, or every copy in the whole garment. */
  readonly counted: RunsCounted;
  readonly aMm: number;
  readonly bMm: number;
  /** a − b. */
  readonly differenceMm: number;
  /** a − b as it should be; an ease in per cent is one of b. */
  readonly easeWantedMm: number;
  /** How the longer side is made to fit. */
  readonly takenUp: TakenUp;
  /** The difference is the ease wanted, within the tolerance of the seam. */
  readonly matches: boolean;
  /** Where the ease sits: between the notches that meet, from the beginning to the end. */
  readonly stretches: readonly SeamStretch[];
  /** The lines that must run on across the seam's two ends, with the corner and step that each makes. */
  readonly joined: readonly JoinedLine[];
  /** A fault where the sides do not match; warnings on notches and joined lines; notes on notches alone. */
  readonly findings: readonly Finding[];
}

/**
 * Walks a seam: both sides measured and compared with the ease wanted, their notches paired and compared, and the
 * lines that must run on at its two ends held together (trade-notes §4 and §5).
 * @throws PatternError `unknown-piece`, `unknown-edge`, `empty-seam`; what `requireWhole` throws
 */
export function walkSeam(pattern: Pattern, seam: Seam): SeamWalk {
  requireWhole(pattern);
  requireWholeSeam(seam);
  const { walk, mismatch } = walkedOnce(pattern, seam);
  return mismatch ? withMismatch(pattern, seam) : walk;
}

const walkedOnce = /* @__PURE__ */ oncePerAll(
  // Only the seam's own pieces and the list of seams decide what is found, and a tolerance that holds for all seams.
  (pattern: Pattern, seam: Seam) => [pattern.seams, ...decidedBy(pattern, seam)],
  walked,
);

/** Which of several pieces is to blame is told by the other seams that they are sewn with. */
const withMismatch = /* @__PURE__ */ oncePerAll(
  (pattern: Pattern, seam: Seam) => [pattern, seam],
  (pattern: Pattern, seam: Seam): SeamWalk => {
    const { walk, mismatch } = walkedOnce(pattern, seam);
    return { ...walk, findings: [mismatchFinding(pattern, seam, mismatch!), ...walk.findings] };
  },
);

function walked(pattern: Pattern, seam: Seam): { readonly walk: SeamWalk; readonly mismatch?: Mismatch } {
  const { a, b, ...measured } = measureSeam(pattern, seam);
  const { counted, differenceMm, easeWantedMm, matches } = measured;
  const { stretches, findings } = checkNotches(pattern, seam, a, b, easeWantedMm);
  const joined = joinedLinesOf(pattern, seam, matches ? 0 : differenceMm - easeWantedMm);
  const toleranceMm = toleranceOf(pattern, seam);
  const walk: SeamWalk = {
    seam: seam.name,
    ...measured,
    takenUp: seam.takenUp ?? 'eased',
    stretches,
    joined,
    findings: [
      ...findings,
      ...joined.flatMap(line => joinedLineFinding(line, toleranceMm)),
      ...turnedBackLines(pattern, seam).flatMap(line =>
        turnedBackFinding(line, liesUnder(pieceNamed(pattern, line.first.piece)) ? 'first' : 'second'),
      ),
    ],
  };
  return matches ? { walk } : { walk, mismatch: { a, b, counted, easeWantedMm, stretches } };
}

/** Every seam of a pattern, walked in its order. @throws as `walkSeam` */
export function walkSeams(pattern: Pattern): readonly SeamWalk[] {
  requireWhole(pattern);
  return pattern.seams.map(seam => walkSeam(pattern, seam));
}

/** Both sides of a seam laid out, its runs as often as they are taken. @throws as `walkSeam` */
export function sidesOfSeam(
  pattern: Pattern,
  seam: Seam,
): { readonly counted: RunsCounted; readonly a: SeamSide; readonly b: SeamSide } {
  requireWhole(pattern);
  requireWholeSeam(seam);
  const { counted, a, b } = runsTaken(pattern, seam);
  return { counted, a: laidOut(pattern, a), b: laidOut(pattern, b) };
}

/** The lengths of a seam's sides without its notches and corners. @throws as `walkSeam` */
export function measureSeam(pattern: Pattern, seam: Seam) {
  const { counted, a, b } = sidesOfSeam(pattern, seam);
  const aMm = a.lengthMm,
    bMm = b.lengthMm;
  return {
    counted,
    a,
    b,
    aMm,
    bMm,
    differenceMm: aMm - bMm,
    easeWantedMm: easeWanted(seam, bMm),
    matches: sidesMatch(pattern, seam, { aMm, bMm }),
  };
}
