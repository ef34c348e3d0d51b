import type { Polygon } from '../drawing/room.js';

/** The upright box round polygons, mm. */
export function boxOf(polygons: readonly Polygon[]) {
  let [x0, y0, x1, y1] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const polygon of polygons)
    for (const { x, y } of polygon) {
      if (x < x0) x0 = x;
      if (x > x1) x1 = x;
      if (y < y0) y0 = y;
      if (y > y1) y1 = y;
    }
  return { x0, y0, x1, y1, width: x1 - x0, height: y1 - y0 };
}
