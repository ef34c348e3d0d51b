import { type EdgeRef, edgeNames, type Pattern } from '@paperhinge/geometry';
import type { Derived } from '../alteration.js';

/** Whether a pattern has an edge: later steps may have removed its piece or cut it away. */
export const hasEdge = (pattern: Pattern, { piece, edge }: EdgeRef): boolean => {
  const owner = pattern.pieces.find(p => p.name === piece);
  return owner !== undefined && edgeNames(owner).includes(edge);
};

/** The derived pieces whose edges are all still there. */
export const stillThere = (pattern: Pattern, derived: readonly Derived[]): readonly Derived[] =>
  derived.filter(d => d.along.every(ref => hasEdge(pattern, ref)));
