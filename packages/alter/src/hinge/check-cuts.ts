import { type Path, type Piece, type Point, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { intersectPaths, nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { distance } from '@paperhinge/geometry/plane';
import { checkInside } from './check-inside.js';
import { type Cut, slashOf } from './cut.js';
import { refusal } from './tellings.js';

const near = tolerances.coincidenceTolerance;

/**
 * Cuts must run inside the piece, touch the outline at their own ends only, and neither cross one another nor leave a
 * sliver of paper between them that no scissors could.
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slash-crosses-pleat`, `slashes-cross`,
 *   `slashes-too-near`, `slash-twice`
 */
export function checkCuts(piece: Piece, cuts: readonly Cut[], courses: readonly Path[]): void {
  const where = { piece: piece.name };
  for (const [i, course] of courses.entries()) checkInside(piece, cuts[i]!, course);
  for (const [i, course] of courses.entries())
    for (const [k, other] of courses.entries()) {
      if (k <= i) continue;
      const pair = () => ({ first: slashOf(cuts[i]!), second: slashOf(cuts[k]!) });
      if (isTwice(course, other)) throw refusal('slash-twice', { slash: slashOf(cuts[i]!) }, where);
      const cross = intersectPaths(course, other).some(
        m => !(isEnd(m.alongA, course) && isEnd(m.alongB, other)) || m.overlap,
      );
      if (cross) throw refusal('slashes-cross', pair(), where);
      if (touchAlmost(course, other) || touchAlmost(other, course))
        throw refusal('slashes-too-near', pair(), where);
    }
}

/**
 * Whether two cuts are one: ends that share a place as the outline counts places, and no paper between. A curve's meeting
 * with one another is exact to a hundredth of that, so it alone would not see them.
 */
function isTwice(course: Path, other: Path): boolean {
  const [a, b] = [pathStart(course), pathEnd(course)],
    [c, d] = [pathStart(other), pathEnd(other)];
  const share = (p: Point, q: Point, r: Point, s: Point) => Math.max(distance(p, r), distance(q, s)) <= near;
  const middle = pointAlong(course, pathLength(course) / 2);
  return (
    (share(a, b, c, d) || share(a, b, d, c)) && nearestOnPath(other, middle).distance <= tolerances.joiningGap
  );
}

/** Whether an end of one cut comes so near to another that they should have met there. */
function touchAlmost(course: Path, other: Path): boolean {
  return [pathStart(course), pathEnd(course)].some(end => {
    if (nearestOnPath(other, end).distance > tolerances.joiningGap) return false;
    return Math.min(distance(end, pathStart(other)), distance(end, pathEnd(other))) > near;
  });
}

const isEnd = (along: number, course: Path): boolean => along <= near || along >= pathLength(course) - near;
