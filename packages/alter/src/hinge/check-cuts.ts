import {
  type OutlinePart,
  type Path,
  type PatternError,
  type Piece,
  type Pleat,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { intersectPaths, nearestOnPath, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { outlinePath, pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, distance, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';
import { type Cut, slashOf } from './cut.js';
import { refusal } from './tellings.js';

const near = tolerances.coincidenceTolerance;

/**
 * Cuts must run inside the piece, touch the outline at their own ends only, and neither cross one another nor leave a
 * sliver of paper between them that no scissors could.
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slash-crosses-pleat`, `slashes-cross`,
 *   `slashes-too-near`
 */
export function checkCuts(piece: Piece, cuts: readonly Cut[], courses: readonly Path[]): void {
  const outline = outlinePath(piece.outline);
  const where = { piece: piece.name };
  for (const [i, course] of courses.entries()) checkInside(piece, outline, cuts[i]!, course);
  for (const [i, course] of courses.entries())
    for (const [k, other] of courses.entries()) {
      if (k <= i) continue;
      const pair = () => ({ first: slashOf(cuts[i]!), second: slashOf(cuts[k]!) });
      const cross = intersectPaths(course, other).some(
        m => !(isEnd(m.alongA, course) && isEnd(m.alongB, other)) || m.overlap,
      );
      if (cross) throw refusal('slashes-cross', pair(), where);
      if (touchAlmost(course, other) || touchAlmost(other, course))
        throw refusal('slashes-too-near', pair(), where);
    }
}

/** Whether an end of one cut comes so near to another that they should have met there. */
function touchAlmost(course: Path, other: Path): boolean {
  return [pathStart(course), pathEnd(course)].some(end => {
    if (nearestOnPath(other, end).distance > tolerances.joiningGap) return false;
    return Math.min(distance(end, pathStart(other)), distance(end, pathEnd(other))) > near;
  });
}

function checkInside(piece: Piece, outline: Path, cut: Cut, course: Path): void {
  const crosses = (path: Path): boolean =>
    intersectPaths(course, path).some(m => m.overlap || !isOwnEnd(m.alongA, cut, course));
  for (const part of piece.outline.parts) {
    const folds = part.type === 'pleat' ? stitchedFolds(part) : [];
    if ([...pathsOfPart(part), ...folds].some(crosses)) throw throughPart(piece, cut, part);
  }
  if (!containsPoint(outline, pointAlong(course, pathLength(course) / 2)))
    throw refusal('slash-leaves-piece', { slash: slashOf(cut) }, { piece: piece.name });
}

/** The two folds of a pleat as far down from the edge as they are stitched. */
function stitchedFolds({ mouth, stitched }: Pleat): readonly Path[] {
  const from = pathStart(mouth),
    to = pathEnd(mouth);
  const down = scale(rightOf(unit(subtract(to, from))), stitched);
  return stitched === 0 ? [] : [from, to].map(end => pathOf([end, add(end, down)]));
}

function throughPart(piece: Piece, cut: Cut, { type, name }: OutlinePart): PatternError {
  const slash = slashOf(cut);
  const where = { piece: piece.name };
  if (type === 'dart') return refusal('slash-crosses-dart', { slash, dart: { ...where, dart: name } }, where);
  if (type === 'pleat')
    return refusal('slash-crosses-pleat', { slash, pleat: { ...where, pleat: name } }, where);
  const edge = { ...where, edge: name };
  return refusal('slash-leaves-piece', { slash, edge }, edge);
}

const isEnd = (along: number, course: Path): boolean => along <= near || along >= pathLength(course) - near;

/** Only an end that is meant to lie on the outline may touch it. */
function isOwnEnd(along: number, cut: Cut, course: Path): boolean {
  if (along <= near) return !('pivot' in cut.from);
  return along >= pathLength(course) - near && !('pivot' in cut.to);
}
