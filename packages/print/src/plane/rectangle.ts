import type { Point } from '@paperhinge/geometry';

/** An upright rectangle: [x0, y0, x1, y1]. */
export type Rectangle = readonly [number, number, number, number];

/** Whether the chord p-q meets an upright rectangle (Liang and Barsky's clipping). */
export function meetsRectangle(p: Point, q: Point, [x0, y0, x1, y1]: Rectangle): boolean {
  if ((p.x < x0 && q.x < x0) || (p.x > x1 && q.x > x1) || (p.y < y0 && q.y < y0) || (p.y > y1 && q.y > y1))
    return false;
  let from = 0,
    to = 1;
  const clip = (step: number, distance: number): boolean => {
    if (step === 0) return distance >= 0;
    const t = distance / step;
    if (step < 0) from = Math.max(from, t);
    else to = Math.min(to, t);
    return from <= to;
  };
  const dx = q.x - p.x,
    dy = q.y - p.y;
  return clip(-dx, p.x - x0) && clip(dx, x1 - p.x) && clip(-dy, p.y - y0) && clip(dy, y1 - p.y);
}
