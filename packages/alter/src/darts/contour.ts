import type { Path, Piece, PieceLine, Point } from '@paperhinge/geometry';
import { boundsOfPath, intersectPaths, pathStart, transformedPath } from '@paperhinge/geometry/paths';
import { outlinePath } from '@paperhinge/geometry/pattern';
import { type Affine, compose, distance, subtract, translation, unit } from '@paperhinge/geometry/plane';
import { containsPoint } from '@paperhinge/geometry/regions';

// Double-pointed darts: closed lines within a piece, see `add contour dart`.

/** The double-pointed dart of a piece by its name, where it has one. */
export const contourDart = (piece: Piece, name: string): PieceLine | undefined =>
  piece.lines.find(line => line.kind === 'dart' && line.name === name);

/** The corners of a path: where its segments begin. */
const cornersOf = ({ segments }: Path): readonly Point[] => segments.map(segment => segment[0]);

/** The two points of a double-pointed dart: its corners that lie farthest apart. */
export function pointsOf(path: Path): readonly [Point, Point] {
  const corners = cornersOf(path);
  const pairs = corners.flatMap((a, i) => corners.slice(i + 1).map(b => [a, b] as const));
  const apart = ([a, b]: readonly [Point, Point]) => distance(a, b);
  return pairs.reduce((far, pair) => (apart(pair) > apart(far) ? pair : far));
}

/** A double-pointed dart made so many mm wide between its points; what it was before. */
export function withWidth(path: Path, toMm: number): { readonly path: Path; readonly formerMm: number } {
  const [top, bottom] = pointsOf(path);
  const { x, y } = unit(subtract(bottom, top));
  // Upright, its upper point at the origin, it is stretched or narrowed across.
  const upright: Affine = { a: y, b: x, c: -x, d: y, e: 0, f: 0 };
  const back: Affine = { a: y, b: -x, c: x, d: y, e: 0, f: 0 };
  const stood = transformedPath(path, compose(translation({ x: -top.x, y: -top.y }), upright));
  const { min, max } = boundsOfPath(stood);
  const formerMm = max.x - min.x;
  const wider: Affine = { a: toMm / formerMm, b: 0, c: 0, d: 1, e: 0, f: 0 };
  return { path: transformedPath(stood, compose(compose(wider, back), translation(top))), formerMm };
}

/** mm that a double-pointed dart takes in where it is widest. */
export const widthOf = (path: Path): number => withWidth(path, 1).formerMm;

/** Whether a closed line lies wholly within its piece. */
export function liesWithin(piece: Piece, path: Path): boolean {
  const outline = outlinePath(piece.outline);
  return (
    [pathStart(path), ...cornersOf(path)].every(corner => containsPoint(outline, corner)) &&
    intersectPaths(path, outline).length === 0
  );
}
