import { type EdgeRef, edgeNames, edgePath, type Pattern, pathLength } from '@paperhinge/geometry';

/** mm of stitching line; undefined where there is no such edge. */
export function lengthOfEdge({ pieces }: Pattern, { piece: name, edge }: EdgeRef): number | undefined {
  const piece = pieces.find(p => p.name === name);
  return piece && edgeNames(piece).includes(edge) ? pathLength(edgePath(piece, edge)) : undefined;
}
