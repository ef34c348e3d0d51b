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
export function nearest(blocks, p) {
  const reach = blocks.map(block =>
    Math.hypot(Math.max(block.x0 - p.x, 0, p.x - block.x1), Math.max(block.y0 - p.y, 0, p.y - block.y1)),
  );
  const first = reach.indexOf(Math.min(...reach));
  let best = nearestOf(blocks[first].own, p, { far: Number.POSITIVE_INFINITY });
  for (let i = 0; i < blocks.length; i++)
    if (i !== first && reach[i] < best.far) best = nearestOf(blocks[i].own, p, best);
  return best;
}

function nearestOf(chords, p, before) {
  let best = before;
  for (const c of chords) {
    const x = c.b.x - c.a.x,
      y = c.b.y - c.a.y,
      square = x * x + y * y || 1;
    const k = Math.min(1, Math.max(0, ((p.x - c.a.x) * x + (p.y - c.a.y) * y) / square));
    const d = Math.hypot(p.x - c.a.x - k * x, p.y - c.a.y - k * y);
    if (d < best.far) best = { far: d, source: c.source, t: c.from + (c.to - c.from) * k };
  }
  return best;
}

function isInside(blocks, p) {
  let odd = false;
  for (const { own, y0, y1 } of blocks)
    for (const { a, b } of y0 <= p.y && p.y <= y1 ? own : [])
      if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
  return odd;
}

/** Corners of a ring: where each is, and the directions in which the outline comes to it and leaves it. */
function cornersOf(ring) {
  return ring.map((segment, i) => {
    const u = directionOn(ring[(i + ring.length - 1) % ring.length], 1),
      v = directionOn(segment, 0);
    const turn = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
    return { at: segment[0], u, v, turn, sharp: Math.abs(turn) > smooth };
  });
}

const rightOf = (u, d) => at(d * u.y, -d * u.x);
const plus = (p, q, k = 1) => at(p.x + k * q.x, p.y + k * q.y);
const dot = (p, q) => p.x * q.x + p.y * q.y;
const between = (p, q, n) => Array.from({ length: n }, (_, i) => plus(p, plus(q, p, -1), (i + 0.5) / n));

/**
 * Places of the mitre that a corner has at a distance: the two parallels run on straight to where they cross. Past
 * `limit` distances from the corner it is cut square to the bisector where `isCut`; otherwise nothing is asked there.
 */
function mitreAt({ at: c, u, v, turn, sharp }, d, { limit, isCut }) {
  if (!sharp || turn * d < 0) return [];
  const a = plus(c, rightOf(u, d)),
    b = plus(c, rightOf(v, d));
  const run = Math.abs(d) * Math.tan(Math.abs(turn) / 2);
  if (1 <= limit * Math.cos(turn / 2)) {
    const tip = plus(a, u, run);
    return [...between(a, tip, 20), ...between(tip, b, 20), tip];
  }
  if (!isCut) return [];
  // Along a parallel, one mm is sin(turn / 2) of bisector; the parallel begins at cos(turn / 2) distances of it.
  const kept = (Math.abs(d) * (limit - Math.cos(turn / 2))) / Math.sin(Math.abs(turn) / 2);
  const p = plus(a, u, kept),
    q = plus(b, v, -kept);
  return [...between(a, p, 20), ...between(p, q, 20), ...between(q, b, 20), p, q];
}

