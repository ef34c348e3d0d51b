import type { EdgeRef, Saying, Thing } from '@paperhinge/geometry';
import { distinctEdges } from '../edge-refs.js';

/** Kinds of jobs in the order in which a sewing room lists those that are free. */
export const jobKinds = [
  'stay',
  'fuse',
  'dart',
  'pleat',
  'inset',
  'raw-edge',
  'pocket',
  'layers',
  'opening',
  'gather',
  'seam',
  'turn',
  'ring',
  'band',
  'facing',
  'understitch',
  'turn-out',
  'finish',
  'topstitch',
  'other',
  'hang',
  'hem',
  'elastic',
  'buttonhole',
  'button',
  'closure',
] as const;
export type JobKind = (typeof jobKinds)[number];

/** Why one job waits for another. */
export interface Constraint {
  readonly job: string;
  readonly because: Saying | string;
}

/** One job of the sewing while the order is worked out. */
export interface Job {
  /** `seam side`, `dart front.bust`, `band neckband`, `hem sleeve.hem`: for programs and notes. */
  readonly job: string;
  readonly kind: JobKind;
  /** What to do. */
  readonly text: Saying | string;
  /** What it is called when another job speaks of it. */
  readonly called: Saying;
  /** Other names that notes may call it by: `dart bust`, `seam neck`. */
  readonly alsoCalled: readonly string[];
  /** The edges it sews or turns. */
  readonly edges: readonly EdgeRef[];
  /** The pieces it works on beside those of its edges. */
  readonly pieces: readonly string[];
  /** The seam that it sews or makes ready. */
  readonly seam?: string;
  readonly after: readonly Constraint[];
}

/** What a job is made of beside its kind, name, words and title; all empty where left out. */
export type JobParts = Partial<Pick<Job, 'alsoCalled' | 'edges' | 'pieces' | 'seam' | 'after'>>;

export const job = (
  kind: JobKind,
  name: string,
  { text, called }: Pick<Job, 'text' | 'called'>,
  parts: JobParts = {},
): Job => ({ job: name, kind, text, called, alsoCalled: [], edges: [], pieces: [], after: [], ...parts });

/** For names of jobs only; words are the catalogue's. */
export const edgeLabel = ({ piece, edge }: EdgeRef): string => `${piece}.${edge}`;
export const asThing = ({ piece, edge }: EdgeRef): Thing => ({ piece, edge });
/** Edges as things, each once. */
export const asThings = (edges: readonly EdgeRef[]): readonly Thing[] => distinctEdges(edges).map(asThing);
