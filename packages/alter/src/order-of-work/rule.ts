import {
  type EdgeRef,
  type EdgeRole,
  edgeNamed,
  type Pattern,
  pieceNamed,
  roleOf,
  type Saying,
} from '@paperhinge/geometry';
import { holdsEdge } from '../edge-refs.js';
import type { Job, JobKind } from './jobs.js';

/** Why `job` must wait for `other`; undefined where it need not. */
export type Rule = (job: Job, other: Job) => Saying | undefined;

/** Whether a job is of one of these kinds. */
export const sewsAn = (job: Job, ...kinds: readonly JobKind[]): boolean => kinds.includes(job.kind);
/** An edge that both jobs sew. */
export const shared = (job: Job, other: Job) => job.edges.find(e => holdsEdge(other.edges, e));
/** The pieces a job is about, and those whose edges it sews. */
export const piecesOf = (job: Job): readonly string[] => [...job.pieces, ...job.edges.map(e => e.piece)];
export const sharesPiece = (job: Job, other: Job): boolean =>
  piecesOf(job).some(p => piecesOf(other).includes(p));

/** What an edge is for, given or guessed. */
export const roleAt = (pattern: Pattern, { piece, edge }: EdgeRef): EdgeRole | undefined =>
  roleOf(edgeNamed(pieceNamed(pattern, piece), edge));
