// How good a parallel of a closed outline is, told by dense sampling alone: shares nothing with the library.
import { pointOf } from './reference.js';

const at = (x, y) => ({ x, y });
const away = (p, q) => Math.hypot(p.x - q.x, p.y - q.y);
const pointOn = (segment, t) =>
  segment.length === 2
    ? at(segment[0].x + (segment[1].x - segment[0].x) * t, segment[0].y + (segment[1].y - segment[0].y) * t)
    : pointOf(segment, t);
/** Unit direction of a segment, from two points a hair apart. */
function directionOn(segment, t) {
  const a = pointOn(segment, Math.max(0, t - 1e-6)),
    b = pointOn(segment, Math.min(1, t + 1e-6)),
    n = away(a, b);
  return at((b.x - a.x) / n, (b.y - a.y) / n);
}

/** rad. Below this two directions make no corner: the outlines' smooth joints are rounded to a thousandth of a mm. */
const smooth = 0.01;
const blockOf = 32;

/** Chords of a closed ring of segments, in blocks with boxes, each with where it comes from. */
export function chordsOf(ring, perCurve) {
  const chords = ring.flatMap((segment, source) => {
    const n = segment.length === 2 ? 1 : perCurve;
    return Array.from({ length: n }, (_, i) => ({
      a: pointOn(segment, i / n),
      b: pointOn(segment, (i + 1) / n),
      source,
      from: i / n,
      to: (i + 1) / n,
    }));
  });
  const blocks = [];
  for (let i = 0; i < chords.length; i += blockOf) {
    const own = chords.slice(i, i + blockOf);
    const xs = own.flatMap(c => [c.a.x, c.b.x]),
      ys = own.flatMap(c => [c.a.y, c.b.y]);
    blocks.push({ own, x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys) });
  }
  return blocks;
}

/** The nearest place on chords: how far, on which segment and at which parameter of it. */
function nearest(blocks, p) {
  let best = { far: Number.POSITIVE_INFINITY };
  const reach = blocks
    .map(block => ({
      block,
      far: Math.hypot(
        Math.max(block.x0 - p.x, 0, p.x - block.x1),
        Math.max(block.y0 - p.y, 0, p.y - block.y1),
      ),
    }))
    .sort((a, b) => a.far - b.far);
  for (const { block, far } of reach) {
    if (far >= best.far) break;
    for (const c of block.own) {
      const x = c.b.x - c.a.x,
        y = c.b.y - c.a.y,
        square = x * x + y * y || 1;
      const k = Math.min(1, Math.max(0, ((p.x - c.a.x) * x + (p.y - c.a.y) * y) / square));
      const d = Math.hypot(p.x - c.a.x - k * x, p.y - c.a.y - k * y);
      if (d < best.far) best = { far: d, source: c.source, t: c.from + (c.to - c.from) * k };
    }
  }
  return best;
}

function isInside(blocks, p) {
  let odd = false;
  for (const { own } of blocks)
    for (const { a, b } of own)
      if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  return odd;
}

/** An outline made ready for judging. */
export function judgeOf(ring) {
  const blocks = chordsOf(ring, 1500);
  const corners = ring.map((segment, i) => {
    const u = directionOn(ring[(i + ring.length - 1) % ring.length], 1),
      v = directionOn(segment, 0);
    return Math.abs(Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y)) > smooth;
  });
  /** Whether a place lies past the ends of both edges at a corner, where a mitre may reach farther than the distance. */
  const isPastCorner = p =>
    ring.some((segment, i) => {
      if (!corners[i]) return false;
      const c = segment[0],
        u = directionOn(ring[(i + ring.length - 1) % ring.length], 1),
        v = directionOn(segment, 0);
      return (p.x - c.x) * u.x + (p.y - c.y) * u.y >= 0 && (p.x - c.x) * v.x + (p.y - c.y) * v.y <= 0;
    });
  const cornerAt = ({ source, t }) =>
    t < 1e-6 ? corners[source] : t > 1 - 1e-6 ? corners[(source + 1) % ring.length] : false;
  /** The true trimmed parallel: square out from each place, kept where nothing of the outline comes nearer. */
  const truth = d =>
    ring.flatMap(segment =>
      Array.from({ length: 199 }, (_, i) => {
        const t = (i + 1) / 200,
          p = pointOn(segment, t),
          u = directionOn(segment, t);
        return at(p.x + d * u.y, p.y - d * u.x);
      }).filter(q => nearest(blocks, q).far > Math.abs(d) - 1e-4),
    );
  /**
   * `off`: the farthest any place of a result lies from the true distance; at a mitred corner only being too near
   * counts, or past any limit. `uncovered`: the farthest any place of the true parallel lies from the result.
   */
  const judged = (loops, d) => {
    let off = 0;
    for (const loop of loops)
      for (const segment of loop) {
        const n = segment.length === 2 ? 12 : 40;
        for (let i = 0; i < n; i++) {
          const p = pointOn(segment, (i + 0.5) / n);
          const foot = nearest(blocks, p);
          const amount = Math.abs(d);
          if (isInside(blocks, p) !== d < 0) off = Math.max(off, amount + foot.far);
          else if (!cornerAt(foot) && (foot.far <= amount || !isPastCorner(p)))
            off = Math.max(off, Math.abs(foot.far - amount));
          else off = Math.max(off, amount - foot.far, foot.far - 10.5 * amount);
        }
      }
    const made = loops.length > 0 ? chordsOf(loops.flat(), 200) : [];
    let uncovered = 0;
    for (const q of truth(d)) uncovered = Math.max(uncovered, made.length > 0 ? nearest(made, q).far : 1e3);
    return { off, uncovered };
  };
  return { judged };
}
