import { fitHandles, type HermiteFit, type Station } from '../curve/hermite-fit.js';
import { hobbyCubic } from '../curve/hobby.js';
import { nearestOnSegment } from '../curve/nearest.js';
import { isParallel } from '../curve/offset-certificate.js';
import { powerForm } from '../curve/power-form.js';
import { asCubic, between, type Cubic, endOf, line, type Segment } from '../curve/segment.js';
import { requirePoint, requireTolerance } from '../curve/sound.js';
import { refusal } from '../curve/tellings.js';
import { coincidenceTolerance, fitTolerance } from '../tolerance.js';
import type { Point } from '../vector.js';
import { chain, circleDirection, directed, distinct, opposite } from './fair-line.js';
import { type Path, pathOf } from './path.js';
import { type SmoothSource, smoothSource } from './smooth-source.js';

/**
 * A fair curve between two stations that leaves and arrives in their directions (any length but 0), with one
 * tangent throughout; `through` points, in order, are passed within `tolerance` mm. Of the fair curve through them
 * all, the fewest cubics that keep the tolerance.
 * @throws PatternError `no-direction` where a direction is zero
 */
export function fairCurve(
  from: Station,
  to: Station,
  tolerance = fitTolerance,
  through: readonly Point[] = [],
): Path {
  [from.point, to.point, ...through].forEach(requirePoint);
  requireTolerance(tolerance);
  const first = directed(from.direction),
    last = directed(to.direction);
  const points = distinct([from.point, ...through, to.point]);
  if (points.length === 2) return pathOf(hobbyCubic(from.point, first, to.point, last));
  return fewestCubics(smoothSource(chain(points, first, last)), tolerance);
}

/**
 * The fewest cubics, in one smooth chain, that pass every point within `tolerance` mm. Where no end direction is
 * given it is that of the circle through the three points there. Two points without directions give a line.
 * @throws PatternError `too-few-points`: fewer than two that differ; `no-direction`
 */
export function fitCurve(
  points: readonly Point[],
  startDirection?: Point,
  endDirection?: Point,
  tolerance = fitTolerance,
): Path {
  points.forEach(requirePoint);
  requireTolerance(tolerance);
  const knots = distinct(points);
  if (knots.length < 2) throw refusal('too-few-points', {});
  if (knots.length === 2 && !startDirection && !endDirection) return pathOf(line(knots[0]!, knots[1]!));
  const first = startDirection
    ? directed(startDirection)
    : circleDirection(knots[0]!, knots[1]!, knots[2] ?? knots[1]!);
  const [y, x, w] = [knots.at(-1)!, knots.at(-2)!, knots.at(-3) ?? knots.at(-2)!];
  const last = endDirection ? directed(endDirection) : opposite(circleDirection(y, x, w));
  return fewestCubics(smoothSource(chain(knots, first, last)), tolerance);
}

/**
 * Covers a smooth source from its start, each cubic as long as the tolerance lets it be, and proven to lie within
 * it of the source, all along, in both directions.
 */
export function fewestCubics(source: SmoothSource, tolerance: number): Path {
  const segments: Segment[] = [];
  let done = 0,
    guess = source.length;
  while (done < source.length) {
    const piece = longest(source, done, guess, tolerance);
    segments.push(piece.curve);
    guess = Math.max(piece.to - done, source.length / longestHops);
    done = piece.to;
  }
  return { segments };
}

const longestHops = 1e4;

function longest(source: SmoothSource, from: number, guess: number, tolerance: number) {
  const whole = source.length;
  let to = Math.min(whole, from + guess);
  let fit = fitStretch(source, from, to, tolerance);
  // Grow or shrink by doubling, then halve between the last that fits and the first that does not.
  let good: { to: number; curve: Segment } | undefined,
    bad = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 60; i++) {
    if (fit.deviation <= tolerance) {
      good = { to, curve: fit.curve };
      if (to >= whole) return good;
      if (bad < Number.POSITIVE_INFINITY && bad - to <= (to - from) * fineness) return good;
      to = bad < Number.POSITIVE_INFINITY ? (to + bad) / 2 : Math.min(whole, from + 2 * (to - from));
    } else {
      bad = to;
      if (good && bad - good.to <= (good.to - from) * fineness) return good;
      if (!good && to - from <= coincidenceTolerance)
        return { to, curve: line(source.stationAt(from).point, source.stationAt(to).point) };
      to = good ? (good.to + bad) / 2 : from + (to - from) / 2;
    }
    fit = fitStretch(source, from, to, tolerance);
  }
  return good ?? { to: bad, curve: line(source.stationAt(from).point, source.stationAt(bad).point) };
}

/** A stretch within this share of the longest that fits is taken for it. */
const fineness = 1 / 64;

function fitStretch(source: SmoothSource, from: number, to: number, tolerance: number): HermiteFit {
  const start = source.stationAt(from),
    end = source.stationAt(to);
  const inner: Station[] = [];
  for (let i = 1; i < stations; i++) inner.push(source.stationAt(from + ((to - from) * i) / stations));
  const fit = fitHandles(start, end, inner, tolerance);
  if (fit.deviation > tolerance || isNear(fit.curve, source.stretch(from, to), tolerance)) return fit;
  return { ...fit, deviation: Number.POSITIVE_INFINITY };
}

/** Proven, not sampled: each segment against the part of the curve between the feet of its ends ({@link isParallel}). */
function isNear(curve: Cubic, stretch: readonly Segment[], tolerance: number): boolean {
  let u = 0;
  return stretch.every((segment, i) => {
    const next = i === stretch.length - 1 ? 1 : nearestOnSegment(curve, endOf(segment)).t;
    if (next < u) return false;
    const part = powerForm(asCubic(between(curve, u, next)));
    u = next;
    return isParallel(
      part,
      { curve: powerForm(asCubic(segment)), from: 0, to: 1 },
      { distance: 0, sense: 1 },
      tolerance,
    );
  });
}

const stations = 16;
