import { type EdgeRun, type Pattern, roleOf, type Seam } from '@paperhinge/geometry';
import { lengthInGarment } from '@paperhinge/geometry/measure';
import { runLabel } from '@paperhinge/geometry/pattern';
import { sameEdge } from '../edge-refs.js';
import { asThings, edgeLabel, type Job, job } from './jobs.js';
import type { MadePiece } from './pieces.js';
import { saying } from './sentences.js';

/** A seam whose one side is longer than the other by more than this share is gathered, not eased (common practice, no source). */
const gatheredShare = 0.1;

/** Seams between the pieces of the garment; those of pieces made for an edge belong to that piece's own job. */
export const seamJobs = (pattern: Pattern, made: readonly MadePiece[]): readonly Job[] =>
  pattern.seams
    .filter(({ a, b }) => ![...a, ...b].some(r => made.some(d => d.name === r.piece)))
    .sort((p, q) => Number(isShoulder(pattern, q)) - Number(isShoulder(pattern, p)))
    .flatMap(seam => [...gatherJob(pattern, seam), seamJob(pattern, seam)]);

/** Whether every edge of a seam is a shoulder. */
export const isShoulder = (pattern: Pattern, { a, b }: Seam): boolean =>
  [...a, ...b].every(
    ({ piece, edge }) =>
      pattern.pieces
        .find(p => p.name === piece)
        ?.outline.parts.some(
          part => part.type === 'edge' && part.name === edge && roleOf(part) === 'shoulder',
        ) ?? false,
  );

function seamJob(pattern: Pattern, seam: Seam): Job {
  const { name, a, b } = seam;
  const called = saying('called-seam', { seam: { seam: name } });
  const edges = [...a, ...b].map(({ piece, edge }) => ({ piece, edge }));
  const text = isPair(seam)
    ? saying('job-seam-of-pair', { edge: asThings(a)[0]! })
    : saying('job-seam', { a: asThings(a), b: asThings(b), ...worked(pattern, seam) });
  return job('seam', `seam ${name}`, { text, called }, { edges });
}

/** An edge sewn to its own mirror image. */
const isPair = ({ a, b }: Seam): boolean => a.length === 1 && b.length === 1 && sameEdge(a[0]!, b[0]!);

function worked(pattern: Pattern, seam: Seam) {
  const easeMm = easeOf(pattern, seam);
  if (easeMm === 0) return {};
  return { easeMm, takenUp: isGathered(pattern, seam) ? 'gathered' : (seam.takenUp ?? 'eased') };
}

/** mm by which side a is to be longer over the garment. */
function easeOf(pattern: Pattern, { ease, b }: Seam): number {
  return 'mm' in ease ? ease.mm : (ease.percent / 100) * lengthOf(pattern, b);
}

const lengthOf = (pattern: Pattern, runs: readonly EdgeRun[]): number => {
  const once = runs.filter((r, i) => i === runs.findIndex(o => runLabel(o) === runLabel(r)));
  return once.reduce((sum, r) => sum + lengthInGarment(pattern, r), 0);
};

function isGathered(pattern: Pattern, seam: Seam): boolean {
  if (seam.takenUp !== undefined) return seam.takenUp === 'gathered';
  const shorter = Math.min(lengthOf(pattern, seam.a), lengthOf(pattern, seam.b));
  return Math.abs(easeOf(pattern, seam)) > gatheredShare * shorter;
}

function gatherJob(pattern: Pattern, seam: Seam): readonly Job[] {
  if (!isGathered(pattern, seam)) return [];
  const longer = easeOf(pattern, seam) > 0 ? seam.a : seam.b;
  const fromMm = lengthOf(pattern, longer);
  const toMm = fromMm - Math.abs(easeOf(pattern, seam));
  const edges = asThings(longer);
  return [
    job(
      'gather',
      `gather ${edges.map(e => edgeLabel(e as never)).join(' + ')}`,
      {
        text: saying('job-gather', { edges, fromMm, toMm }),
        called: saying('called-of-edges', { what: 'gathers', edges }),
      },
      { edges: longer },
    ),
  ];
}
