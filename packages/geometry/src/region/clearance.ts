import { boundsOf } from '../curve/bounds.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { asCubic, endOf, isLine, pointAt, type Segment, splitAt, startOf } from '../curve/segment.js';
import type { Path } from '../path/path.js';
import { requirePath } from '../path/sound.js';
import { coincidenceTolerance } from '../tolerance.js';
import { distance, type Point } from '../vector.js';

/**
 * The least distance in mm between two paths, 0 where they meet. Error: under `coincidenceTolerance`.
 * Pieces are halved while their chords, less how far each piece bends away from its own, could still be nearer than
 * the best found: branch and bound.
 */
export function clearance(a: Path, b: Path): number {
  requirePath(a);
  requirePath(b);
  const pairs = a.segments.flatMap(s => b.segments.map(r => ({ s, r, apart: boxesApart(s, r) })));
  pairs.sort((p, q) => p.apart - q.apart);
  let best = Number.POSITIVE_INFINITY;
  for (const { s, r, apart } of pairs) {
    if (apart >= best) break;
    best = nearest(s, r, best);
  }
  return best <= coincidenceTolerance ? 0 : best;
}

function boxesApart(a: Segment, b: Segment): number {
  const p = boundsOf(a),
    q = boundsOf(b);
  return Math.hypot(
    Math.max(0, p.min.x - q.max.x, q.min.x - p.max.x),
    Math.max(0, p.min.y - q.max.y, q.min.y - p.max.y),
  );
}

function nearest(a: Segment, b: Segment, known: number): number {
  let best = known;
  const work: (readonly [Segment, Segment])[] = [[a, b]];
  while (work.length > 0) {
    const [p, q] = work.pop()!;
    const bendP = bend(p),
      bendQ = bend(q);
    const chords = chordsApart(startOf(p), endOf(p), startOf(q), endOf(q));
    if (chords - bendP - bendQ >= best - coincidenceTolerance / 2) continue;
    best = Math.min(best, distance(startOf(p), startOf(q)), distance(endOf(p), endOf(q)));
    if (bendP + bendQ <= coincidenceTolerance / 4) {
      best = Math.min(best, chords);
      continue;
    }
    best = Math.min(best, nearestOnSegment(q, pointAt(p, 0.5)).distance);
    const cut = (s: Segment): readonly Segment[] => splitAt(s, 0.5);
    if (bendP >= bendQ) for (const half of cut(p)) work.push([half, q]);
    else for (const half of cut(q)) work.push([p, half]);
  }
  return best;
}

/** No point of a segment is farther than this from its chord, taken as a straight stretch from end to end. */
function bend(segment: Segment): number {
  if (isLine(segment)) return 0;
  const [p, q, r, s] = asCubic(segment);
  // The curve less its chord at even speed is 3u²t e + 3ut² f, with e and f how far the handles are from its thirds.
  const e = Math.hypot(q.x - (2 * p.x + s.x) / 3, q.y - (2 * p.y + s.y) / 3);
  const f = Math.hypot(r.x - (p.x + 2 * s.x) / 3, r.y - (p.y + 2 * s.y) / 3);
  return (3 / 4) * Math.max(e, f);
}

function chordsApart(a: Point, b: Point, c: Point, d: Point): number {
  const side = (p: Point, q: Point, r: Point): number =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return 0;
  const toLine = (p: Point, q: Point, r: Point): number => nearestOnSegment([p, q], r).distance;
  return Math.min(toLine(a, b, c), toLine(a, b, d), toLine(c, d, a), toLine(c, d, b));
}
