import type { Piece, Point } from '@paperhinge/geometry';
import { pathEnd, pathStart } from '@paperhinge/geometry/paths';
import { type Affine, carrying, distance } from '@paperhinge/geometry/plane';
import { directionOf } from './shapes.js';

/** How a piece stands on paper: unit vectors, in its own coordinates, of the page's right and down. */
export interface Frame {
  readonly right: Point;
  readonly down: Point;
}

/** The frame in which the grain line runs straight up and down the page, by the smaller turn; without grain, as drawn. */
export function frameOf(piece: Piece): Frame {
  const grain = piece.lines.find(l => l.kind === 'grain');
  if (!grain) return asDrawn;
  const from = pathStart(grain.path),
    to = pathEnd(grain.path);
  if (distance(from, to) === 0) return asDrawn;
  const along = directionOf(from, to);
  // Of the grain's two directions the one nearer to down; a grain straight across turns so that its end points down.
  const down = along.y < 0 ? { x: -along.x, y: -along.y } : along;
  return { right: { x: down.y, y: -down.x }, down };
}

const asDrawn: Frame = { right: { x: 1, y: 0 }, down: { x: 0, y: 1 } };

/** The turn that stands a piece upright on the page, about its own origin. */
export const uprighting = (frame: Frame): Affine =>
  carrying({ x: 0, y: 0 }, frame.right, { x: 0, y: 0 }, { x: 1, y: 0 });

/** The one of two opposite directions in which text is not upside down; straight up is read before straight down. */
export function readable(frame: Frame, direction: Point): Point {
  const right = direction.x * frame.right.x + direction.y * frame.right.y;
  const up = -(direction.x * frame.down.x + direction.y * frame.down.y);
  const keeps = Math.abs(right) > nearlyUpright ? right > 0 : up > 0;
  return keeps ? direction : { x: -direction.x, y: -direction.y };
}

/** Within about 3 degrees of upright a line counts as upright, so that the two sides of a piece read alike. */
const nearlyUpright = 0.05;
