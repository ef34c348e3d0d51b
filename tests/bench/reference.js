// What the figures are held against: slow, plain, and sharing nothing with the library.

const value = ([p, q, r, s], t) => {
  const u = 1 - t,
    a = u * u * u,
    b = 3 * u * u * t,
    c = 3 * u * t * t,
    d = t * t * t;
  return { x: a * p.x + b * q.x + c * r.x + d * s.x, y: a * p.y + b * q.y + c * r.y + d * s.y };
};
const speed = ([p, q, r, s], t) => {
  const u = 1 - t,
    a = 3 * u * u,
    b = 6 * u * t,
    c = 3 * t * t;
  return Math.hypot(
    a * (q.x - p.x) + b * (r.x - q.x) + c * (s.x - r.x),
    a * (q.y - p.y) + b * (r.y - q.y) + c * (s.y - r.y),
  );
};
export const pointOf = value;

/** Romberg's rule on panels halved until the speed is even on them and two levels agree to 1e-15 of the curve. */
export function referenceLength(curve, from = 0, to = 1) {
  const scale =
    1e-300 + curve.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - curve[i].x, p.y - curve[i].y), 0);
  const walk = (a, b) => {
    const speeds = [0, 1, 2, 3, 4, 5, 6, 7, 8].map(i => speed(curve, a + ((b - a) * i) / 8));
    const most = Math.max(...speeds);
    const [coarse, fine] = romberg(t => speed(curve, t), a, b);
    const settled = most <= 2 * Math.min(...speeds) && Math.abs(coarse - fine) <= 1e-15 * scale;
    if (settled || most * (b - a) <= 1e-13 * scale || b - a < 1e-15) return fine;
    return walk(a, (a + b) / 2) + walk((a + b) / 2, b);
  };
  return walk(from, to);
}

function romberg(f, a, b) {
  let row = [((b - a) / 2) * (f(a) + f(b))],
    before = row[0];
  for (let level = 1; level <= 5; level++) {
    const n = 2 ** level,
      h = (b - a) / n;
    let middle = 0;
    for (let i = 1; i < n; i += 2) middle += f(a + i * h);
    const next = [row[0] / 2 + h * middle];
    for (let k = 1; k <= level; k++) next.push(next[k - 1] + (next[k - 1] - row[k - 1]) / (4 ** k - 1));
    before = row.at(-1);
    row = next;
  }
  return [before, row.at(-1)];
}

/** The point at a share of a curve's length, by halving on the reference length. */
export function referencePoint(curve, share) {
  const wanted = referenceLength(curve) * share;
  let low = 0,
    high = 1,
    done = 0;
  for (let i = 0; i < 52; i++) {
    const middle = (low + high) / 2,
      more = referenceLength(curve, low, middle);
    if (done + more < wanted) {
      done += more;
      low = middle;
    } else high = middle;
  }
  return value(curve, (low + high) / 2);
}

/** Crossings of two curves, or of one with itself, from 600 chords each, polished by Newton's method. */
export function referenceCrossings(a, b = a) {
  const n = 600,
    own = a === b;
  const pa = Array.from({ length: n + 1 }, (_, i) => value(a, i / n));
  const pb = own ? pa : Array.from({ length: n + 1 }, (_, i) => value(b, i / n));
  const found = [];
  for (let i = 0; i < n; i++) {
    const p = pa[i],
      q = pa[i + 1];
    for (let k = own ? i + 2 : 0; k < n; k++) {
      const r = pb[k],
        s = pb[k + 1];
      if (Math.max(p.x, q.x) < Math.min(r.x, s.x) || Math.max(r.x, s.x) < Math.min(p.x, q.x)) continue;
      if (Math.max(p.y, q.y) < Math.min(r.y, s.y) || Math.max(r.y, s.y) < Math.min(p.y, q.y)) continue;
      const meeting = polished(a, b, (i + 0.5) / n, (k + 0.5) / n);
      if (
        meeting &&
        !(own && Math.abs(meeting.t - meeting.u) < 1e-6) &&
        !found.some(f => Math.abs(f.t - meeting.t) < 1e-7 && Math.abs(f.u - meeting.u) < 1e-7)
      )
        found.push(meeting);
    }
  }
  return found;
}

function polished(a, b, t, u) {
  const slope = (c, k) => {
    const [p, q, r, s] = c,
      w = 1 - k;
    return {
      x: 3 * (w * w * (q.x - p.x) + 2 * w * k * (r.x - q.x) + k * k * (s.x - r.x)),
      y: 3 * (w * w * (q.y - p.y) + 2 * w * k * (r.y - q.y) + k * k * (s.y - r.y)),
    };
  };
  const t0 = t,
    u0 = u;
  for (let i = 0; i < 30; i++) {
    const p = value(a, t),
      q = value(b, u),
      v = slope(a, t),
      w = slope(b, u);
    const ex = q.x - p.x,
      ey = q.y - p.y,
      det = v.x * w.y - v.y * w.x;
    const dt = (ex * w.y - ey * w.x) / det,
      du = (ex * v.y - ey * v.x) / det;
    t += dt;
    u += du;
    if (!(Math.abs(t - t0) < 0.02 && Math.abs(u - u0) < 0.02)) return undefined;
    if (Math.abs(dt) + Math.abs(du) < 1e-15) break;
  }
  const p = value(a, t),
    q = value(b, u);
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 && Math.hypot(p.x - q.x, p.y - q.y) < 1e-9
    ? { t, u, point: p }
    : undefined;
}
