import type { EdgeRef } from '@paperhinge/geometry';

export type JobKind =
  | 'stay'
  | 'dart'
  | 'opening'
  | 'inset'
  | 'turn'
  | 'seam'
  | 'ring'
  | 'band'
  | 'facing'
  | 'hang'
  | 'hem'
  | 'buttonhole'
  | 'button'
  | 'other';

/** Why one job waits for another. */
export interface Constraint {
  readonly job: string;
  readonly because: string;
}

/** One job of the sewing while the order is worked out. */
export interface Job {
  /** `seam side`, `dart front.bust`, `band neckband`, `hem sleeve.hem`. */
  readonly job: string;
  readonly kind: JobKind;
  /** What to do, in one sentence. */
  readonly text: string;
  /** Other names that notes may call it by: `dart bust`, `seam neck`. */
  readonly alsoCalled: readonly string[];
  /** The edges it sews or turns. */
  readonly edges: readonly EdgeRef[];
  readonly after: readonly Constraint[];
}

export const job = (kind: JobKind, name: string, text: string, more: Partial<Job> = {}): Job => ({
  job: name,
  kind,
  text,
  alsoCalled: [],
  edges: [],
  after: [],
  ...more,
});

export const sameEdge = (p: EdgeRef, q: EdgeRef): boolean => p.piece === q.piece && p.edge === q.edge;
export const holdsEdge = (edges: readonly EdgeRef[], edge: EdgeRef): boolean =>
  edges.some(e => sameEdge(e, edge));
export const edgeLabel = ({ piece, edge }: EdgeRef): string => `${piece}.${edge}`;
