import {
  type EdgeRole,
  edgeNamed,
  type Finding,
  type Pattern,
  pieceNamed,
  roleOf,
  type Seam,
} from '@paperhinge/geometry';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { holdsEdge } from '../edge-refs.js';
import { type Job, job } from './jobs.js';
import { isLining } from './pieces.js';
import { isShoulder } from './seam-jobs.js';
import { saying } from './sentences.js';
import { finding } from './tellings.js';

/** mm: what a hand and a garment pass through (common practice, no source). */
const turningGap = 150;

/** How a lining that is sewn in at several edges is turned right side out. */
export interface Lining {
  /** Seams that sew it to the garment. */
  readonly sewingIn: readonly Seam[];
  /** Seams of the garment and of the lining that stay open until it has been turned. */
  readonly leftOpen: readonly Seam[];
  readonly findings: readonly Finding[];
}

/**
 * A lining sewn in at neck and armholes traps itself once shoulders and sides are closed: the sides are left open
 * until it has been turned through the shoulders. One that is sewn in all round, hem included, needs a gap in a seam
 * of its own (trade-notes §10; common practice, no source).
 */
export function liningOf(pattern: Pattern): Lining | undefined {
  const lines = (side: Seam['a']) => side.every(r => isLining(pattern, pieceNamed(pattern, r.piece)));
  const sewingIn = pattern.seams.filter(({ a, b }) => lines(a) !== lines(b));
  if (sewingIn.length < 2) return undefined;
  const isSleeveless = (['neck', 'armhole'] as const).every(role =>
    sewingIn.some(s => hasRole(pattern, s, role)),
  );
  const leftOpen = isSleeveless
    ? pattern.seams.filter(s => !sewingIn.includes(s) && leadsFromArmhole(pattern, s, sewingIn))
    : [];
  const shut = leftOpen.length === 0 && !hasGap(pattern) && isSewnInAllRound(pattern, sewingIn);
  return { sewingIn, leftOpen, findings: shut ? leave(pattern, lines) : [] };
}

/** Whether a seam runs from a sewn-in armhole, and is no shoulder: a side. */
function leadsFromArmhole(pattern: Pattern, seam: Seam, sewingIn: readonly Seam[]): boolean {
  const armholes = sewingIn.filter(s => hasRole(pattern, s, 'armhole'));
  return (
    !isShoulder(pattern, seam) &&
    neighboursAtEnds(pattern, seam).some(({ first, second }) =>
      armholes.some(({ a, b }) => holdsEdge([...a, ...b], first) && holdsEdge([...a, ...b], second)),
    )
  );
}

const hasRole = (pattern: Pattern, { a, b }: Seam, role: EdgeRole): boolean =>
  [...a, ...b].some(r => roleOf(edgeNamed(pieceNamed(pattern, r.piece), r.edge)) === role);

/** A seam of the lining that is open in part leaves a way through. */
const hasGap = (pattern: Pattern): boolean =>
  pattern.pieces.filter(p => isLining(pattern, p)).some(p => edgeParts(p).some(e => (e.opening ?? 0) > 0)) ||
  pattern.seams.some(({ a, b }) =>
    [...a, ...b].some(r => r.part !== undefined && isLining(pattern, pieceNamed(pattern, r.piece))),
  );

/** No free edge is left to turn it through: every hem and opening edge of the lining is sewn. */
const isSewnInAllRound = (pattern: Pattern, sewingIn: readonly Seam[]): boolean => {
  const sewn = pattern.seams.flatMap(({ a, b }) => [...a, ...b]);
  const linings = pattern.pieces.filter(p => isLining(pattern, p));
  return (
    sewingIn.length > 1 &&
    linings.every(p =>
      edgeParts(p).every(e => e.kind === 'fold' || holdsEdge(sewn, { piece: p.name, edge: e.name })),
    )
  );
};

function leave(pattern: Pattern, lines: (side: Seam['a']) => boolean): readonly Finding[] {
  const own = pattern.seams.filter(({ a, b }) => lines(a) && lines(b));
  const seam = own.find(s => !isShoulder(pattern, s)) ?? own[0];
  return seam
    ? [
        finding(
          'fault',
          'lining-cannot-be-turned',
          { seam: seam.name },
          { seam: { seam: seam.name }, gapMm: turningGap },
        ),
      ]
    : [];
}

/** Turning it right side out, once all is sewn in and before the sides are closed. */
export function turnOutJob(pattern: Pattern, { sewingIn, leftOpen }: Lining): readonly Job[] {
  if (leftOpen.length === 0) return [];
  const shoulder = pattern.seams.find(s => isShoulder(pattern, s));
  const through = { seam: (shoulder ?? sewingIn[0]!).name };
  const because = saying('because-sewn-before-turned', {});
  return [
    job(
      'turn-out',
      'turn lining',
      { text: saying('job-turn-out', { through }), called: saying('called-plainly', { what: 'turning' }) },
      { after: sewingIn.map(s => ({ job: `seam ${s.name}`, because })) },
    ),
  ];
}
