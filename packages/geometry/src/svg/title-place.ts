import { type Box, boundsOf, boxesMeet } from '../curve/bounds.js';
import { intersectSegments } from '../curve/intersect.js';
import { line, type Segment } from '../curve/segment.js';
import { boundsOfPath } from '../path/bounds.js';
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
  const room = boundsOfPath(outline);
  const lines = [outline, ...piece.lines.map(l => l.path)]
    .flatMap(path => path.segments)
    .map(segment => ({ segment, box: boundsOf(segment) }));
  const isClear = (place: TitlePlace): boolean => {
    const box = frameOf(place, letterWidth * place.size * piece.title.length);
    if (!isWithin(box, room)) return false;
    const frame = sidesOf(box);
    const crosses = (segment: Segment): boolean =>
      frame.some(side => intersectSegments(segment, side).length > 0);
    return !lines.some(l => boxesMeet(l.box, box) && crosses(l.segment)) && containsPoint(outline, place);
  };
  for (const size of sizes)
    for (const dy of steps)
      for (const dx of steps) {
        const place = { ...add(middle, { x: dx * size, y: dy * size }), size };
        if (isClear(place)) return place;
      }
  return { ...middle, size: sizes.at(-1)! };
}

const frameOf = ({ x, y, size }: TitlePlace, width: number): Box => ({
  min: { x: x - width / 2, y: y - size },
  max: { x: x + width / 2, y: y + size / 4 },
});

const isWithin = (inner: Box, { min, max }: Box): boolean =>
  inner.min.x >= min.x && inner.max.x <= max.x && inner.min.y >= min.y && inner.max.y <= max.y;

const sidesOf = ({ min, max }: Box): readonly Segment[] => {
  const corners = [min, { x: max.x, y: min.y }, max, { x: min.x, y: max.y }];
  return corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!));
};
