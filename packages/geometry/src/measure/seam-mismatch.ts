import {
  matches,
  type RunsCounted,
  runLength,
  runsTaken,
  sumsOf,
  sumsTaken,
  toleranceOf,
} from '../joining/runs-taken.js';
import { isTie } from '../joining/ties.js';
import { edgeNamed, foldEdgeOf, pieceNamed, withPiece } from '../pattern/outline.js';
import { roleOf } from '../pattern/roles/roles.js';
import type { EdgeRun, Pattern, Seam } from '../pattern/types.js';
import type { Finding } from '../telling.js';

import { coincidenceTolerance, leastSeen } from '../tolerance.js';
import { likelierRun } from './likelier-run.js';
import type { SeamStretch } from './notch-check.js';
import { edgesOfSide, type SeamSide } from './side.js';
import { finding } from './tellings.js';

/** Two sides of a seam that do not match: both, how they were counted, the ease wanted and where the ease sits. */
export interface Mismatch {
  readonly a: SeamSide;
  readonly b: SeamSide;
  readonly counted: RunsCounted;
  readonly easeWantedMm: number;
  readonly stretches: readonly SeamStretch[];
}

/**
 * The fault of a seam whose sides do not match: by how much, between which notches, which edges to change, what both
 * sides measure counted the other way, and the number of layers that would make them agree.
 */
export function mismatchFinding(pattern: Pattern, seam: Seam, mismatch: Mismatch): Finding {
  const { a, b, counted, easeWantedMm, stretches } = mismatch;
  const differenceMm = a.lengthMm - b.lengthMm;
  const offMm = differenceMm - easeWantedMm;
  const [long, short] = offMm > 0 ? [a, b] : [b, a];
  const at = guiltyStretch(stretches, offMm, easeWantedMm, toleranceOf(pattern, seam));
  const among = (side: SeamSide) => runsAt(side, stretches, at, side === a);
  const shorten = likelierRun(pattern, seam, among(long), 'long'),
    lengthen = likelierRun(pattern, seam, among(short), 'short');
  const drafted = [shorten, lengthen].find(run =>
    pattern.pieces.some(p => p.name === run.piece && p.madeFor !== undefined),
  );
  return finding('fault', 'seam-does-not-match', edgeOf(shorten), {
    seam: { seam: seam.name },
    aMm: a.lengthMm,
    bMm: b.lengthMm,
    differenceMm,
    easeWantedMm,
    offMm,
    takenUp: seam.takenUp ?? 'eased',
    longer: edgesOfSide(long),
    shorter: edgesOfSide(short),
    shorten: edgeOf(shorten),
    shortenTimes: timesIn(long, shorten),
    lengthen: edgeOf(lengthen),
    lengthenTimes: timesIn(short, lengthen),
    ...(at && stretches.length > 1 ? { from: at.from, to: at.to } : {}),
    ...(drafted ? { redraft: { piece: drafted.piece } } : {}),
    ...capOf(pattern, seam, offMm),
    counted,
    ...countedOtherwise(pattern, seam, counted),
    ...layersThatAgree(pattern, seam),
  });
}

/** A cap that alone makes a side, and is off by no more than its height can make up. */
function capOf(pattern: Pattern, { a, b }: Seam, offMm: number) {
  const caps = [a, b]
    .filter(side => side.length === 1 && side[0]!.part === undefined)
    .map(([run]) => run!)
    .filter(({ piece, edge }) => roleOf(edgeNamed(pieceNamed(pattern, piece), edge)) === 'cap');
  const [cap] = caps;
  if (caps.length !== 1 || !cap) return {};
  return Math.abs(offMm) <= mostOfCap * runLength(pattern, cap) ? { cap: { piece: cap.piece } } : {};
}

/** Share of its length that a cap is let out or taken in by its height. Common practice, no source. */
const mostOfCap = 0.1;

