import { edgePath, type Path, pathLength } from '@paperhinge/geometry';
import {
  nearestOnPath,
  pathEnd,
  pathStart,
  pointAlong,
  reversedPath,
  subpath,
  transformedPath,
} from '@paperhinge/geometry/paths';
import { type Affine, carrying, compose, distance, lerp, mirror, subtract } from '@paperhinge/geometry/plane';
import type { TwoEdges } from './two-edges.js';

/** The other piece laid seam on seam. */
export interface LaidOn {
  /** What carries it there; it turns the piece over where both edges are sewn in one direction of their outlines. */
  readonly motion: Affine;
  /** mm the two lines lie apart at most. */
  readonly apartMm: number;
}

/**
 * Lays the second piece of a seam on the first: end on end, or where they are not equally long, middle on middle.
 * @param share how much of the seam, from its beginning, is laid together; the rest may lie apart
 */
export function laidOn({ a, b }: TwoEdges, share = 1): LaidOn {
  const sewn = ({ piece, run }: TwoEdges['a']): Path => {
    const path = edgePath(piece, run.edge);
    const own = run.reversed ? reversedPath(path) : path;
    return share === 1 ? own : subpath(own, 0, share * pathLength(own));
  };
  const first = sewn(a),
    second = sewn(b);
  const chord = (path: Path) => subtract(pathEnd(path), pathStart(path));
  const middle = (path: Path) => lerp(pathStart(path), pathEnd(path), 0.5);
  const carried = carrying(middle(second), chord(second), middle(first), chord(first));
  // Outlines run clockwise: edge beside edge they run against one another, unless a piece is turned over.
  const over = a.run.reversed === b.run.reversed;
  const motion = over ? compose(carried, mirror(middle(first), chord(first))) : carried;
  return { motion, apartMm: farthest(first, transformedPath(second, motion)) };
}

const samples = 64;

/** The greatest distance of a point of either line from the other: sampled, so that a bulge between is not missed. */
function farthest(first: Path, second: Path): number {
  const from = (one: Path, other: Path): number => {
    const length = pathLength(one);
    return Math.max(
      ...Array.from(
        { length: samples + 1 },
        (_, i) => nearestOnPath(other, pointAlong(one, (length * i) / samples)).distance,
      ),
    );
  };
  const ends = [distance(pathStart(first), pathStart(second)), distance(pathEnd(first), pathEnd(second))];
  return Math.max(from(first, second), from(second, first), ...ends);
}
