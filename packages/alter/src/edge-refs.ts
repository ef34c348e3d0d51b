import { type EdgeRef, type EdgeRun, edgeNames, type Pattern } from '@paperhinge/geometry';
import { abs } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';

export const sameEdge = (p: EdgeRef, q: EdgeRef): boolean => p.piece === q.piece && p.edge === q.edge;

/** An edge of a piece by its two names alone. */
export const edgeOf = ({ piece, edge }: EdgeRef): EdgeRef => ({ piece, edge });

export const holdsEdge = (edges: readonly EdgeRef[], edge: EdgeRef): boolean =>
  edges.some(e => sameEdge(e, edge));

/** Of those that are the same the first. */
export const eachOnce = <T>(all: readonly T[], same: (one: T, other: T) => boolean): readonly T[] =>
  all.filter((one, i) => all.findIndex(other => same(other, one)) === i);

/** An edge named twice is one edge. */
export const distinctEdges = <Ref extends EdgeRef>(edges: readonly Ref[]): readonly Ref[] =>
  eachOnce(edges, sameEdge);

/** Whether some seam of the pattern takes an edge. */
export const isSewn = ({ seams }: Pattern, edge: EdgeRef): boolean =>
  seams.some(({ a, b }) => holdsEdge(a, edge) || holdsEdge(b, edge));

/** Whether a pattern has an edge: later steps may have removed its piece or cut it away. */
export const hasEdge = (pattern: Pattern, { piece, edge }: EdgeRef): boolean => {
  const owner = pattern.pieces.find(p => p.name === piece);
  return owner !== undefined && edgeNames(owner).includes(edge);
};

/** Runs that sew the same part of the same edge: left and right, listed apart. */
export const sameRun = (one: EdgeRun, other: EdgeRun): boolean =>
  sameEdge(one, other) && abs((one.part?.from ?? 0) - (other.part?.from ?? 0)) <= tolerances.joiningGap;

/** Runs, each part of an edge once. */
export const distinctRuns = (runs: readonly EdgeRun[]): readonly EdgeRun[] => eachOnce(runs, sameRun);
