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
import { intersectPaths, pathEnd, pathStart, pointAlong } from '@paperhinge/geometry/paths';
import { outlinePath, pathsOfPart } from '@paperhinge/geometry/pattern';
import { add, rightOf, scale, subtract, unit } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';
import { type Cut, slashOf } from './cut.js';
import { refusal } from './tellings.js';

const near = tolerances.coincidenceTolerance;

/**
 * A cut must run inside the piece and touch the outline at its own ends only.
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slash-crosses-pleat`
 */
export function checkInside(piece: Piece, cut: Cut, course: Path): void {
  const crosses = (path: Path): boolean =>
    intersectPaths(course, path).some(m => m.overlap || !isOwnEnd(m.alongA, cut, course));
  for (const part of piece.outline.parts) {
    const folds = part.type === 'pleat' ? stitchedFolds(part) : [];
    if ([...pathsOfPart(part), ...folds].some(crosses)) throw throughPart(piece, cut, part);
  }
  if (!containsPoint(outlinePath(piece.outline), pointAlong(course, pathLength(course) / 2)))
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

/** Only an end that is meant to lie on the outline may touch it. */
function isOwnEnd(along: number, cut: Cut, course: Path): boolean {
  if (along <= near) return !('pivot' in cut.from);
  return along >= pathLength(course) - near && !('pivot' in cut.to);
}
