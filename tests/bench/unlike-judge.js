// How good a cutting line is whose edges have unlike allowances, told edge by edge by dense sampling: shares nothing with
// the library. Corners are held against the trade's constructions: mitres, square ends, and ends that are mirrored.
import { chordsOf, nearest, placesOn } from './offset-judge.js';
import { pointOf } from './reference.js';

const at = (x, y) => ({ x, y });
const minus = (p, q) => at(p.x - q.x, p.y - q.y);
const dot = (p, q) => p.x * q.x + p.y * q.y;
const pointOn = (s, t) =>
  s.length === 2 ? at(s[0].x + t * (s[1].x - s[0].x), s[0].y + t * (s[1].y - s[0].y)) : pointOf(s, t);
function directionOn(s, t) {
  const d = minus(pointOn(s, Math.min(1, t + 1e-6)), pointOn(s, Math.max(0, t - 1e-6)));
  const n = Math.hypot(d.x, d.y);
  return at(d.x / n, d.y / n);
}
/** Out of a piece that is walked clockwise as seen. */
const outOf = u => at(u.y, -u.x);

/** Past this many of the larger allowance a mitre is cut square to its bisector (trade-notes, 1). */
const limit = 2.5;
/** Shares of an edge at its ends that count as its corner. */
const end = 1e-4;

/**
 * @param ring segments of a closed outline, clockwise, each an edge
 * @param allowances of each edge, mm
 * @param mirrored indices of corners (at the start of that edge) whose end is mirrored, and which of the two edges has
 *   its allowance's end shaped: `before` or `after`
 */
