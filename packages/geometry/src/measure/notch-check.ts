import { toleranceOf } from '../joining/runs-taken.js';
import type { Pattern, Seam } from '../pattern/types.js';
import type { Finding, Thing } from '../telling.js';

import { notchReach } from '../tolerance.js';
import { beyondEase, checkCrossings, type EaseWithin } from './crossing-check.js';
import { type NotchPair, type PairedNotches, pairNotches } from './notch-pairs.js';
import { innerJoints, type LaidNotch, type SeamSide } from './side.js';
import { finding, type SeamPlace } from './tellings.js';

/**
 * A stretch of a seam between two pairs of notches that meet, and the ease (a − b) that lies in it, in mm; a gap that
 * the other side bridges counts as length of its own side.
 */
export interface SeamStretch {
  readonly from: SeamPlace;
  readonly to: SeamPlace;
  readonly aMm: number;
  readonly bMm: number;
  readonly easeMm: number;
}

/** Where the ease of a seam sits: the stretches between its paired notches, from its beginning to its end. */
function seamStretches(a: SeamSide, b: SeamSide, { pairs }: PairedNotches): readonly SeamStretch[] {
  const stops: readonly { readonly place: SeamPlace; readonly a: number; readonly b: number }[] = [
    { place: 'beginning', a: 0, b: 0 },
    ...pairs.map(p => ({ place: notchThing(p.a), a: p.a.alongMm, b: p.b.alongMm })),
    { place: 'end', a: a.reachMm, b: b.reachMm },
  ];
  return stops.slice(1).map((stop, i) => {
    const last = stops[i]!;
    const aMm = stop.a - last.a,
      bMm = stop.b - last.b;
    return { from: last.place, to: stop.place, aMm, bMm, easeMm: aMm - bMm };
  });
}

/**
 * Compares the notches of both sides. Ease may lie anywhere between them, so partners agree where the ease sewn up
 * to them lies between none and all that is wanted, within the seam's tolerance, and none is taken back on the way.
 */
export function checkNotches(
  pattern: Pattern,
  seam: Seam,
  a: SeamSide,
  b: SeamSide,
  easeWantedMm: number,
): { readonly stretches: readonly SeamStretch[]; readonly findings: readonly Finding[] } {
  const paired = pairNotches(a, b);
  // A gap lies in the reach of one side only: what bridges it there is as long, and no ease.
  const wantedMm = easeWantedMm + (a.reachMm - a.lengthMm) - (b.reachMm - b.lengthMm);
  const within = { wantedMm, toleranceMm: toleranceOf(pattern, seam) };
  const lone = (alone: readonly LaidNotch[], own: SeamSide, other: SeamSide, ease: EaseWithin) =>
    aloneFindings(pattern, seam, alone, { own, other, within: ease });
  return {
    stretches: seamStretches(a, b, paired),
    findings: [
      ...pairFindings(seam, paired.pairs, within),
      ...lone(paired.aloneOnA, a, b, within),
      ...lone(paired.aloneOnB, b, a, { ...within, wantedMm: -wantedMm }),
      ...checkCrossings(seam, a, b, within),
    ],
  };
}

function pairFindings(seam: Seam, pairs: readonly NotchPair[], within: EaseWithin): readonly Finding[] {
  const beyond = (d: number) => beyondEase(d, within);
  let before = 0;
  return pairs.flatMap(({ a: p, b: q }) => {
    const here = p.alongMm - q.alongMm,
      last = before;
    before = here;
    const off = beyond(here) - beyond(last);
    // A notch that is as far off as the one before it has moved with it: one finding says it.
    if (beyond(here) !== 0 && Math.abs(off) > within.toleranceMm)
      return [doNotMeet(seam, p, q, beyond(here))];
    if (beyond(last) === 0 && takenBack(here - last, within)) return [easeTakenBack(seam, p, q, here - last)];
    return [];
  });
}

/** The seam eases one way, this stretch the other. */
const takenBack = (ease: number, { wantedMm, toleranceMm }: EaseWithin): boolean =>
  Math.abs(wantedMm) > toleranceMm && Math.abs(ease) > toleranceMm && Math.sign(ease) !== Math.sign(wantedMm);

const place = ({ run }: LaidNotch) => ({ piece: run.piece, edge: run.edge });
const notchThing = ({ run, name, style }: LaidNotch): Thing => ({
  piece: run.piece,
  edge: run.edge,
  notch: name ?? style,
});

const doNotMeet = (seam: Seam, p: LaidNotch, q: LaidNotch, offMm: number): Finding =>
  finding('warning', 'notches-do-not-meet', place(q), {
    seam: { seam: seam.name },
    notch: notchThing(q),
    partner: notchThing(p),
    aMm: p.alongMm,
    bMm: q.alongMm,
    differenceMm: p.alongMm - q.alongMm,
    offMm,
  });

function easeTakenBack(seam: Seam, p: LaidNotch, q: LaidNotch, easeMm: number): Finding {
  const [longer, shorter] = easeMm > 0 ? [p, q] : [q, p];
  return finding('warning', 'ease-the-wrong-way', place(longer), {
    seam: { seam: seam.name },
    notch: notchThing(longer),
    partner: notchThing(shorter),
    easeMm,
  });
}

/**
 * A notch with no partner may mark where a seam crosses the other side (the top of a sleeve cap at the shoulder);
 * if no seam crosses near it, it stands alone. A piece drafted for an edge carries its own division marks.
 */
function aloneFindings(
  pattern: Pattern,
  seam: Seam,
  alone: readonly LaidNotch[],
  { own, other, within }: { readonly own: SeamSide; readonly other: SeamSide; readonly within: EaseWithin },
): readonly Finding[] {
  const findings: Finding[] = [];
  const lonely: LaidNotch[] = [];
  for (const notch of alone) {
    if (isDrafted(pattern, notch.run) || other.runs.every(r => isDrafted(pattern, r.run))) continue;
    const easedTo = (joint: number) => joint * (own.reachMm / other.reachMm);
    const joint = innerJoints(other).toSorted(
      (p, q) => Math.abs(easedTo(p) - notch.alongMm) - Math.abs(easedTo(q) - notch.alongMm),
    )[0];
    if (joint === undefined || Math.abs(easedTo(joint) - notch.alongMm) > notchReach) {
      lonely.push(notch);
      continue;
    }
    const offMm = beyondEase(notch.alongMm - joint, within);
    if (offMm !== 0)
      findings.push(
        finding('warning', 'notch-misses-seam', place(notch), {
          seam: { seam: seam.name },
          notch: notchThing(notch),
          notchMm: notch.alongMm,
          crossingMm: joint,
          offMm,
        }),
      );
  }
  if (lonely.length > 0) findings.push(standAlone(seam, lonely));
  return findings;
}

const isDrafted = (pattern: Pattern, run: LaidNotch['run']): boolean =>
  pattern.pieces.some(p => p.name === run.piece && p.madeFor !== undefined);

const standAlone = (seam: Seam, lonely: readonly LaidNotch[]): Finding =>
  finding('note', 'notch-without-partner', place(lonely[0]!), {
    seam: { seam: seam.name },
    notches: lonely.map(notchThing),
    count: lonely.length,
    alongMm: lonely[0]!.alongMm,
  });
