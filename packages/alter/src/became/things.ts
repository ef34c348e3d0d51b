import type { EdgeRef, Thing } from '@paperhinge/geometry';
import type { PlaceOnEdge } from '@paperhinge/geometry/pattern';
import { distinctEdges, sameEdge } from '../edge-refs.js';
import type { Became } from './became.js';
import { placesNow, spansOf } from './stretches.js';

/** Where a piece, a whole edge, or anything else that has a name is now. */
export function followThing<T extends Thing>(became: Became, thing: T): readonly T[] {
  const found =
    thing.piece === undefined || thing.edge === undefined
      ? named(became, thing)
      : wholeEdge(became, { ...thing, piece: thing.piece, edge: thing.edge });
  return found as readonly Thing[] as readonly T[];
}

function wholeEdge(became: Became, thing: Thing & EdgeRef): readonly Thing[] {
  const asWhole = namedIn(became, thing);
  if (asWhole.length > 0) return asWhole;
  const spans = spansOf(became, thing);
  if (spans.length === 0) return onPieceNow(became, thing);
  return distinctEdges(spans.flatMap(({ now }) => (now ? [{ piece: now.piece, edge: now.edge }] : [])));
}

/** Where a place on an edge is now. */
export function followPlace<P extends PlaceOnEdge>(became: Became, place: P): readonly P[] {
  const listed = became.edges.filter(({ was }) => sameEdge(was, place));
  if (listed.length === 0) return onPieceNow(became, place);
  return placesNow(listed, place.at).map(now => ({ ...place, ...now }));
}

/** What lies on an edge that nothing is said of goes with its piece. */
export const onPieceNow = <T extends EdgeRef>({ things }: Became, thing: T): readonly T[] =>
  pieceNow(things, thing.piece).map(piece => ({ ...thing, piece }));

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
