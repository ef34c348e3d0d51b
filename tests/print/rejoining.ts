import type { PagesJson } from '@paperhinge/print';
import { type Pixels, perMm } from './rendered.js';

/** Where a point of the sheet is on a page, in pixels; undefined if the page does not show it well inside its window. */
export function onPage(
  page: PagesJson['pages'][number],
  x: number,
  y: number,
  margin: number,
  across = 1,
  down = 1,
) {
  const [wx, wy, w, h] = page.windowMm;
  if (x < wx + margin || y < wy + margin || x > wx + w - margin || y > wy + h - margin) return undefined;
  return {
    x: (page.contentAtMm[0] + (x - wx) * across) * perMm,
    y: (page.contentAtMm[1] + (y - wy) * down) * perMm,
  };
}

/** The dark run across a line: how far its middle lies from where the line should be, and how wide it is, in mm. */
export function runAcross(page: Pixels, x: number, y: number, normal: { x: number; y: number }) {
  const darkness = (d: number) => {
    const px = Math.floor(x + normal.x * d),
      py = Math.floor(y + normal.y * d);
    const inside = px >= 0 && py >= 0 && px < page.width && py < page.height;
    return inside ? 1 - page.grey[py * page.width + px]! / 255 : 0;
  };
  const step = 0.1;
  let ink = 0,
    moment = 0;
  // Outwards both ways until the paper is white: edges of the line are grey, and weigh as much as they are dark.
  for (const side of [1, -1])
    for (let d = side === 1 ? 0 : step; d < 15 && darkness(side * d) > 0; d += step) {
      ink += darkness(side * d) * step;
      moment += darkness(side * d) * step * side * d;
    }
  return ink < 1 ? undefined : { offset: Math.abs(moment / ink) / perMm, width: ink / perMm };
}

/** Whether a point is within reach of any of the points. */
export const near = (points: readonly { x: number; y: number }[], x: number, y: number, reach: number) =>
  points.some(p => Math.hypot(p.x - x, p.y - y) < reach);

/** Whether a polygon holds a point. */
export function holds(points: readonly { x: number; y: number }[], x: number, y: number): boolean {
  let within = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const a = points[i]!,
      b = points[j]!;
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) within = !within;
  }
  return within;
}
