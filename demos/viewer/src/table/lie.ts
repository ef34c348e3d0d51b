import { type Affine, apply, inverse, mirror, rotation } from '@paperhinge/geometry/plane';
import type { Box } from '../engine/view.js';

/** How a piece lies: what carries its own mm to the table's, rigid, turned over or not. */
export type Lie = Affine;

/** Across and down in mm. */
type Place = readonly [number, number];

export const carried = (lie: Lie, [x, y]: Place): Place => {
  const p = apply(lie, { x, y });
  return [p.x, p.y];
};

/** Turned by degrees about a place. */
export const turnedBy = (degrees: number, [x, y]: Place): Lie =>
  rotation((degrees * Math.PI) / 180, { x, y });

/** Turned over about the upright through a place. */
export const turnedOver = ([x]: Place): Lie => mirror({ x, y: 0 }, { x: 0, y: 1 });

/** As SVG writes a map. */
export const inSvg = ({ a, b, c, d, e, f }: Affine): string => `matrix(${[a, b, c, d, e, f].join(' ')})`;

/** Stands what is drawn on a piece upright again, however the piece lies. */
export const upright = (lie: Lie): string => inSvg({ ...inverse(lie), e: 0, f: 0 });

/** The upright box of a box that lies so. */
export function boxLying([x, y, width, height]: Box, lie: Lie): Box {
  const corners = [x, x + width].flatMap(u => [y, y + height].map(v => carried(lie, [u, v])));
  const [xs, ys] = [corners.map(p => p[0]), corners.map(p => p[1])];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return [left, top, Math.max(...xs) - left, Math.max(...ys) - top];
}
