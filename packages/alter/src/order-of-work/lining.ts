import {
  type EdgeRef,
  type EdgeRole,
  edgeNamed,
  edgePath,
  type Finding,
  type Pattern,
  pathLength,
  pieceNamed,
  roleOf,
  type Seam,
} from '@paperhinge/geometry';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { holdsEdge } from '../edge-refs.js';
import { asThing, edgeLabel, type Job, job } from './jobs.js';
import { isLining, isWithin } from './pieces.js';
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
  /** What a lining that is sewn in all round leaves open in its own seams, to be closed by hand at the end. */
  readonly gaps: readonly Gap[];
  readonly findings: readonly Finding[];
}

/** A part of a lining's seam that stays open, in mm. */
export interface Gap {
  readonly edge: EdgeRef;
  readonly gapMm: number;
}

/**
 * A lining sewn in at neck and armholes traps itself once shoulders and sides are closed: the sides are left open
 * until it has been turned through the shoulders. One that is sewn in all round, hem included, needs a gap in a seam
 * of its own (trade-notes §10; common practice, no source).
 */
export function liningOf(pattern: Pattern): Lining | undefined {
  const lines = (side: Seam['a']) => side.every(r => isWithin(pattern, pieceNamed(pattern, r.piece)));
  const sewingIn = pattern.seams.filter(({ a, b }) => lines(a) !== lines(b));
  if (sewingIn.length < 2) return undefined;
  const isSleeveless = (['neck', 'armhole'] as const).every(role =>
    sewingIn.some(s => hasRole(pattern, s, role)),
  );
  const leftOpen = isSleeveless
    ? pattern.seams.filter(s => !sewingIn.includes(s) && leadsFromArmhole(pattern, s, sewingIn))
    : [];
  const all = isSewnInAllRound(pattern, sewingIn);
  const gaps = all ? gapsIn(pattern) : [];
  const shut = all && leftOpen.length === 0 && gaps.length === 0;
  return { sewingIn, leftOpen, gaps, findings: shut ? leave(pattern, lines) : [] };
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

/** Seams of the lining that are open in part leave a way through: each once, what both its sides speak of is one gap. */
function gapsIn(pattern: Pattern): readonly Gap[] {
  return pattern.seams.flatMap(({ a, b }): readonly Gap[] => {
    const runs = [...a, ...b];
    if (!runs.every(r => isLining(pattern, pieceNamed(pattern, r.piece)))) return [];
    const gaps = runs.map(({ piece, edge, part }) => {
      const whole = pieceNamed(pattern, piece);
      const unsewn = part ? pathLength(edgePath(whole, edge)) - (part.to - part.from) : 0;
      return { edge: { piece, edge }, gapMm: Math.max(edgeNamed(whole, edge).opening ?? 0, unsewn) };
    });
    const widest = gaps.reduce((most, gap) => (gap.gapMm > most.gapMm ? gap : most));
    return widest.gapMm > 0 ? [widest] : [];
  });
}

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

/** Turning it right side out once all is sewn in, through what was left open, and closing that by hand at the end. */
export function turnOutJobs(pattern: Pattern, { sewingIn, leftOpen, gaps }: Lining): readonly Job[] {
  const [gap] = gaps;
  if (leftOpen.length === 0 && !gap) return [];
  const because = saying('because-sewn-before-turned', {});
  const turn = job(
    'turn-out',
    'turn lining',
    {
      text: leftOpen.length > 0 ? throughSides(pattern, sewingIn) : throughGap(gap!),
      called: saying('called-plainly', { what: 'turning' }),
    },
    { after: sewingIn.map(s => ({ job: `seam ${s.name}`, because })) },
  );
  return [turn, ...gaps.map(g => closeJob(g, turn, leftOpen))];
}

function throughSides(pattern: Pattern, sewingIn: readonly Seam[]): Job['text'] {
  const shoulder = pattern.seams.find(s => isShoulder(pattern, s));
  return saying('job-turn-out', { through: { seam: (shoulder ?? sewingIn[0]!).name } });
}

const throughGap = ({ edge, gapMm }: Gap): Job['text'] =>
  saying('job-turn-through-gap', { edge: asThing(edge), gapMm });

function closeJob({ edge, gapMm }: Gap, turn: Job, leftOpen: readonly Seam[]): Job {
  const because = saying('because-gap-last', {});
  return job(
    'other',
    `close ${edgeLabel(edge)}`,
    {
      text: saying('job-close-gap', { edge: asThing(edge), gapMm }),
      called: saying('called-of-edges', { what: 'gap', edges: [asThing(edge)] }),
    },
    { after: [turn.job, ...leftOpen.map(s => `seam ${s.name}`)].map(name => ({ job: name, because })) },
  );
}
