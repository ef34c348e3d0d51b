import { type EdgeRef, type Pattern, pieceNamed, pieceRoleOf } from '@paperhinge/geometry';
import { type Rule, shared } from './rule.js';
import { saying } from './sentences.js';

/** A collar lies between the garment and its facing: it is on before the facing covers it. */
export const collarBetween =
  (pattern: Pattern): Rule =>
  (job, other) => {
    const isCollar =
      other.kind === 'seam' && other.edges.some(e => pieceRoleOf(pieceNamed(pattern, e.piece)) === 'collar');
    const covers =
      job.kind === 'facing' || job.edges.some(e => pieceRoleOf(pieceNamed(pattern, e.piece)) === 'facing');
    if (!isCollar || !shared(job, other)) return undefined;
    if (covers) return saying('because-between', {});
    return job.kind === 'band' ? saying('because-covers-collar', {}) : undefined;
  };

/** Upper and under-collar, fall and stand are one collar before it is sewn on. */
export const collarWhole =
  (pattern: Pattern): Rule =>
  (job, other) => {
    if (job.kind !== 'seam' || other.kind !== 'seam') return undefined;
    const isCollar = ({ piece }: EdgeRef) => pieceRoleOf(pieceNamed(pattern, piece)) === 'collar';
    const isOwn = other.edges.every(isCollar) && new Set(other.edges.map(e => e.piece)).size > 1;
    const isOn = job.edges.some(e => isCollar(e) && other.edges.some(o => o.piece === e.piece));
    return isOwn && isOn && !job.edges.every(isCollar) ? saying('because-collar-whole', {}) : undefined;
  };
