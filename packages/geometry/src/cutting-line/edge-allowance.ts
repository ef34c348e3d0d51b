import type { Edge } from '../pattern/types.js';

/** mm outside the stitching line; fold and raw edges have none, whatever is written on them. */
export const edgeAllowance = (edge: Edge): number =>
  edge.kind === 'fold' || edge.kind === 'raw' ? 0 : edge.allowance;
