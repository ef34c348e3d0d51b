import {
  type OutlinePart,
  type Path,
  type PatternError,
  type Piece,
  type Pleat,
  pathLength,
  pathOf,
} from '@paperhinge/geometry';
import { tolerances } from '@paperhinge/geometry/internal';
import { intersectPaths, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { outlinePath, pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';
import { type Cut, slashOf } from './cut.js';
import { refusal } from './tellings.js';

const near = tolerances.coincidenceTolerance;

/**
 * Cuts must run inside the piece, touch the outline at their own ends only, and not cross one another.
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slash-crosses-pleat`, `slashes-cross`
 */
export function checkCuts(piece: Piece, cuts: readonly Cut[], courses: readonly Path[]): void {
  const outline = outlinePath(piece.outline);
  for (const [i, course] of courses.entries()) checkInside(piece, outline, cuts[i]!, course);
  for (const [i, course] of courses.entries())
    for (const [k, other] of courses.entries()) {
      if (k <= i) continue;
      const crossing = intersectPaths(course, other).find(
        m => !(isEnd(m.alongA, course) && isEnd(m.alongB, other)) || m.overlap,
      );
      if (crossing)
        throw refusal(
          'slashes-cross',
          { first: slashOf(cuts[i]!), second: slashOf(cuts[k]!) },
          { piece: piece.name },
        );
    }
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
