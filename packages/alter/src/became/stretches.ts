import type { EdgeRef } from '@paperhinge/geometry';
import { abs, max, min } from '@paperhinge/geometry/internal';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { PlaceOnEdge } from '@paperhinge/geometry/pattern';
import { eachOnce, sameEdge } from '../edge-refs.js';
import type { Became, EdgeSpan, SpanBecame } from './became.js';

/** What became of an edge's stretches, in the order they lay along it. */
export const spansOf = ({ edges }: Became, edge: EdgeRef): readonly SpanBecame[] =>
  edges.filter(({ was }) => sameEdge(was, edge)).sort((a, b) => a.was.from - b.was.from);

const near = tolerances.coincidenceTolerance;

/** A place between two stretches goes with the one that is listed first: the hinge lists what stays before what moves. */
export function placesNow(spans: readonly SpanBecame[], at: number): readonly PlaceOnEdge[] {
  const kept = spans.filter(s => s.now && !s.redrawn && s.was.from - near <= at && at <= s.was.to + near);
  const within = kept.filter(({ was }) => was.from + near < at && at < was.to - near);
  const side = kept[0] && at <= kept[0].was.from + near ? 'from' : 'to';
  const chosen = within.length > 0 ? within : kept.filter(({ was }) => abs(was[side] - at) <= near);
  const places = chosen.map(span => imageOf(span, at));
  return eachOnce(places, (p, q) => sameEdge(p, q) && abs(p.at - q.at) <= near);
}

/** Rigid stretches are carried by their distance, so that nothing is lost to the rounding of a division. */
function imageOf({ was, now }: SpanBecame, at: number): PlaceOnEdge {
  const { piece, edge, from, to } = now!;
  const along = min(max(at - was.from, 0), was.to - was.from);
  const rate = abs(abs(to - from) - (was.to - was.from)) <= near ? Math.sign(to - from) : undefined;
  return { piece, edge, at: from + along * (rate ?? (to - from) / (was.to - was.from)) };
}

/** The parts of a stretch and what became of each; what is gone is left out, and so are stretches of no length. */
export function imagesOf(spans: readonly SpanBecame[], span: EdgeSpan): readonly SpanBecame[] {
  return span.from <= span.to
    ? imagesBetween(spans, span.from, span.to)
    : [...imagesBetween(spans, span.to, span.from)].reverse().map(turned);
}

/** The same in the direction of the edge. */
export function imagesBetween(
  spans: readonly SpanBecame[],
  low: number,
  high: number,
): readonly SpanBecame[] {
  return spans.flatMap((one): readonly SpanBecame[] => {
    const from = max(low, one.was.from),
      to = min(high, one.was.to);
    if (!one.now || to - from <= near) return [];
    const whole = from === one.was.from && to === one.was.to;
    const now = whole ? one.now : { ...one.now, from: imageOf(one, from).at, to: imageOf(one, to).at };
    return [{ ...one, was: { ...one.was, from, to }, now }];
  });
}

const turned = (span: SpanBecame): SpanBecame => ({
  ...span,
  was: { ...span.was, from: span.was.to, to: span.was.from },
  ...(span.now ? { now: { ...span.now, from: span.now.to, to: span.now.from } } : {}),
});
