import type { Dart, Pleat } from '../pattern/types.js';
import type { Run } from './run.js';

/** What a cutting line is made round: the outline as runs and folded darts and pleats, clockwise. */
export type Node = Run | FoldedPart;

/** A dart or pleat over whose mouth the line takes the shape of its folded cloth. */
export type FoldedPart =
  | { readonly part: Dart; readonly pressed: 'start' | 'end' | 'open' }
  | { readonly part: Pleat };

export const isRun = (node: Node): node is Run => 'parallel' in node;
