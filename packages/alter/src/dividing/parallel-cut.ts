import { type Path, type Piece, pathLength } from '@paperhinge/geometry';
import { intersectPaths, nearestOnPath, subpath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import type { Cut } from '../hinge/cut.js';
import { joinedInOne, parallelPieces } from '../moved-edges/inward-parallel.js';
import { endingIn, reachOf, runOnBothWays, startingIn } from '../moved-edges/meet.js';
import { edgeInRing } from '../redrawn-edges/corner-moved.js';
import { endOnOutline } from './course.js';
import { refusal } from './tellings.js';

/**
 * A cut along an edge, `width` mm inside it everywhere, run on straight to the edges beside it.
 * @throws PatternError `band-too-wide` where the parallel does not reach from one side to the other;
 *   `edge-in-two-parts`, `unknown-edge`, `line-crosses-dart`
 */
export function parallelCut(piece: Piece, edge: string, width: number): Cut {
  const { run } = edgeInRing(piece, edge);
  const outline = outlinePath(piece.outline);
  const where = { piece: piece.name, edge };
  const tooWide = () => refusal('band-too-wide', { edge: where, widthMm: width }, where);
  const pieces = parallelPieces(run.path, width);
  if (pieces.length === 0) throw tooWide();
  const course = withinOutline(joinedInOne(pieces, width), outline);
  if (!course) throw tooWide();
  const [from, to] = [course.from, course.to].map(along => endOnOutline(piece, along));
  return { from: from!, to: to!, course: course.path };
}

/** The parallel, run on to the first crossings of the outline either way from its middle. */
function withinOutline(parallel: Path, outline: Path) {
  const reach = reachOf(outline);
  const long = runOnBothWays(parallel, reach);
  const middle = reach + pathLength(parallel) / 2;
  const crossings = intersectPaths(long, outline);
  const before = crossings.filter(c => c.alongA < middle).sort((a, b) => b.alongA - a.alongA)[0];
  const after = crossings.filter(c => c.alongA > middle).sort((a, b) => a.alongA - b.alongA)[0];
  if (!before || !after) return undefined;
  const path = subpath(long, before.alongA, after.alongA);
  return {
    path: endingIn(startingIn(path, before.point), after.point),
    from: nearestOnPath(outline, before.point).along,
    to: nearestOnPath(outline, after.point).along,
  };
}