export function unlikeJudge(ring, allowances, mirrored = new Map()) {
  const edges = ring.map((segment, i) => ({
    segment,
    allowance: allowances[i],
    blocks: chordsOf([segment], 800),
  }));
  const whole = chordsOf(ring, 800);
  const corners = ring.map((segment, i) => {
    const before = edges[(i + ring.length - 1) % ring.length],
      after = edges[i];
    const u = directionOn(before.segment, 1),
      v = directionOn(segment, 0);
    return { at: segment[0], before, after, u, v, mirror: mirrored.get(i) };
  });
  const footOn = (edge, p) => {
    const foot = nearest(edge.blocks, p);
    const from = minus(p, pointOn(edge.segment, foot.t));
    const outside = dot(from, outOf(directionOn(edge.segment, foot.t))) > 0;
    const toEnd = Math.min(
      ...[0, 1].map(t => Math.hypot(...Object.values(minus(p, pointOn(edge.segment, t))))),
    );
    return { ...foot, within: foot.t > end && foot.t < 1 - end, beside: outside && foot.far < toEnd - 1e-3 };
  };

  /** Deviation from an edge's parallel, run on straight past its end at a corner. */
  function fromParallel(edge, p, corner) {
    const foot = footOn(edge, p);
    if (foot.within) return Math.abs(foot.far - edge.allowance);
    if (!corner) return Number.POSITIVE_INFINITY;
    const along = edge === corner.before ? corner.u : at(-corner.v.x, -corner.v.y);
    const from = minus(p, corner.at);
    const out = outOf(edge === corner.before ? corner.u : corner.v);
    return dot(from, along) < -1e-3 ? Number.POSITIVE_INFINITY : Math.abs(dot(from, out) - edge.allowance);
  }
  /** A place's image in the stitching line of the edge whose allowance is shaped, at its corner. */
  function imageIn({ at: c, u, v, mirror }, p) {
    const out = outOf(mirror === 'before' ? u : v);
    const height = dot(minus(p, c), out);
    return at(p.x - 2 * height * out.x, p.y - 2 * height * out.y);
  }
  const crossingOf = corner => (corner.mirror === 'before' ? corner.after : corner.before);

  /** How far a place lies from what the trade draws at a corner. */
  function fromCorner(corner, p) {
    const { at: c, before, after, u, v, mirror } = corner;
    const [a, b] = [before.allowance, after.allowance];
    const from = minus(p, c);
    if (Math.hypot(from.x, from.y) > (limit + 1) * Math.max(a, b)) return Number.POSITIVE_INFINITY;
    const runOn = Math.min(fromParallel(before, p, corner), fromParallel(after, p, corner));
    if (mirror) return Math.min(runOn, fromParallel(crossingOf(corner), imageIn(corner, p), corner));
    const [n, m] = [outOf(u), outOf(v)];
    const w = at(n.x + m.x, n.y + m.y),
      size = Math.hypot(w.x, w.y);
    const square = Math.abs(dot(from, w) / size - limit * Math.max(a, b));
    // A wider allowance ends square to its edge where the parallels would meet over it.
    const ends = [n, m].map(k => Math.abs(dot(from, at(-k.y, k.x))));
    const round = Math.abs(Math.hypot(from.x, from.y) - Math.min(a, b));
    return Math.min(runOn, square, ...ends, round);
  }

  /** Whether a place lies on the mirrored end of an allowance, where it may be nearer its own edge. */
  const onMirrored = p =>
    corners.some(c => c.mirror && fromParallel(crossingOf(c), imageIn(c, p), c) < 0.005);
  /** Whether a place lies past the stitching line of a shaped edge, where the crossing edge's allowance gives way to the mirrored end. */
  const givesWay = (edge, p) =>
    corners.some(c => {
      if (!c.mirror || edge !== crossingOf(c)) return false;
      const from = minus(p, c.at);
      const reach = (limit + 1) * Math.max(c.before.allowance, c.after.allowance);
      return (
        Math.hypot(from.x, from.y) < reach && dot(from, outOf(c.mirror === 'before' ? c.u : c.v)) > -1e-3
      );
    });
  /** Whether the mirrored end of an allowance cuts off a place of its parallel. */
  const isCutOff = (edge, p) =>
    corners.some(c => {
      if (!c.mirror || edge !== (c.mirror === 'before' ? c.before : c.after)) return false;
      const crossing = crossingOf(c),
        image = imageIn(c, p);
      const foot = footOn(crossing, image);
      const beyond = dot(minus(image, c.at), outOf(c.mirror === 'before' ? c.v : c.u)) - crossing.allowance;
      return (foot.within ? foot.far - crossing.allowance : beyond) > -1e-3;
    });

  const parallels = edges.flatMap(edge =>
    Array.from({ length: 99 }, (_, i) => {
      const t = (i + 1) / 100,
        p = pointOn(edge.segment, t),
        n = outOf(directionOn(edge.segment, t));
      return { edge, p: at(p.x + edge.allowance * n.x, p.y + edge.allowance * n.y) };
    }),
  );
  /** Whether a place lies within a corner's mitre, which reaches farther than either edge. */
  const isWithinMitre = p =>
    corners.some(({ at: c, before, after, u, v }) => {
      const from = minus(p, c);
      const past = dot(from, u) > 1e-3 && dot(from, v) < -1e-3;
      return (
        past && dot(from, outOf(u)) < before.allowance - 1e-3 && dot(from, outOf(v)) < after.allowance - 1e-3
      );
    });
  const isKept = ({ edge, p }) =>
    !isInside(whole, p) &&
    !isWithinMitre(p) &&
    !isCutOff(edge, p) &&
    !givesWay(edge, p) &&
    edges.every(other => {
      const foot = footOn(other, p);
      return !foot.within || !foot.beside || foot.far > other.allowance - (other === edge ? 1e-3 : -1e-3);
    });

  /** Whether a place lies within reach of the mirrored end of two other edges, which may cover it as a mitre does. */
  const nearOthersEnd = ({ edge, p }) =>
    corners.some(c => {
      if (!c.mirror || edge === c.before || edge === c.after) return false;
      const from = minus(p, c.at);
      return Math.hypot(from.x, from.y) < (limit + 1) * Math.max(c.before.allowance, c.after.allowance);
    });

  /** `near`: into an allowance; `far`: from any parallel or corner of the trade; `uncovered`: a true parallel's place. */
  return segments => {
    let near = 0,
      far = 0;
    for (const p of segments.flatMap(placesOn)) {
      const inside = isInside(whole, p);
      let off = Math.min(...corners.map(corner => fromCorner(corner, p)));
      for (const edge of edges) {
        const foot = footOn(edge, p);
        if (!foot.within) continue;
        off = Math.min(off, Math.abs(foot.far - edge.allowance));
        if (inside || (foot.beside && foot.far < edge.allowance && !onMirrored(p) && !givesWay(edge, p)))
          near = Math.max(near, inside ? edge.allowance + foot.far : edge.allowance - foot.far);
      }
      far = Math.max(far, off);
    }
    const made = chordsOf(segments, 300);
    const uncovered = parallels
      .filter(place => isKept(place) && !(nearOthersEnd(place) && isInside(made, place.p)))
      .reduce((most, { p }) => Math.max(most, nearest(made, p).far), 0);
    return { near, far, uncovered };
  };
}

function isInside(blocks, p) {
  let odd = false;
  for (const { own, y0, y1 } of blocks)
    for (const { a, b } of y0 <= p.y && p.y <= y1 ? own : [])
      if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  return odd;
}
