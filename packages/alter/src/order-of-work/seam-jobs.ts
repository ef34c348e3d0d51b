import {
  type EdgeRef,
  type Pattern,
  pieceNamed,
  pieceRoleOf,
  roleOf,
  type Seam,
  walkSeam,
} from '@paperhinge/geometry';
import { distinctEdges, sameEdge } from '../edge-refs.js';
import { facingSeams } from './drawn-facings.js';
import { topstitchedIn } from './finish-jobs.js';
import { asThings, edgeLabel, type Job, job } from './jobs.js';
import { isWithin, type MadePiece } from './pieces.js';
import { seamLengths } from './seam-lengths.js';
import { belowZip, leftOpenMm, sewnInPart } from './seam-parts.js';
import { saying } from './sentences.js';

/** A seam whose one side is longer than the other by more than this share is gathered, not eased (common practice, no source). */
const gatheredShare = 0.1;

/**
 * Seams between the pieces of the garment; those of pieces made for an edge belong to that piece's own job, but for those
 * that join facings to one another.
 */
export const seamJobs = (
  pattern: Pattern,
  made: readonly MadePiece[],
  { turnsOut }: { readonly turnsOut: boolean },
): readonly Job[] =>
  turnedOnce(
    pattern.seams
      .filter(({ a, b }) => {
        const theirs = [...a, ...b].map(r => made.find(d => d.name === r.piece));
        return theirs.every(d => d?.kind === 'facing') || theirs.every(d => d === undefined);
      })
      .sort((p, q) => Number(isShoulder(pattern, q)) - Number(isShoulder(pattern, p)))
      .flatMap(seam => [
        ...gatherJob(pattern, seam),
        seamJob(pattern, seam),
        ...understitchJob(pattern, seam, turnsOut),
      ]),
  );

/** A facing that several seams sew on, to neck and armhole, is turned once, after the last of them. */
const turnedOnce = (jobs: readonly Job[]): readonly Job[] =>
  jobs
    .filter(
      (job, i) => job.kind !== 'understitch' || i === jobs.findLastIndex(other => other.job === job.job),
    )
    .map(job =>
      job.kind === 'understitch'
        ? { ...job, after: jobs.filter(other => other.job === job.job).flatMap(other => other.after) }
        : job,
    );

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
  const parts = isPair(seam)
    ? sewnInPart(pattern, belowZip(pattern, a), { byWhatIsLeft: true })
    : sewnInPart(pattern, belowZip(pattern, [...a, ...b]));
  const openMm = leftOpenMm(pattern, [...a, ...b]);
  const part = { ...(parts.length > 0 ? { parts } : {}), ...(openMm > 0 ? { openMm } : {}) };
  const topstitched = topstitchedIn(pattern, distinctEdges(edges));
  const text = isPair(seam)
    ? saying('job-seam-of-pair', { edge: asThings(a)[0]!, ...part })
    : isOfCopies(seam)
      ? saying('job-seam-of-copies', { piece: { piece: a[0]!.piece }, edges: asThings(a), ...part })
      : saying('job-seam', {
          a: asThings(a),
          b: asThings(b),
          ...worked(pattern, seam),
          ...part,
          ...(topstitched.length > 0 ? { topstitched } : {}),
          ...(facingSeams(pattern).includes(seam) ? { facing: true } : {}),
        });
  return job('seam', `seam ${name}`, { text, called }, { edges, seam: name });
}

/** An edge sewn to its own mirror image. */
const isPair = ({ a, b }: Seam): boolean => a.length === 1 && b.length === 1 && sameEdge(a[0]!, b[0]!);

/** Several edges of one piece, sewn to the same of another that is cut of it: the bag of a pocket. */
const isOfCopies = ({ a, b }: Seam): boolean =>
  a.length > 1 &&
  a.length === b.length &&
  a.every((run, i) => sameEdge(run, b[i]!) && run.piece === a[0]!.piece);

function worked(pattern: Pattern, seam: Seam) {
  const wantedMm = wantedOf(pattern, seam);
  if (wantedMm === 0) return {};
  const { fromMm, toMm, times } = seamLengths(pattern, seam, wantedMm > 0 ? 'a' : 'b');
  const takenUp = isGathered(pattern, seam) ? 'gathered' : (seam.takenUp ?? 'eased');
  return { easeMm: fromMm - toMm, takenUp, ...(times > 1 ? { times } : {}) };
}

/** mm by which side a is to be longer, as the seam is counted. */
const wantedOf = (pattern: Pattern, seam: Seam): number => walkSeam(pattern, seam).easeWantedMm;

/** Whether one side of a seam is gathered into the other. */
export function isGathered(pattern: Pattern, seam: Seam): boolean {
  if (seam.takenUp !== undefined) return seam.takenUp === 'gathered';
  const { aMm, bMm, easeWantedMm } = walkSeam(pattern, seam);
  return Math.abs(easeWantedMm) > gatheredShare * Math.min(aMm, bMm);
}

function gatherJob(pattern: Pattern, seam: Seam): readonly Job[] {
  if (!isGathered(pattern, seam)) return [];
  const side = wantedOf(pattern, seam) > 0 ? 'a' : 'b';
  const longer = seam[side];
  const { fromMm, toMm, times } = seamLengths(pattern, seam, side);
  const edges = asThings(longer);
  return [
    job(
      'gather',
      `gather ${edges.map(e => edgeLabel(e as never)).join(' + ')}`,
      {
        text: saying('job-gather', { edges, fromMm, toMm, ...(times > 1 ? { times } : {}) }),
        called: saying('called-of-edges', { what: 'gathers', edges }),
      },
      { edges: longer, seam: seam.name },
    ),
  ];
}

/** A drawn facing is turned and understitched once it is sewn on; where a lining is turned out, that turns it too. */
function understitchJob(pattern: Pattern, seam: Seam, turnsOut: boolean): readonly Job[] {
  if (!facingSeams(pattern).includes(seam)) return [];
  const { name, a, b } = seam;
  const isFacing = ({ piece }: EdgeRef): boolean => pieceRoleOf(pieceNamed(pattern, piece)) === 'facing';
  const pieces = [...new Set((a.every(isFacing) ? a : b).map(r => r.piece))];
  const turned = pieces.filter(piece => !(turnsOut && isWithin(pattern, pieceNamed(pattern, piece))));
  if (turned.length === 0) return [];
  const facing = turned.map(piece => ({ piece }));
  return [
    job(
      'understitch',
      `understitch ${turned.join(' + ')}`,
      {
        text: saying('job-understitch', { pieces: facing }),
        called: saying('called-of-piece', { what: 'understitching', piece: facing[0]! }),
      },
      {
        pieces: turned,
        seam: name,
        after: [{ job: `seam ${name}`, because: saying('because-sewn-before-turned', {}) }],
      },
    ),
  ];
}