/** An outline made ready for judging parallels whose corners are mitred to a `limit`. */
export function judgeOf(ring, rule) {
  const blocks = chordsOf(ring, 1500);
  const corners = cornersOf(ring);
  /** Corners past the ends of both whose edges a place lies: there a mitre may reach farther than the distance. */
  const pastCorners = p =>
    corners.filter(({ at: c, u, v, sharp }) => {
      const from = plus(p, c, -1);
      return sharp && dot(from, u) >= 0 && dot(from, v) <= 0;
    });
  /** How far a place past a corner lies outside the corner's two parallels run on straight; no mitre reaches there. */
  const outsideMitre = (p, { at: c, u, v }, d) => {
    const from = plus(p, c, -1),
      side = Math.sign(d);
    return Math.max(dot(from, rightOf(u, side)), dot(from, rightOf(v, side))) - Math.abs(d);
  };
  const isWithinMitre = (p, d) => pastCorners(p).some(corner => outsideMitre(p, corner, d) < -1e-4);
  /** The true trimmed parallel: square out from each place, and the mitres, kept where neither outline nor mitre is nearer. */
  const truths = new Map();
  const truth = d => {
    const isClear = q =>
      nearest(blocks, q).far > Math.abs(d) - 1e-4 && isInside(blocks, q) === d < 0 && !isWithinMitre(q, d);
    const squareOut = segment =>
      Array.from({ length: 199 }, (_, i) =>
        plus(pointOn(segment, (i + 1) / 200), rightOf(directionOn(segment, (i + 1) / 200), d)),
      );
    if (!truths.has(d))
      truths.set(d, {
        parallels: ring.flatMap(squareOut).filter(isClear),
        mitres: corners.flatMap(corner => mitreAt(corner, d, rule)).filter(isClear),
      });
    return truths.get(d);
  };
  const cornerAt = ({ source, t }) =>
    (t < 1e-6 && corners[source].sharp) || (t > 1 - 1e-6 && corners[(source + 1) % ring.length].sharp);
  const error = (p, d) => {
    const foot = nearest(blocks, p),
      amount = Math.abs(d);
    if (isInside(blocks, p) !== d < 0) return { near: amount + foot.far, far: 0, atCorner: false };
    const outside = [foot.far - amount, ...pastCorners(p).map(corner => outsideMitre(p, corner, d))];
    return { near: amount - foot.far, far: Math.min(...outside), atCorner: cornerAt(foot) };
  };
  /**
   * `near`, `far`: by how much any place of a result is too near the outline or too far from it (at a corner: outside
   * the mitre). `uncovered`: the farthest any place of the true parallel, mitres included, lies from the result.
   * `parallels`: the worst of the three with corners left out, as some make them round.
   */
  const judged = (loops, d) => {
    const errors = loops
      .flat()
      .flatMap(placesOn)
      .map(p => error(p, d));
    const made = loops.length > 0 ? chordsOf(loops.flat(), 500) : [];
    const farthest = places =>
      places.reduce((most, q) => Math.max(most, made.length > 0 ? nearest(made, q).far : 1e3), 0);
    const most = of => errors.reduce((worst, e) => Math.max(worst, of(e)), 0);
    const { parallels, mitres } = truth(d);
    const uncovered = farthest(parallels);
    return {
      near: most(e => e.near),
      far: most(e => e.far),
      uncovered: Math.max(uncovered, farthest(mitres)),
      parallels: Math.max(
        uncovered,
        most(e => (e.atCorner ? 0 : Math.max(e.near, e.far))),
      ),
    };
  };
  return { judged };
}

/** Places on a segment of a result, its ends left out: there its neighbour is. */
export const placesOn = segment => {
  const n = segment.length === 4 ? 40 : Math.min(12, Math.max(3, Math.ceil(away(...segment) / 4)));
  return Array.from({ length: n }, (_, i) => pointOn(segment, (i + 0.5) / n));
};

/** rad and mm. Chords of a true parallel turn and reach no farther than this: at 25 mm they lie within 1e-4 mm of it. */
const finest = { turn: 0.005, reach: 0.2 };

/** The untrimmed true parallel of a curve as chords in blocks, and places on it. */
export function trueParallel(curve, d) {
  const place = t => {
    const u = directionOn(curve, t);
    return { t, u, q: plus(pointOn(curve, t), rightOf(u, d)) };
  };
  const walk = (a, b) => {
    const turn = Math.abs(Math.atan2(a.u.x * b.u.y - a.u.y * b.u.x, dot(a.u, b.u)));
    if ((turn <= finest.turn && away(a.q, b.q) <= finest.reach) || b.t - a.t < 1e-6) return [[a.q, b.q]];
    const middle = place((a.t + b.t) / 2);
    return [...walk(a, middle), ...walk(middle, b)];
  };
  const places = Array.from({ length: 201 }, (_, i) => place(i / 200));
  const chords = places.slice(1).flatMap((p, i) => walk(places[i], p));
  return { blocks: chordsOf(chords, 1), places: places.slice(1, -1).map(({ q }) => q) };
}
