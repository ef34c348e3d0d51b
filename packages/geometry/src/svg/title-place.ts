import { boundsOf, boxesMeet } from '../curve/bounds.js';
import { boundsOfPath } from '../path/bounds.js';
import { intersectPaths } from '../path/intersect.js';
import { type Path, pathOf, polyline } from '../path/path.js';
import { outlinePath } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { centroid } from '../region/area.js';
import { containsPoint } from '../region/contains.js';
import { add, type Point } from '../vector.js';

/** Width of a letter as a share of its height, on the wide side of what sans-serif fonts have. */
const letterWidth = 0.65;
/** In letter heights: where else to look, outwards from the middle of the piece. */
const steps = [0, -0.4, 1.2, -2, 2.5, -4, 4, -7, 7, -10, 10];
/** mm, the largest first: a narrow piece gets a small title. */
const sizes = [14, 10, 7];

export interface TitlePlace extends Point {
  /** Letter height in mm. */
  readonly size: number;
}

/** Where a piece's title stands (its middle, on the base line): near the middle of the piece, across none of its lines. */
export function titlePlace(piece: Piece): TitlePlace {
  const outline = outlinePath(piece.outline);
  const middle = centroid(outline);
  const lines = [outline, ...piece.lines.map(line => line.path)]
    .flatMap(path => path.segments)
    .map(segment => ({ segment, box: boundsOf(segment) }));
  const isClear = (place: TitlePlace): boolean => {
    const frame = frameOf(place, letterWidth * place.size * piece.title.length);
    const frameBox = boundsOfPath(frame);
    const near = lines.filter(({ box }) => boxesMeet(box, frameBox));
    return (
      near.every(({ segment }) => intersectPaths(pathOf(segment), frame).length === 0) &&
      containsPoint(outline, place)
    );
  };
  for (const size of sizes)
    for (const dy of steps)
      for (const dx of steps) {
        const place = { ...add(middle, { x: dx * size, y: dy * size }), size };
        if (isClear(place)) return place;
      }
  return { ...middle, size: sizes.at(-1)! };
}

const frameOf = ({ x, y, size }: TitlePlace, width: number): Path => {
  const [left, right, top, bottom] = [x - width / 2, x + width / 2, y - size, y + size / 4];
  return polyline(
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
    { x: left, y: top },
  );
};
