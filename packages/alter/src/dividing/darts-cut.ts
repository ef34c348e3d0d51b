import { type Dart, type Path, type PieceLine, pathLength } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import {
  intersectPaths,
  joined,
  nearestOnPath,
  pointAlong,
  reversedPath,
  subpath,
} from '@paperhinge/geometry/paths';
import { pointsOf } from '../darts/contour.js';
import type { CutPiece } from '../hinge/cut-piece.js';
import { sectionHolding } from '../hinge/line-parts.js';

/** A double-pointed dart that a cut runs through, as a dart that opens in the new edge of one section. */
export interface DartCut {
  readonly line: PieceLine;
  /** mm along the cut, as that section's outline travels it, to either end of the dart's mouth. */
  readonly from: number;
  readonly to: number;
  readonly legs: Dart['legs'];
}

/** The cut as a section's outline travels it. */
export const cutAlong = ({ courses, beside }: CutPiece, section: number): Path =>
  beside[0]!.right === section ? courses[0]! : reversedPath(courses[0]!);

/**
 * The double-pointed darts that a cut makes two darts of, one on either side, in the order in which a section's outline
 * meets them. One that it crosses aslant, so that legs would not be equal, or along its length, is none of them.
 */
export function dartsCut(cutPiece: CutPiece, section: number): readonly DartCut[] {
  const rings = cutPiece.piece.lines.filter(({ kind }) => kind === 'dart');
  return rings
    .flatMap(line => {
      const own = dartOn(cutPiece, section, line);
      return own && dartOn(cutPiece, 1 - section, line) ? [own] : [];
    })
    .sort((a, b) => a.from - b.from);
}

function dartOn(cutPiece: CutPiece, section: number, line: PieceLine): DartCut | undefined {
  const crossings = intersectPaths(cutAlong(cutPiece, section), line.path);
  const [first, last] = [...crossings].sort((a, b) => a.alongA - b.alongA);
  if (crossings.length !== 2 || !first || !last) return undefined;
  const arcs = [
    between(line.path, first.alongB, last.alongB),
    reversedPath(between(line.path, last.alongB, first.alongB)),
  ];
  const arc = arcs.find(
    path => sectionHolding(cutPiece, pointAlong(path, pathLength(path) / 2), section) === section,
  );
  if (!arc) return undefined;
  const tips = pointsOf(line.path)
    .map(tip => nearestOnPath(arc, tip))
    .filter(({ distance }) => distance <= tolerances.joiningGap);
  const length = pathLength(arc);
  const along = tips[0]?.along ?? 0;
  const uneven = Math.abs(length - 2 * along) > tolerances.dartLegTolerance;
  if (tips.length !== 1 || along <= 0 || along >= length || uneven) return undefined;
  return {
    line,
    from: first.alongA,
    to: last.alongA,
    legs: [subpath(arc, 0, along), subpath(arc, along, length)],
  };
}

/** A ring from one place forwards to another. */
const between = (ring: Path, from: number, to: number): Path =>
  from < to ? subpath(ring, from, to) : joined(subpath(ring, from, pathLength(ring)), subpath(ring, 0, to));
