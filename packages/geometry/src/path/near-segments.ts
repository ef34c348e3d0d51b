import { abs, infinite } from '../arithmetic.js';
import { type Box, boundsOf, boxAround, boxesMeet } from '../curve/bounds.js';
import type { Segment } from '../curve/segment.js';
import { coincidenceTolerance } from '../tolerance.js';
import type { Path } from './path.js';

/** The boxes of a stretch of a path's segments: one segment, or two halves of the stretch. */
interface Stretch {
  readonly box: Box;
  /** Of its one segment. */
  readonly index: number;
  readonly halves?: readonly [Stretch, Stretch];
}

/** Of the two paths that are held against each other. */
interface Sides {
  readonly a: readonly Segment[];
  readonly b: readonly Segment[];
  readonly visit: VisitPair;
}

/** Told of two segments by their indices; answers true to hear of no more. */
export type VisitPair = (i: number, k: number) => boolean;

/**
 * Every two segments, one of each path, that may come within a coincidence of each other, and few others. A path is
 * halved again and again into stretches that follow it, each with its box, and only stretches that come near are
 * looked into: a stretch of short segments is small wherever it lies, so the work stays near the number of segments
 * and of pairs. Long slanting segments side by side, whose boxes do meet, are told apart by their chords.
 */
export function forEachNearPair(a: Path, b: Path, visit: VisitPair): void {
  if (a.segments.length === 0 || b.segments.length === 0) return;
  between(stretchesOf(a), stretchesOf(b), { a: a.segments, b: b.segments, visit });
}

/** The same of two different segments of one path, each pair once. */
export function forEachNearPairWithin(path: Path, visit: VisitPair): void {
  const { segments } = path;
  if (segments.length > 0) within(stretchesOf(path), { a: segments, b: segments, visit });
}

function stretchesOf({ segments }: Path): Stretch {
  const stretch = (from: number, to: number): Stretch => {
    if (to - from === 1) return { box: boundsOf(segments[from]!), index: from };
    const middle = (from + to) >> 1;
    const halves = [stretch(from, middle), stretch(middle, to)] as const;
    return { box: boxAround(halves[0].box, halves[1].box), index: from, halves };
  };
  return stretch(0, segments.length);
}

function within({ halves }: Stretch, sides: Sides): boolean {
  if (!halves) return false;
  const [first, second] = halves;
  return within(first, sides) || within(second, sides) || between(first, second, sides);
}

function between(a: Stretch, b: Stretch, sides: Sides): boolean {
  if (!boxesMeet(a.box, b.box, coincidenceTolerance)) return false;
  if (!a.halves && !b.halves) {
    const p = sides.a[a.index]!,
      q = sides.b[b.index]!;
    return !apartAcross(p, q) && !apartAcross(q, p) && sides.visit(a.index, b.index);
  }
  const split = b.halves === undefined || (a.halves !== undefined && sizeOf(a) >= sizeOf(b));
  return split
    ? between(a.halves![0], b, sides) || between(a.halves![1], b, sides)
    : between(a, b.halves![0], sides) || between(a, b.halves![1], sides);
}

const sizeOf = ({ box: { min, max } }: Stretch): number => max.x - min.x + max.y - min.y;

/** Whether all control points of `b` lie to one side of those of `a`, seen along the chord of `a`. */
function apartAcross(a: Segment, b: Segment): boolean {
  const { x, y } = a[0];
  const end = a[a.length - 1]!;
  const dx = end.x - x,
    dy = end.y - y;
  let low = 0,
    high = 0;
  for (let i = 1; i < a.length - 1; i++) {
    const off = dx * (a[i]!.y - y) - dy * (a[i]!.x - x);
    if (off < low) low = off;
    if (off > high) high = off;
  }
  let under = infinite,
    over = -infinite;
  for (const p of b) {
    const off = dx * (p.y - y) - dy * (p.x - x);
    if (off < under) under = off;
    if (off > over) over = off;
  }
  const margin = coincidenceTolerance * (abs(dx) + abs(dy));
  return under > high + margin || over < low - margin;
}
