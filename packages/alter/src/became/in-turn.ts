import { sameEdge } from '../edge-refs.js';
import type { Became, EdgeSpan, SpanBecame, ThingBecame } from './became.js';
import { follow } from './follow.js';
import { imagesOf, spansOf } from './stretches.js';

/** What became of what in two steps, one after the other, as one. */
export function inTurn(first: Became, second: Became): Became {
  const listed = (edge: SpanBecame['was']): boolean => first.edges.some(s => sameEdge(s.was, edge));
  return {
    edges: [
      ...first.edges.flatMap(span => onwards(span, second)),
      // What the first step left alone is as the second made it.
      ...second.edges.filter(span => !listed(span.was)),
    ],
    things: [
      ...first.things.flatMap(({ was, now }): readonly ThingBecame[] => {
        const later = now ? follow(second, now) : [];
        return later.length > 0 ? later.map(thing => ({ was, now: thing })) : [{ was }];
      }),
      ...edgesNoMore(first, second),
      ...second.things.filter(
        ({ was }) => !first.things.some(one => JSON.stringify(one.was) === JSON.stringify(was)),
      ),
    ],
  };
}

/** Edges that the first step carried on and the second made no edges of: it says what is there in their place. */
function edgesNoMore(first: Became, second: Became): readonly ThingBecame[] {
  const named = (edge: SpanBecame['was']) =>
    second.things.find(({ was, now }) => now && was.edge !== undefined && isEdge(was, edge))?.now;
  const edges = first.edges.filter(({ was }, i, all) => all.findIndex(one => sameEdge(one.was, was)) === i);
  return edges.flatMap(({ was: { piece, edge } }): readonly ThingBecame[] => {
    const own = first.edges.filter(({ was }) => sameEdge(was, { piece, edge }));
    const now = own.map(span => span.now && named(span.now));
    return now.every(one => one !== undefined) ? [{ was: { piece, edge }, now: now[0]! }] : [];
  });
}

const isEdge = (thing: ThingBecame['was'], { piece, edge }: SpanBecame['was']): boolean =>
  JSON.stringify(thing) === JSON.stringify({ piece, edge });

function onwards(span: SpanBecame, second: Became): readonly SpanBecame[] {
  const { was, now, redrawn } = span;
  if (!now) return [span];
  const later = spansOf(second, now);
  if (later.length === 0) return follow(second, now).map(one => ({ ...span, now: one }));
  const images = imagesOf(later, now);
  if (images.length === 0) return [{ was }];
  return images.map(image => ({
    was: backwards(was, now, image.was),
    now: image.now!,
    ...(redrawn || image.redrawn ? { redrawn: true as const } : {}),
  }));
}

/** The part of `was` that became the part `image` of `now`. */
function backwards(was: EdgeSpan, now: EdgeSpan, image: EdgeSpan): EdgeSpan {
  const rate = (was.to - was.from) / (now.to - now.from);
  return {
    ...was,
    from: was.from + (image.from - now.from) * rate,
    to: was.from + (image.to - now.from) * rate,
  };
}
