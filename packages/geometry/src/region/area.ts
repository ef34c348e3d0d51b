import { derivativeAt, isLine, pointAt } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { gaussRule } from '../quadrature.js';
import type { Point } from '../vector.js';

/**
 * Area in mm² within a closed path by Green's theorem, exact for lines and cubics: positive for clockwise paths as
 * seen (y down), negative for anticlockwise ones; a part wound round twice counts twice. A gap from the last point
 * to the first is closed straight.
 */
export function signedArea(path: Path): number {
  requirePath(path);
  const { x: ox, y: oy } = path.segments[0]![0];
  let twice = 0;
  let px = 0,
    py = 0;
  for (const segment of path.segments) {
    const x0 = segment[0].x - ox,
      y0 = segment[0].y - oy;
    twice += px * y0 - py * x0;
    if (isLine(segment)) {
      px = segment[1].x - ox;
      py = segment[1].y - oy;
      twice += x0 * py - y0 * px;
      continue;
    }
    const x1 = segment[1].x - ox,
      y1 = segment[1].y - oy,
      x2 = segment[2].x - ox,
      y2 = segment[2].y - oy;
    px = segment[3].x - ox;
    py = segment[3].y - oy;
    twice +=
      (6 * (x0 * y1 - y0 * x1) +
        3 * (x0 * y2 - y0 * x2) +
        (x0 * py - y0 * px) +
        3 * (x1 * y2 - y1 * x2) +
        3 * (x1 * py - y1 * px) +
        6 * (x2 * py - y2 * px)) /
      10;
  }
  return twice / 2;
}

/** Centre of gravity of the surface within a closed path. For a path of no area, the middle of its points. */
export function centroid(path: Path): Point {
  requirePath(path);
  const o = path.segments[0]![0];
  let area = 0,
    mx = 0,
    my = 0;
  const sweep = (x: number, y: number, dx: number, dy: number, weight: number): void => {
    // Of the triangle from the origin to a step of the path: half its cross product, centred at two thirds.
    const part = ((x * dy - y * dx) / 2) * weight;
    area += part;
    mx += ((2 * x) / 3) * part;
    my += ((2 * y) / 3) * part;
  };
  let px = 0,
    py = 0;
  for (const segment of path.segments) {
    straight(sweep, px, py, segment[0].x - o.x, segment[0].y - o.y);
    const end = segment.at(-1)!;
    px = end.x - o.x;
    py = end.y - o.y;
    if (isLine(segment)) straight(sweep, segment[0].x - o.x, segment[0].y - o.y, px, py);
    else
      for (const [i, node] of rule.nodes.entries())
        for (const t of [(1 - node) / 2, (1 + node) / 2]) {
          const { x, y } = pointAt(segment, t),
            d = derivativeAt(segment, t);
          sweep(x - o.x, y - o.y, d.x, d.y, rule.weights[i]! / 2);
        }
  }
  straight(sweep, px, py, 0, 0);
  if (area !== 0) return { x: o.x + mx / area, y: o.y + my / area };
  const ends = path.segments.map(s => s[0]);
  return {
    x: ends.reduce((sum, p) => sum + p.x, 0) / ends.length,
    y: ends.reduce((sum, p) => sum + p.y, 0) / ends.length,
  };
}

function straight(
  sweep: (x: number, y: number, dx: number, dy: number, w: number) => void,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
) {
  if (x0 !== x1 || y0 !== y1) sweep((x0 + x1) / 2, (y0 + y1) / 2, x1 - x0, y1 - y0, 1);
}

/** Of six points: exact to degree eleven, and the integrand has degree eight. */
const rule = /* @__PURE__ */ gaussRule(6);
