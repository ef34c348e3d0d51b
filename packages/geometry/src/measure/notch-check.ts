import type { Finding } from '../errors.js';
import type { Pattern, Seam } from '../pattern/types.js';
import { notchReach, seamTolerance } from '../tolerance.js';
import { beyondEase, checkCrossings } from './crossing-check.js';
import { type PairedNotches, pairNotches } from './notch-pairs.js';
import { innerJoints, type LaidNotch, type SeamSide } from './side.js';

/**
 * A stretch of a seam between two pairs of notches that meet, and the ease (a − b) that lies in it, in mm; a gap that
 * the other side bridges counts as length of its own side.
 */
export interface SeamStretch {
  readonly from: string;
  readonly to: string;
  readonly aMm: number;
  readonly bMm: number;
  readonly easeMm: number;
}

/** Where the ease of a seam sits: the stretches between its paired notches, from its beginning to its end. */
export function seamStretches(a: SeamSide, b: SeamSide, { pairs }: PairedNotches): readonly SeamStretch[] {
  const stops = [
    { name: 'the beginning', a: 0, b: 0 },
    ...pairs.map(p => ({ name: notchName(p.a), a: p.a.alongMm, b: p.b.alongMm })),
    { name: 'the end', a: a.reachMm, b: b.reachMm },
  ];
  return stops.slice(1).map((stop, i) => {
    const last = stops[i]!;
    const aMm = stop.a - last.a,
      bMm = stop.b - last.b;
    return { from: last.name, to: stop.name, aMm, bMm, easeMm: aMm - bMm };
  });
}

/**
 * Compares the notches of both sides. Ease may lie anywhere between them, so partners agree where the ease sewn up
 * to them lies between none and all that is wanted, within `seamTolerance`, and none is taken back on the way.
 */
export function checkNotches(
  pattern: Pattern,
  seam: Seam,
  a: SeamSide,
  b: SeamSide,
  easeWantedMm: number,
): { readonly stretches: readonly SeamStretch[]; readonly findings: readonly Finding[] } {
  const paired = pairNotches(a, b);
  const stretches = seamStretches(a, b, paired);
  const findings: Finding[] = [];
  // A gap lies in the reach of one side only: what bridges it there is as long, and no ease.
  const wantedMm = easeWantedMm + (a.reachMm - a.lengthMm) - (b.reachMm - b.lengthMm);
  const beyond = (d: number) => beyondEase(d, wantedMm);
  let before = 0;
  for (const { a: p, b: q } of paired.pairs) {
    const here = p.alongMm - q.alongMm;
    const off = beyond(here) - beyond(before);
    // A notch that is as far off as the one before it has moved with it: one finding says it.
    if (beyond(here) !== 0 && Math.abs(off) > seamTolerance)
      findings.push(doNotMeet(seam, p, q, here, beyond(here)));
    else if (beyond(here) === 0 && beyond(before) === 0 && takenBack(here - before, wantedMm))
      findings.push(easeTakenBack(seam, p, q, here - before));
    before = here;
  }
  findings.push(...aloneFindings(pattern, seam, paired.aloneOnA, b, a, wantedMm));
  findings.push(...aloneFindings(pattern, seam, paired.aloneOnB, a, b, -wantedMm));
  findings.push(...checkCrossings(seam, a, b, wantedMm));
  return { stretches, findings };
}

/** The seam eases one way, this stretch the other. */
const takenBack = (ease: number, wanted: number): boolean =>
  Math.abs(wanted) > seamTolerance && Math.abs(ease) > seamTolerance && Math.sign(ease) !== Math.sign(wanted);

const place = ({ run }: LaidNotch) => ({ piece: run.piece, edge: run.edge });
const notchName = (notch: LaidNotch): string => `the ${notch.style} notch of ${notch.label}`;
const mm = (x: number): string => Math.abs(x).toFixed(1);

function doNotMeet(seam: Seam, p: LaidNotch, q: LaidNotch, differenceMm: number, offMm: number): Finding {
  return {
    severity: 'warning',
    code: 'notches-do-not-meet',
    where: place(q),
    message:
      `Seam "${seam.name}": ${notchName(q)} lies ${q.alongMm.toFixed(1)} mm from the seam's beginning, ` +
      `its partner, ${notchName(p)}, ${p.alongMm.toFixed(1)} mm: ${mm(offMm)} mm more than the ease explains.`,
    figures: { aMm: p.alongMm, bMm: q.alongMm, differenceMm, offMm },
    remedy:
      `Move the notch of ${q.label} by ${mm(offMm)} mm ${offMm > 0 ? 'away from' : 'towards'} the seam's beginning, ` +
      'or true both edges up to it.',
  };
}

function easeTakenBack(seam: Seam, p: LaidNotch, q: LaidNotch, easeMm: number): Finding {
  const [longer, shorter] = easeMm > 0 ? [p, q] : [q, p];
  return {
    severity: 'warning',
    code: 'ease-the-wrong-way',
    where: place(longer),
    message:
      `Seam "${seam.name}": just before ${notchName(longer)} that side is ${mm(easeMm)} mm the longer, ` +
      'against the ease of the seam as a whole.',
    figures: { easeMm },
    remedy: `Move that notch back by ${mm(easeMm)} mm, or the notch of ${shorter.label} forward.`,
  };
}

/**
 * A notch with no partner may mark where a seam crosses the other side (the top of a sleeve cap at the shoulder);
 * if no seam crosses near it, it stands alone. A piece drafted for an edge carries its own division marks.
 */
function aloneFindings(
  pattern: Pattern,
  seam: Seam,
  alone: readonly LaidNotch[],
  other: SeamSide,
  own: SeamSide,
  easeWantedMm: number,
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
    const offMm = beyondEase(notch.alongMm - joint, easeWantedMm);
    if (offMm === 0) continue;
    findings.push({
      severity: 'warning',
      code: 'notch-misses-seam',
      where: place(notch),
      message:
        `Seam "${seam.name}": ${notchName(notch)} misses the seam that crosses on the other side ` +
        `by ${mm(offMm)} mm more than the ease explains.`,
      figures: { notchMm: notch.alongMm, crossingMm: joint, offMm },
      remedy: `Move it by ${mm(offMm)} mm ${offMm > 0 ? 'towards' : 'away from'} the seam's beginning.`,
    });
  }
  if (lonely.length > 0) findings.push(standAlone(seam, lonely));
  return findings;
}

const isDrafted = (pattern: Pattern, run: LaidNotch['run']): boolean =>
  pattern.pieces.some(p => p.name === run.piece && p.madeFor !== undefined);

const standAlone = (seam: Seam, lonely: readonly LaidNotch[]): Finding => ({
  severity: 'note',
  code: 'notch-without-partner',
  where: place(lonely[0]!),
  message:
    `Seam "${seam.name}": ` +
    lonely.map(n => `${notchName(n)}, ${n.alongMm.toFixed(1)} mm from the seam's beginning,`).join(' and ') +
    ` ${lonely.length === 1 ? 'has' : 'have'} no partner on the other side.`,
  figures: { count: lonely.length, alongMm: lonely[0]!.alongMm },
  remedy: 'Mark the same distance on the other side, or leave the notch out.',
});
