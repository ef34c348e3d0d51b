import { angleTolerance } from '../tolerance.js';
import { add, angleBetween, type Point, scale } from '../vector.js';
import type { Cubic } from './segment.js';
import { requirePoint, requireSegment } from './sound.js';

/**
 * The circular arc about `centre` from centre + `from` to centre + `to` (of equal length, in mm), clockwise as seen or
 * not, as cubics of at most 30 degrees each, which deviate by less than 4e-7 of the radius.
 * Source: S. Mortensen, Approximate a circle with cubic Bézier curves; the error falls with the sixth power.
 */
export function arcBetween(centre: Point, from: Point, to: Point, clockwise: boolean): readonly Cubic[] {
  requireSegment([centre, from]);
  requirePoint(to);
  let sweep = angleBetween(from, to);
  if (clockwise && sweep <= 0) sweep += 2 * Math.PI;
  if (!clockwise && sweep >= 0) sweep -= 2 * Math.PI;
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 6) - angleTolerance));
  const step = sweep / count;
  const handle = (4 / 3) * Math.tan(step / 4);
  const arcs: Cubic[] = [];
  for (let i = 0; i < count; i++) {
    const a = turned(from, i * step),
      b = i + 1 === count ? to : turned(from, (i + 1) * step);
    const p = add(centre, a),
      s = add(centre, b);
    arcs.push([p, add(p, scale({ x: -a.y, y: a.x }, handle)), add(s, scale({ x: b.y, y: -b.x }, handle)), s]);
  }
  return arcs;
}

const turned = ({ x, y }: Point, angle: number): Point => ({
  x: x * Math.cos(angle) - y * Math.sin(angle),
  y: x * Math.sin(angle) + y * Math.cos(angle),
});
