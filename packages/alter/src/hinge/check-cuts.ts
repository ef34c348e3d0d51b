import {
  containsPoint,
  intersectPaths,
  outlinePath,
  type Path,
  PatternError,
  type Piece,
  pathLength,
  pathsOfPart,
  pointAlong,
  tolerances,
} from '@paperhinge/geometry';
import { type Cut, nameOfEnd } from './cut.js';

const near = tolerances.coincidenceTolerance;

/**
 * Cuts must run inside the piece, touch the outline at their own ends only, and not cross one another.
 * @throws PatternError `slash-leaves-piece`, `slash-crosses-dart`, `slashes-cross`
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
        throw new PatternError('slashes-cross', {
          message: `The slashes ${inWords(cuts[i]!)} and ${inWords(cuts[k]!)} would cross.`,
          remedy: 'Place them so that they meet at their ends only.',
          where: { piece: piece.name },
        });
    }
}

function checkInside(piece: Piece, outline: Path, cut: Cut, course: Path): void {
  for (const part of piece.outline.parts) {
    for (const path of pathsOfPart(part)) {
      const crossing = intersectPaths(course, path).find(m => m.overlap || !isOwnEnd(m.alongA, cut, course));
      if (!crossing) continue;
      if (part.type === 'dart')
        throw new PatternError('slash-crosses-dart', {
          message: `The slash ${inWords(cut)} would cross dart "${part.name}".`,
          remedy: 'Place the slash clear of the dart, or close or move the dart first.',
          where: { piece: piece.name },
        });
      throw leaving(piece, cut, part.name);
    }
  }
  if (!containsPoint(outline, pointAlong(course, pathLength(course) / 2))) throw leaving(piece, cut);
}

const leaving = (piece: Piece, cut: Cut, edge?: string) =>
  new PatternError('slash-leaves-piece', {
    message: edge
      ? `The slash ${inWords(cut)} would cross the edge "${edge}" and leave the piece.`
      : `The slash ${inWords(cut)} would lie outside the piece.`,
    remedy: 'Give other places for its ends, so that it runs inside the piece.',
    where: { piece: piece.name, ...(edge ? { edge } : {}) },
  });

const inWords = (cut: Cut): string => `from ${nameOfEnd(cut.from)} to ${nameOfEnd(cut.to)}`;

const isEnd = (along: number, course: Path): boolean => along <= near || along >= pathLength(course) - near;

/** Only an end that is meant to lie on the outline may touch it. */
function isOwnEnd(along: number, cut: Cut, course: Path): boolean {
  if (along <= near) return !('pivot' in cut.from);
  return along >= pathLength(course) - near && !('pivot' in cut.to);
}
