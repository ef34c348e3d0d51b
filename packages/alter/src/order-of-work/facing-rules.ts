import { type EdgeRef, edgeNamed, type Pattern, pieceNamed, pieceRoleOf, roleOf } from '@paperhinge/geometry';
import { neighboursAtEnds } from '@paperhinge/geometry/measure';
import { edgeParts } from '@paperhinge/geometry/pattern';
import { holdsEdge } from '../edge-refs.js';
import { facingSeams } from './drawn-facings.js';
import type { Job } from './jobs.js';
import { type Rule, sharesPiece } from './rule.js';
import { saying } from './sentences.js';

/**
 * Facings are joined to one another before they are sewn on; but one that faces neck and armhole at once could not be
 * turned any more with its sides closed.
 */
export const facingsJoined =
  (pattern: Pattern): Rule =>
  (job, other) => {
    const isFacing = ({ piece }: EdgeRef) => pieceRoleOf(pieceNamed(pattern, piece)) === 'facing';
    const isJoint = (one: Job) => one.kind === 'seam' && one.edges.length > 0 && one.edges.every(isFacing);
    const sewsOn = (one: Job) =>
      one.kind === 'facing' ||
      (one.kind === 'seam' && facingSeams(pattern).some(seam => seam.name === one.seam));
    const closesSides = (one: Job) =>
      one.edges.every(
        ({ piece, edge }) =>
          roleOf(edgeNamed(pieceNamed(pattern, piece), edge)) === 'side' && isCombined(pattern, piece),
      );
    if (sewsOn(job) && isJoint(other) && sharesPiece(job, other) && !closesSides(other))
      return saying('because-facings-joined', {});
    return sewsOn(other) && isJoint(job) && sharesPiece(job, other) && closesSides(job)
      ? saying('because-facing-turned', {})
      : undefined;
  };

/** A faced edge that ends at a band, as the sides of a bib do, is turned before the band is sewn over its end. */
export const facedBeforeBand =
  (pattern: Pattern): Rule =>
  (job, other) => {
    const isBand = ({ piece }: EdgeRef) => pieceRoleOf(pieceNamed(pattern, piece)) === 'band';
    const facing = facingSeams(pattern).find(
      seam => seam.name === other.seam && (other.kind === 'seam' || other.kind === 'understitch'),
    );
    if (!facing || job.kind !== 'seam' || !job.edges.some(isBand) || job.seam === facing.name)
      return undefined;
    const ends = neighboursAtEnds(pattern, facing).flatMap(({ first, second }) => [first, second]);
    return job.edges.some(edge => !isBand(edge) && holdsEdge(ends, edge))
      ? saying('because-faced-first', {})
      : undefined;
  };

const isCombined = (pattern: Pattern, piece: string): boolean => {
  const roles = edgeParts(pieceNamed(pattern, piece)).map(roleOf);
  return roles.includes('neck') && roles.includes('armhole');
};
