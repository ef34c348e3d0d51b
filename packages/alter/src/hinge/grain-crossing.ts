import { edgePath, type Piece, type Point, pathOf } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { boundsOfPath, intersectPaths } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { add, distance, scale } from '@paperhinge/geometry/plane';
import { grainDirection } from './grain-direction.js';

/**
 * Where the line along the grain through a point first meets an edge, in mm from the edge's start; undefined where
 * the piece has no grain line or the edge lies to the side.
 */
export function grainCrossing(piece: Piece, from: Point, edge: string): number | undefined {
  const grain = grainDirection(piece);
  if (!grain) return undefined;
  const { min, max } = boundsOfPath(outlinePath(piece.outline));
  const reach = scale(grain, distance(min, max) + distance(min, from));
  const path = edgePath(piece, edge);
  return [reach, scale(reach, -1)]
    .flatMap(way => intersectPaths(pathOf([from, add(from, way)]), path))
    .filter(m => m.alongA > tolerances.coincidenceTolerance)
    .sort((a, b) => a.alongA - b.alongA)[0]?.alongB;
}
