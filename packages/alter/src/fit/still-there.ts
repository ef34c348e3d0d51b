import type { Pattern } from '@paperhinge/geometry';
import type { Derived } from '../alteration.js';
import { hasEdge } from '../edge-refs.js';

/** The derived pieces whose edges are all still there. */
export const stillThere = (pattern: Pattern, derived: readonly Derived[]): readonly Derived[] =>
  derived.filter(d => d.along.every(ref => hasEdge(pattern, ref)));
