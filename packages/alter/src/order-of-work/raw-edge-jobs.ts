import {
  type Finish,
  type Pattern,
  type PieceRole,
  pathLength,
  pieceNamed,
  pieceRoleOf,
  type Seam,
} from '@paperhinge/geometry';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { copiesInGarment, edgeParts } from '@paperhinge/geometry/pattern';
import { holdsEdge } from '../edge-refs.js';
import { edgesOf, type FinishedEdge } from './finish-jobs.js';
import { asThings, edgeLabel, type Job, job } from './jobs.js';
import { isUnder, type MadePiece } from './pieces.js';
import { type Rule, sewsAn, shared } from './rule.js';
import { isGathered } from './seam-jobs.js';
import { saying } from './sentences.js';

/**
 * The raw edges of seams that are finished, as a bound side is: those of one seam finished alike are one job, while
 * the piece lies flat, or once the seam is sewn where others cross it or its edge is gathered into it (common
 * practice, no source).
 */
export function rawEdgeJobs(pattern: Pattern, made: readonly MadePiece[]): readonly Job[] {
  const covered = made.filter(d => !isUnder(d.kind)).flatMap(d => d.along);
  const alike = new Map<string, { seams: readonly Seam[]; edges: FinishedEdge[] }>();
  for (const one of edgesOf(pattern)) {
    const { finish, kind } = one.edge;
    if (finish === undefined || kind !== 'seam' || holdsEdge(covered, one.ref)) continue;
    const seams = pattern.seams.filter(({ a, b }) => holdsEdge([...a, ...b], one.ref));
    if (seams.length === 0 || isDoneBySeam(pattern, one, seams)) continue;
    const key = JSON.stringify([finish, seams.map(s => s.name)]);
    alike.set(key, { seams, edges: [...(alike.get(key)?.edges ?? []), one] });
  }
  return [...alike.values()].map(({ seams, edges }) => rawEdgeJob(pattern, seams, edges));
}

/** What is sewn to an edge and finishes it, by the role of its piece. */
const finishers: Readonly<Partial<Record<Finish, readonly PieceRole[]>>> = {
  bound: ['binding', 'strip', 'band'],
  banded: ['band', 'cuff', 'collar'],
  faced: ['facing', 'lining'],
};

/** Whether sewing the edge finishes it: a faced neck to its facing. */
const isDoneBySeam = (pattern: Pattern, { ref, edge }: FinishedEdge, seams: readonly Seam[]): boolean =>
  seams.some(({ a, b }) =>
    (holdsEdge(a, ref) ? b : a).some(run =>
      (finishers[edge.finish!] ?? []).some(role => role === pieceRoleOf(pieceNamed(pattern, run.piece))),
    ),
  );

function rawEdgeJob(pattern: Pattern, seams: readonly Seam[], group: readonly FinishedEdge[]): Job {
  const refs = group.map(one => one.ref);
  const edges = asThings(refs);
  const lengthMm = group.reduce((sum, one) => sum + inGarment(pattern, one), 0);
  const text = saying('job-raw-edge', { edges, finish: group[0]!.edge.finish!, lengthMm });
  const called = saying('called-of-edges', { what: 'raw edge', edges });
  const isFlat = seams.length === 1 && !isGathered(pattern, seams[0]!) && !isCrossed(pattern, seams[0]!);
  const because = saying('because-raw-edge-whole', {});
  return job(
    'raw-edge',
    `finish ${refs.map(edgeLabel).join(' + ')}`,
    { text, called },
    { edges: refs, ...(isFlat ? {} : { after: seams.map(s => ({ job: `seam ${s.name}`, because })) }) },
  );
}

/** mm of the edge in the whole garment, along its stitching line. */
function inGarment(pattern: Pattern, { ref }: FinishedEdge): number {
  const piece = pieceNamed(pattern, ref.piece);
  const parts = edgeParts(piece).filter(part => part.name === ref.edge);
  return copiesInGarment(piece) * parts.reduce((sum, part) => sum + pathLength(part.path), 0);
}

/** Whether another seam ends at both sides of it, so that its edge is whole only once that is sewn. */
const isCrossed = (pattern: Pattern, seam: Seam): boolean =>
  pattern.seams.some(
    other =>
      other !== seam &&
      neighboursAtEnds(pattern, other).some(({ first, second }) =>
        [seam.a, seam.b].some(side => holdsEdge(side, first) && holdsEdge(side, second)),
      ),
  );

/** What is finished flat is finished before anything is sewn there. */
export const rawEdgeFirst: Rule = (job, other) =>
  other.kind === 'raw-edge' &&
  other.after.length === 0 &&
  sewsAn(job, 'seam', 'opening') &&
  shared(job, other) !== undefined
    ? saying('because-raw-edge-flat', {})
    : undefined;
