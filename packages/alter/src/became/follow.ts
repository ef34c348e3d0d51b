import type { EdgeRef, Thing } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { PlaceOnEdge } from '@paperhinge/geometry/pattern';
import { sameEdge } from '../edge-refs.js';
import type { Became, EdgeSpan, SpanBecame } from './became.js';
import { imagesOf, spansOf } from './stretches.js';
import { followPlace, followThing, onPieceNow } from './things.js';

/** One end of an edge, `start` and `end` in clockwise order. */
export interface EdgeCorner extends EdgeRef {
  readonly end: 'start' | 'end';
}
/** What can be followed through a step: a piece, edge, corner, place or stretch, dart, pleat, line, mark or seam. */
export type Followable = Thing | PlaceOnEdge | EdgeCorner | EdgeSpan;

/**
 * Where a thing of the pattern as it was is now: nowhere where it is gone, in two places where a half was mirrored.
 *
 * @example follow(became, { piece: 'front', edge: 'side', at: 120 }) // [{ piece: 'front', edge: 'side', at: 95 }]
 */
export function follow<T extends Followable>(became: Became, thing: T): readonly T[] {
  const found: readonly object[] =
    'at' in thing
      ? followPlace(became, thing)
      : 'end' in thing || 'from' in thing
        ? onEdge(became, thing)
        : followThing(became, thing as Thing);
  return found as readonly T[];
}

/** Where a thing is after several steps, in their order. */
export const followThrough = <T extends Followable>(steps: readonly Became[], thing: T): readonly T[] =>
  steps.reduce<readonly T[]>((things, step) => things.flatMap(one => follow(step, one)), [thing]);

function onEdge(became: Became, thing: EdgeRef & (EdgeCorner | EdgeSpan)): readonly object[] {
  const spans = spansOf(became, thing);
  if (spans.length === 0) return onPieceNow(became, thing);
  if ('end' in thing) return cornersNow(became, spans, thing.end).map(now => ({ ...thing, ...now }));
  return merged(imagesOf(spans, thing).flatMap(({ now }) => (now ? [now] : [])));
}

const near = tolerances.coincidenceTolerance;

/** Stretches that follow each other on one edge in one direction are one, with all that was let in between them. */
function merged(spans: readonly EdgeSpan[]): readonly EdgeSpan[] {
  const result: EdgeSpan[] = [];
  for (const span of spans) {
    const last = result.findIndex(
      other =>
        sameEdge(other, span) &&
        Math.sign(other.to - other.from) === Math.sign(span.to - span.from) &&
        (span.from - other.to) * Math.sign(span.to - span.from) >= -near,
    );
    if (last < 0) result.push(span);
    else result[last] = { ...result[last]!, to: span.to };
  }
  return result;
}

/** An end of an edge goes with the nearest stretch that is left, if that is now the outermost of its edge. */
function cornersNow(
  became: Became,
  spans: readonly SpanBecame[],
  end: EdgeCorner['end'],
): readonly EdgeCorner[] {
  const left = spans.filter(s => s.now);
  const bound = Math[end === 'start' ? 'min' : 'max'](
    ...left.map(s => s.was[end === 'start' ? 'from' : 'to']),
  );
  const outermost = left.filter(s => Math.abs(s.was[end === 'start' ? 'from' : 'to'] - bound) <= near);
  return outermost.flatMap(({ now }): readonly EdgeCorner[] => {
    const { piece, edge, from, to } = now!;
    const there = end === 'start' ? from : to;
    const onIt = became.edges.flatMap(s => (s.now && sameEdge(s.now, now!) ? [s.now.from, s.now.to] : []));
    const first = from <= to === (end === 'start');
    const isOuter = first ? there <= Math.min(...onIt) + near : there >= Math.max(...onIt) - near;
    return isOuter ? [{ piece, edge, end: first ? 'start' : 'end' }] : [];
  });
}
