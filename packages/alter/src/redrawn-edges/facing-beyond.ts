import { type Edge, line, type Path, pathOf } from '@paperhinge/geometry';
import { intersectPaths, pathEnd, pathStart, reversedPath, subpath } from '@paperhinge/geometry/paths';
import { add, mirror, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import type { Run } from '../moved-edges/composed.js';
import { lineThrough, reachOf } from '../moved-edges/meet.js';
import { movedPath } from '../moved-edges/moved-part.js';

/** The three edges that a grown-on facing adds beyond a fold line, in the outline's order. */
export interface FacingBeyond {
  readonly before: Run;
  readonly inner: Run;
  readonly after: Run;
}

/**
 * The facing that is cut in one with a piece beyond a straight line: what lies within `width` mm of the line, turned over
 * in it, so that folded back it lies on the piece with its edges on the piece's edges.
 *
 * @param fold the line, in the outline's direction
 * @param before the edge that ends where the line begins; @param after the one that begins where it ends
 * @param inner what the facing's free edge is called and how it is treated
 * @returns nothing where an edge does not reach so far from the line
 */
export function facingBeyond(
  fold: Path,
  { before, after }: { readonly before: Run; readonly after: Run },
  width: number,
  inner: Edge,
): FacingBeyond | undefined {
  const from = pathStart(fold),
    to = pathEnd(fold);
  const way = unit(subtract(to, from));
  const reach = reachOf(fold) + reachOf(before.path) + reachOf(after.path);
  const parallel = lineThrough(add(from, scale(rightOf(way), width)), way, reach);
  const near = reversedPath(before.path);
  const [first] = intersectPaths(near, parallel),
    [last] = intersectPaths(after.path, parallel);
  if (!first || !last) return undefined;
  const map = mirror(from, way);
  const turned = (path: Path): Path => movedPath(path, map);
  const beside = (edge: Edge): Edge => ({ ...edge, name: `${edge.name}-facing`, corners: {} });
  const beforePath = turned(reversedPath(subpath(near, 0, first.alongA))),
    afterPath = turned(subpath(after.path, 0, last.alongA));
  return {
    before: { type: 'run', edge: beside(before.edge), path: beforePath },
    inner: {
      type: 'run',
      edge: inner,
      path: pathOf(line(pathEnd(beforePath), pathStart(afterPath))),
    },
    after: { type: 'run', edge: beside(after.edge), path: afterPath },
  };
}
