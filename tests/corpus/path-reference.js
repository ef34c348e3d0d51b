// Lengths and boxes of path data without any code of the library: read by `svg-pathdata`, arcs by the formulas of the
// SVG 2 implementation notes (B.2.4), measured by dense sampling. Slow and plain.
import { SVGPathData } from 'svg-pathdata';

/** @param matrix [a, b, c, d, e, f] @returns one function of t in [0, 1] for each segment that has any length */
export function curvesOf(d, [a, b, c, dd, e, f] = [1, 0, 0, 1, 0, 0]) {
  const curves = [];
  const draw = curve =>
    curves.push(t => {
      const [x, y] = curve(t);
      return [a * x + c * y + e, b * x + dd * y + f];
    });
  let x = 0,
    y = 0,
    startX = 0,
    startY = 0;
  const line = (toX, toY) => {
    const [fromX, fromY] = [x, y];
    draw(t => [fromX + (toX - fromX) * t, fromY + (toY - fromY) * t]);
  };
  for (const s of new SVGPathData(d).toAbs().normalizeST().commands) {
    const [fromX, fromY] = [x, y];
    const toX = s.x ?? x,
      toY = s.y ?? y;
    switch (s.type) {
      case SVGPathData.MOVE_TO:
        startX = toX;
        startY = toY;
        break;
      case SVGPathData.CLOSE_PATH:
        line(startX, startY);
        x = startX;
        y = startY;
        continue;
      case SVGPathData.CURVE_TO:
        draw(t => {
          const u = 1 - t;
          const mix = (p, q, r, v) => u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * v;
          return [mix(fromX, s.x1, s.x2, toX), mix(fromY, s.y1, s.y2, toY)];
        });
        break;
      case SVGPathData.QUAD_TO:
        draw(t => {
          const u = 1 - t;
          const mix = (p, q, r) => u * u * p + 2 * u * t * q + t * t * r;
          return [mix(fromX, s.x1, toX), mix(fromY, s.y1, toY)];
        });
        break;
      case SVGPathData.ARC:
        if (s.rX === 0 || s.rY === 0) line(toX, toY);
        else if (fromX !== toX || fromY !== toY) draw(arc(fromX, fromY, s, toX, toY));
        break;
      default:
        line(toX, toY);
    }
    x = toX;
    y = toY;
  }
  return curves;
}

function arc(x1, y1, { rX, rY, xRot, lArcFlag, sweepFlag }, x2, y2) {
  const phi = (xRot * Math.PI) / 180;
  const cos = Math.cos(phi),
    sin = Math.sin(phi);
  const px = (cos * (x1 - x2) + sin * (y1 - y2)) / 2,
    py = (-sin * (x1 - x2) + cos * (y1 - y2)) / 2;
  let rx = Math.abs(rX),
    ry = Math.abs(rY);
  const lambda = (px / rx) ** 2 + (py / ry) ** 2;
  if (lambda > 1) {
    rx *= Math.sqrt(lambda);
    ry *= Math.sqrt(lambda);
  }
  const k = lambda >= 1 ? 0 : Math.sqrt((1 - lambda) / lambda) * (lArcFlag === sweepFlag ? -1 : 1);
  const cx = (k * rx * py) / ry,
    cy = (-k * ry * px) / rx;
  const from = Math.atan2((py - cy) / ry, (px - cx) / rx);
  let sweep = Math.atan2((-py - cy) / ry, (-px - cx) / rx) - from;
  if (sweepFlag && sweep < 0) sweep += 2 * Math.PI;
  if (!sweepFlag && sweep > 0) sweep -= 2 * Math.PI;
  return t => {
    const u = rx * Math.cos(from + sweep * t) + cx,
      v = ry * Math.sin(from + sweep * t) + cy;
    return [cos * u - sin * v + (x1 + x2) / 2, sin * u + cos * v + (y1 + y2) / 2];
  };
}

/** @returns { length, box: [left, top, right, bottom] } */
export function measureCurves(curves, steps = 128) {
  let length = 0;
  const box = [Infinity, Infinity, -Infinity, -Infinity];
  for (const curve of curves) {
    const points = Array.from({ length: 2 * steps + 1 }, (_, i) => curve(i / (2 * steps)));
    let fine = 0,
      coarse = 0;
    for (let i = 1; i < points.length; i++) fine += apart(points[i], points[i - 1]);
    for (let i = 2; i < points.length; i += 2) coarse += apart(points[i], points[i - 2]);
    // Chords fall short by the square of the step: what both say together is good to its fourth power.
    length += fine + (fine - coarse) / 3;
    for (const axis of [0, 1])
      for (const sign of [1, -1]) {
        const value = t => sign * curve(t)[axis];
        const at = points.reduce((best, p, i) => (sign * p[axis] < sign * points[best][axis] ? i : best), 0);
        const least = lowest(
          value,
          Math.max(0, at - 1) / (2 * steps),
          Math.min(2 * steps, at + 1) / (2 * steps),
        );
        if (sign > 0) box[axis] = Math.min(box[axis], least);
        else box[axis + 2] = Math.max(box[axis + 2], -least);
      }
  }
  return { length, box };
}

const apart = ([a, b], [c, d]) => Math.hypot(a - c, b - d);

/** The least value near a lowest sample, by thirds. */
function lowest(value, from, to) {
  let low = from,
    high = to;
  for (let i = 0; i < 40; i++) {
    const a = low + (high - low) / 3,
      b = high - (high - low) / 3;
    if (value(a) < value(b)) high = b;
    else low = a;
  }
  return Math.min(value(from), value(to), value((low + high) / 2));
}