/** How often an edge is sewn there, left and right: what is changed of it on paper counts as often. */
const timesIn = ({ runs }: SeamSide, { piece, edge, part }: EdgeRun): number =>
  runs.filter(
    ({ run }) =>
      run.piece === piece &&
      run.edge === edge &&
      Math.abs((run.part?.from ?? 0) - (part?.from ?? 0)) <= coincidenceTolerance,
  ).length;

const edgeOf = ({ piece, edge }: EdgeRun) => ({ piece, edge });

/** What both sides measure counted the other way, where that is not the same. */
function countedOtherwise(pattern: Pattern, seam: Seam, counted: RunsCounted) {
  const here = sumsOf(pattern, seam, counted),
    other = sumsOf(pattern, seam, counted === 'written' ? 'garment' : 'written');
  // Both sides as often again say nothing new.
  const alike = Math.abs(here.aMm * other.bMm - here.bMm * other.aMm) <= leastSeen * (here.aMm + here.bMm);
  return alike ? {} : { otherAMm: other.aMm, otherBMm: other.bMm };
}

/** A piece of the seam, and how many of it would have to lie on one another for the sides to match. */
function layersThatAgree(pattern: Pattern, seam: Seam) {
  const strip = stripThatAgrees(pattern, seam);
  if (strip !== undefined) return { folded: { piece: strip } };
  for (const name of new Set([...seam.a, ...seam.b].map(run => run.piece))) {
    const piece = pieceNamed(pattern, name);
    const { count, layers: now = 1 } = piece.cutting;
    for (let layers = 1; layers <= count; layers++) {
      if (layers === now || count % layers !== 0) continue;
      const layered = withPiece(pattern, { ...piece, cutting: { ...piece.cutting, layers } });
      const { counted } = runsTaken(layered, seam);
      if (matches(layered, seam, sumsOf(layered, seam, counted))) return { layered: { piece: name }, layers };
    }
  }
  return {};
}

/** A tie or strap that is drawn at its full width and matches folded along its length. */
function stripThatAgrees(pattern: Pattern, { a, b, ...seam }: Seam): string | undefined {
  if (a.length !== 1 || b.length !== 1) return undefined;
  const ends = [a[0]!, b[0]!];
  const isOff = ({ a, b }: Pick<Seam, 'a' | 'b'>): boolean =>
    !matches(pattern, { ...seam, a, b }, sumsTaken(pattern, runsTaken(pattern, { ...seam, a, b })));
  return ends.find((run, i) => {
    const piece = pieceNamed(pattern, run.piece);
    const half = { ...run, part: { from: 0, to: runLength(pattern, run) / 2 } };
    const isFolded = piece.lines.some(line => line.kind === 'fold');
    if (run.part || isFolded || !isTie(pattern, piece) || foldEdgeOf(piece)) return false;
    return !isOff(i === 0 ? { a: [half], b } : { a, b: [half] });
  })?.piece;
}

/** The one stretch between notches that alone explains the difference; undefined where it is shared or unclear. */
function guiltyStretch(
  stretches: readonly SeamStretch[],
  offMm: number,
  wantedMm: number,
  toleranceMm: number,
): SeamStretch | undefined {
  // With ease wanted, nobody can say which stretch has too much of it; without, every stretch should be even.
  if (Math.abs(wantedMm) > toleranceMm) return undefined;
  return stretches.find(s => Math.abs(s.easeMm - offMm) <= toleranceMm);
}

/** The runs that lie in the guilty stretch; else all. */
function runsAt(
  side: SeamSide,
  stretches: readonly SeamStretch[],
  at: SeamStretch | undefined,
  isA: boolean,
): readonly EdgeRun[] {
  const length = (s: SeamStretch) => (isA ? s.aMm : s.bMm);
  const before = at ? stretches.slice(0, stretches.indexOf(at)) : [];
  const from = before.reduce((sum, s) => sum + length(s), 0);
  const to = at ? from + length(at) : side.reachMm;
  const within = side.runs.filter(
    r => r.fromMm < to - coincidenceTolerance && r.fromMm + r.lengthMm > from + coincidenceTolerance,
  );
  return (within.length > 0 ? within : side.runs).map(({ run }) => run);
}
