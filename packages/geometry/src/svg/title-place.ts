import { intersectPaths } from '../path/intersect.js';
import { type Path, polyline } from '../path/path.js';
import { outlinePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { centroid } from '../region/area.js';
import { containsPoint } from '../region/contains.js';
import { add, type Point } from '../vector.js';

/** Width of a letter as a share of its height, on the wide side of what sans-serif fonts have. */
const letterWidth = 0.65;
/** In letter heights: where else to look, outwards from the middle of the piece. */
const steps = [0, -2, 2, -4, 4, -7, 7, -10, 10];

/** Where a piece's title stands (its middle, on the base line): near the middle of the piece, across none of its lines. */
export function titlePlace(piece: Piece, size: number): Point {
  const outline = outlinePath(piece.outline);
  const middle = centroid(outline);
  const width = letterWidth * size * piece.title.length;
  const lines = [outline, ...piece.lines.map(line => line.path)];
  const places = steps.flatMap(dy => steps.map(dx => add(middle, { x: dx * size, y: dy * size })));
  const isClear = (place: Point): boolean => {
    const frame = frameOf(place, width, size);
    return containsPoint(outline, place) && lines.every(line => intersectPaths(line, frame).length === 0);
  };
  return places.find(isClear) ?? middle;
}

const frameOf = ({ x, y }: Point, width: number, size: number): Path => {
  const [left, right, top, bottom] = [x - width / 2, x + width / 2, y - size, y + size / 4];
  return polyline(
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
    { x: left, y: top },
  );
};
