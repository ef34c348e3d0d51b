import { type Pattern, pieceNamed } from '@paperhinge/geometry';
import { isTie } from '@paperhinge/geometry/measure';
import type { Job } from './jobs.js';
import { type Rule, sewsAn, shared } from './rule.js';
import { saying } from './sentences.js';

/** A strap or tie whose end is sewn to an edge is on before whatever else is sewn along that edge and catches it in. */
export const tieCaughtIn =
  (pattern: Pattern): Rule =>
  (job, other) => {
    const tieOf = ({ kind, edges }: Job) =>
      kind === 'seam' ? edges.find(({ piece }) => isTie(pattern, pieceNamed(pattern, piece))) : undefined;
    const tie = tieOf(other);
    if (!tie || !sewsAn(job, 'seam', 'facing', 'band', 'finish') || tieOf(job)) return undefined;
    return shared(job, other) ? saying('because-caught-in', { piece: { piece: tie.piece } }) : undefined;
  };
