import type { EdgeRef, Thing } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { distinctEdges, sameEdge } from '../edge-refs.js';
import type { Became, EdgeSpan, SpanBecame } from './became.js';

/** A place on an edge (a notch lies on one): mm of arc length from its start. */
export interface PlaceOnEdge extends EdgeRef {
  readonly at: number;
}
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
  const found =
    'edge' in thing && thing.piece !== undefined && thing.edge !== undefined
      ? onEdge(became, thing as Followable & EdgeRef)
      : named(became, thing as Thing);
  return found as readonly object[] as readonly T[];
}

/** Where a thing is after several steps, in their order. */
export const followThrough = <T extends Followable>(steps: readonly Became[], thing: T): readonly T[] =>
  steps.reduce<readonly T[]>((things, step) => things.flatMap(one => follow(step, one)), [thing]);

const thingKinds = ['dart', 'pleat', 'line', 'mark', 'notch', 'seam', 'fastening', 'fabric'] as const;
const sameThing = (a: Thing, b: Thing): boolean =>
  a.piece === b.piece && a.edge === b.edge && thingKinds.every(kind => a[kind] === b[kind]);

const namedIn = ({ things }: Became, thing: Thing): readonly Thing[] =>
  things.flatMap(({ was, now }) => (now && sameThing(was, thing) ? [now] : []));

function named({ things }: Became, thing: Thing): readonly Thing[] {
  const own = things.filter(({ was }) => sameThing(was, thing));
  if (own.length > 0) return own.flatMap(({ now }) => (now ? [now] : []));
  if (thing.piece === undefined || thingKinds.every(kind => thing[kind] === undefined)) return [thing];
  return pieceNow(things, thing.piece).map(piece => ({ ...thing, piece }));
}

function pieceNow(things: Became['things'], piece: string): readonly string[] {
  const own = things.filter(({ was }) => sameThing(was, { piece }));
  return own.length === 0 ? [piece] : own.flatMap(({ now }) => (now?.piece === undefined ? [] : [now.piece]));
}

function onEdge(became: Became, thing: EdgeRef & Followable): readonly object[] {
  const listed = became.edges.filter(({ was }) => sameEdge(was, thing));
  const spans = inOrder(listed);
  const asWhole = 'at' in thing || 'end' in thing || 'from' in thing ? [] : namedIn(became, thing);
  if (asWhole.length > 0) return asWhole;
  if (spans.length === 0) return pieceNow(became.things, thing.piece).map(piece => ({ ...thing, piece }));
  if ('at' in thing) return placesNow(listed, thing.at).map(now => ({ ...thing, ...now }));
  if ('end' in thing) return cornersNow(became, spans, thing.end).map(now => ({ ...thing, ...now }));
  if ('from' in thing) return merged(imagesOf(spans, thing).flatMap(({ now }) => (now ? [now] : [])));
  const refs = spans.flatMap(({ now }) => (now ? [{ piece: now.piece, edge: now.edge }] : []));
  return distinctEdges(refs);
}

/** What became of an edge's stretches, in the order they lay along it. */
export const spansOf = ({ edges }: Became, edge: EdgeRef): readonly SpanBecame[] =>
  inOrder(edges.filter(({ was }) => sameEdge(was, edge)));

const inOrder = (spans: readonly SpanBecame[]): readonly SpanBecame[] =>
  [...spans].sort((a, b) => a.was.from - b.was.from);

const near = tolerances.coincidenceTolerance;

/** A place between two stretches goes with the one that is listed first: the hinge lists what stays before what moves. */
function placesNow(spans: readonly SpanBecame[], at: number): readonly PlaceOnEdge[] {
  const kept = spans.filter(s => s.now && !s.redrawn && s.was.from - near <= at && at <= s.was.to + near);
  const within = kept.filter(({ was }) => was.from + near < at && at < was.to - near);
  const side = kept[0] && at <= kept[0].was.from + near ? 'from' : 'to';
  const chosen = within.length > 0 ? within : kept.filter(({ was }) => Math.abs(was[side] - at) <= near);
  const places = chosen.map(span => imageOf(span, at));
  return places.filter(
    (p, i) => places.findIndex(q => sameEdge(p, q) && Math.abs(p.at - q.at) <= near) === i,
  );
}

/** Rigid stretches are carried by their distance, so that nothing is lost to the rounding of a division. */
function imageOf({ was, now }: SpanBecame, at: number): PlaceOnEdge {
  const { piece, edge, from, to } = now!;
  const along = Math.min(Math.max(at - was.from, 0), was.to - was.from);
  const rate = Math.abs(Math.abs(to - from) - (was.to - was.from)) <= near ? Math.sign(to - from) : undefined;
  return { piece, edge, at: from + along * (rate ?? (to - from) / (was.to - was.from)) };
}

/** The parts of a stretch and what became of each; what is gone is left out, and so are stretches of no length. */
export function imagesOf(spans: readonly SpanBecame[], span: EdgeSpan): readonly SpanBecame[] {
  const low = Math.min(span.from, span.to),
    high = Math.max(span.from, span.to);
  const images = spans.flatMap((one): readonly SpanBecame[] => {
    const from = Math.max(low, one.was.from),
      to = Math.min(high, one.was.to);
    if (!one.now || to - from <= near) return [];
    const whole = from === one.was.from && to === one.was.to;
    const now = whole ? one.now : { ...one.now, from: imageOf(one, from).at, to: imageOf(one, to).at };
    return [{ ...one, was: { ...one.was, from, to }, now }];
  });
  return span.from <= span.to ? images : [...images].reverse().map(turned);
}

const turned = (span: SpanBecame): SpanBecame => ({
  ...span,
  was: { ...span.was, from: span.was.to, to: span.was.from },
  ...(span.now ? { now: { ...span.now, from: span.now.to, to: span.now.from } } : {}),
});

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
