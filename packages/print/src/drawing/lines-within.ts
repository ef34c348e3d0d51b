import { type Path, type Piece, type PieceLine, pathLength } from '@paperhinge/geometry';
import { intersectPaths, pointAlong, subpath } from '@paperhinge/geometry/paths';
import { containsPoint } from '@paperhinge/geometry/regions';

/**
 * A piece whose lines stop at its cutting line. A level or a lengthening line is drawn "across the whole piece", and
 * what reaches beyond would lie on the pieces beside it on the sheet. A line wholly outside stays: it is its maker's.
 */
export const withLinesWithin = (piece: Piece, cutting: Path): Piece => ({
  ...piece,
  lines: piece.lines.flatMap(line => (line.kind === 'grain' ? [line] : within(line, cutting))),
});

function within(line: PieceLine, cutting: Path): readonly PieceLine[] {
  const crossings = intersectPaths(line.path, cutting).map(({ alongA }) => alongA);
  if (crossings.length === 0) return [line];
  const stops = [0, ...crossings.toSorted((a, b) => a - b), pathLength(line.path)];
  const kept = stops.slice(1).flatMap((to, i): readonly PieceLine[] => {
    const from = stops[i]!;
    const isSeen = to - from > shortest && containsPoint(cutting, pointAlong(line.path, (from + to) / 2));
    return isSeen ? [{ ...line, path: subpath(line.path, from, to) }] : [];
  });
  return kept.length === 0 ? [line] : kept;
}

/** mm: a stretch that no pen shows. */
const shortest = 0.5;
