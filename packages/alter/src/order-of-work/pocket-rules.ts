import { type EdgeRef, type EdgeRole, type Pattern, pieceNamed, pieceRoleOf } from '@paperhinge/geometry';
import { hipPieces } from '@paperhinge/geometry/measure';
import type { Job } from './jobs.js';
import { isSewnOn } from './pieces.js';
import { piecesOf, type Rule, roleAt, sewsAn, sharesPiece } from './rule.js';
import { saying } from './sentences.js';

/** Seams that close a piece round the body or a limb. */
const closingRoles: ReadonlySet<EdgeRole | undefined> = new Set<EdgeRole>([
  'side',
  'outseam',
  'inseam',
  'underarm',
]);

/** Pockets and plackets, sewn on or sewn in, before the seams that close the piece or take in their side pieces. */
export const pocketFlat =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (takesHipPiece(pattern, job))
      return other.kind === 'seam' &&
        other.edges.some(isOfPocket(pattern)) &&
        !takesHipPiece(pattern, other) &&
        sharesPiece(job, other)
        ? saying('because-pocket-flat', {})
        : undefined;
    const isPocket = (name: string) =>
      ['pocket', 'placket'].includes(pieceRoleOf(pieceNamed(pattern, name)) ?? '');
    const isCloser = job.kind === 'seam' && job.edges.every(e => closingRoles.has(roleAt(pattern, e)));
    if (!isCloser || job.edges.some(e => isPocket(e.piece))) return undefined;
    const isSewnIn = other.kind === 'seam' && other.edges.some(e => isPocket(e.piece));
    // Where a patch pocket goes may not be marked: then it goes anywhere but onto what is sewn on later.
    const isAnywhere = other.kind === 'pocket' && other.pieces.length === 1;
    const waits = isAnywhere
      ? job.edges.some(e => !isSewnOn(pieceNamed(pattern, e.piece)))
      : (other.kind === 'pocket' || isSewnIn) && sharesPiece(job, other);
    return waits ? saying('because-pocket-flat', {}) : undefined;
  };

/** A pocket is sewn to the opening it hangs from, and turned, before it is closed behind it. */
export const pocketMouthFirst =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (job.kind !== 'seam' || other.kind !== 'seam' || job === other) return undefined;
    const pockets = other.edges.filter(isOfPocket(pattern));
    const isMouth = (j: Job) =>
      j.edges.some(e => roleAt(pattern, e) === 'opening') ||
      (closesBag(pattern, job) && hangsBag(pattern, j));
    const isIts = job.edges.some(e => pockets.some(p => p.piece === e.piece));
    return isIts && isMouth(other) && !isMouth(job) ? saying('because-mouth-first', {}) : undefined;
  };

/** Whether a seam takes in the side piece of a slanting pocket beside the garment's other pieces. */
const takesHipPiece = (pattern: Pattern, { kind, edges }: Job): boolean =>
  kind === 'seam' && edges.some(e => hipPieces(pattern).has(e.piece)) && !edges.every(isOfPocket(pattern));

const isOfPocket =
  (pattern: Pattern) =>
  ({ piece }: EdgeRef): boolean =>
    pieceRoleOf(pieceNamed(pattern, piece)) === 'pocket';
/** Whether a seam sews a pocket's bag to itself, or to the piece it hangs from. */
export const closesBag = (pattern: Pattern, { edges }: Job): boolean =>
  edges.length > 0 && edges.every(isOfPocket(pattern));
export const hangsBag = (pattern: Pattern, job: Job): boolean =>
  job.edges.some(isOfPocket(pattern)) &&
  !job.edges.every(isOfPocket(pattern)) &&
  !takesHipPiece(pattern, job);

/** A pocket's mouth is finished before the pocket is sewn on. */
export const pocketMouthFinished =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (other.kind !== 'finish' || !sewsAn(job, 'seam', 'pocket')) return undefined;
    const pockets = other.edges.filter(e => pieceRoleOf(pieceNamed(pattern, e.piece)) === 'pocket');
    return pockets.some(e => piecesOf(job).includes(e.piece))
      ? saying('because-pocket-mouth', {})
      : undefined;
  };
