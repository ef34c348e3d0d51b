// Holds a traced outline against the true one, after the rigid motion that lays it on best.
import { flattened } from './photo-scene.js';

/** The nearest point of a closed polygon and the unit normal of the side it is on: [distance, x, y, nx, ny]. */
function nearest([x, y], polygon) {
  let best = [Number.POSITIVE_INFINITY, 0, 0, 1, 0];
  for (let i = 0; i < polygon.length; i++) {
    const [ax, ay] = polygon[i],
      [bx, by] = polygon[(i + 1) % polygon.length];
    const dx = bx - ax,
      dy = by - ay,
      l = dx * dx + dy * dy;
    const t = l > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / l)) : 0;
    const d = Math.hypot(x - ax - t * dx, y - ay - t * dy);
    if (d < best[0]) best = [d, ax + t * dx, ay + t * dy, -dy / Math.sqrt(l || 1), dx / Math.sqrt(l || 1)];
  }
  return best;
}

/**
 * The rigid motion that lays points on a polygon as near as may be, one step: each point is drawn to the line of the
 * side nearest to it, so that sliding along sides costs nothing.
 */
function laidNearer(points, polygon) {
  const [cx, cy] = [0, 1].map(k => points.reduce((sum, p) => sum + p[k], 0) / points.length);
  const m = [0, 0, 0, 0, 0, 0, 0, 0, 0],
    v = [0, 0, 0];
  for (const [x, y] of points) {
    const [, qx, qy, nx, ny] = nearest([x, y], polygon);
    const row = [nx, ny, nx * -(y - cy) + ny * (x - cx)];
    const off = nx * (qx - x) + ny * (qy - y);
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) m[3 * i + j] += row[i] * row[j];
      v[i] += row[i] * off;
    }
  }
  // A circle may be turned at will: that it is not turned costs nothing either.
  m[8] += 1e-6 * (m[0] + m[4]);
  const det = (a, b, c) =>
    a[0] * (b[1] * c[2] - b[2] * c[1]) -
    b[0] * (a[1] * c[2] - a[2] * c[1]) +
    c[0] * (a[1] * b[2] - a[2] * b[1]);
  const columns = [0, 1, 2].map(j => [m[j], m[3 + j], m[6 + j]]);
  const whole = det(...columns);
  const [dx, dy, turn] = [0, 1, 2].map(j => det(...columns.map((c, k) => (k === j ? v : c))) / whole);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return ([x, y]) => [cos * (x - cx) - sin * (y - cy) + cx + dx, sin * (x - cx) + cos * (y - cy) + cy + dy];
}

const lengthOf = polygon =>
  polygon.reduce((sum, [x, y], i) => {
    const [u, v] = polygon[(i + 1) % polygon.length];
    return sum + Math.hypot(u - x, v - y);
  }, 0);

const beads = polygon =>
  polygon.flatMap(([x, y], i) => {
    const [u, v] = polygon[(i + 1) % polygon.length];
    const n = Math.max(1, Math.ceil(Math.hypot(u - x, v - y)));
    return Array.from({ length: n }, (_, k) => [x + ((u - x) * k) / n, y + ((v - y) * k) / n]);
  });

const middle = polygon =>
  [0, 1].map(k => beads(polygon).reduce((s, p) => s + p[k], 0) / beads(polygon).length);

/**
 * How a traced outline (points about 1 mm apart) stands to the true one. It is turned about its middle to find where
 * it fits, then laid on step by step.
 *
 * @param traced points, clockwise
 * @param corners traced corners
 * @param outline true segments
 */
export function judged(traced, corners, outline) {
  const truth = flattened(outline);
  const [mx, my] = middle(traced),
    [tx, ty] = middle(truth);
  const few = traced.filter((_, i) => i % Math.ceil(traced.length / 60) === 0);
  let best;
  for (let k = 0; k < 72; k++) {
    const a = (k * Math.PI) / 36;
    const turn = ([x, y]) => [
      Math.cos(a) * (x - mx) - Math.sin(a) * (y - my) + tx,
      Math.sin(a) * (x - mx) + Math.cos(a) * (y - my) + ty,
    ];
    const cost = few.reduce((sum, p) => sum + nearest(turn(p), truth)[0] ** 2, 0);
    if (!best || cost < best.cost) best = { cost, turn };
  }
  let motion = best.turn;
  for (let round = 0; round < 10; round++) {
    const nearer = laidNearer(traced.map(motion), truth);
    const before = motion;
    motion = p => nearer(before(p));
  }
  const laidOn = traced.map(motion);
  const off = [
    ...beads(truth).map(p => nearest(p, laidOn)[0]),
    ...laidOn.map(p => nearest(p, truth)[0]),
  ].sort((a, b) => a - b);
  const found = corners.map(motion);
  // Joints where the true outline turns by over 20 degrees.
  const sharp = outline.filter((segment, i) => {
    const last = outline[(i + outline.length - 1) % outline.length];
    const [a, b] = [last.at(-2), last.at(-1)],
      [c, d] = [segment[0], segment[1]];
    const turn = Math.atan2(
      (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]),
      (b[0] - a[0]) * (d[0] - c[0]) + (b[1] - a[1]) * (d[1] - c[1]),
    );
    return Math.abs(turn) > Math.PI / 9;
  });
  const cornersOff = sharp.map(([[x, y]]) =>
    Math.min(Infinity, ...found.map(([u, v]) => Math.hypot(u - x, v - y))),
  );
  return {
    most: off[Math.floor(off.length * 0.95)],
    worst: off.at(-1),
    length: lengthOf(truth),
    lengthOff: lengthOf(traced) - lengthOf(truth),
    cornersOff,
  };
}
