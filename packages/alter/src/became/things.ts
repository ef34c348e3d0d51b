import type { Thing } from '@paperhinge/geometry';
import type { PlaceOnEdge } from '@paperhinge/geometry/pattern';
import { distinctEdges, edgeOf, sameEdge } from '../edge-refs.js';
import type { Became } from './became.js';
import { placesNow, spansOf } from './stretches.js';

/** Where a piece, a whole edge, or anything else that has a name is now. */
export const followThing = <T extends Thing>(became: Became, thing: T): readonly T[] =>
  thingNow(became, thing) as readonly Thing[] as readonly T[];

function thingNow(became: Became, thing: Thing): readonly Thing[] {
  const listed = became.things.filter(({ was }) => sameThing(was, thing));
  const now = stillThere(listed);
  const { piece, edge } = thing;
  if (now.length > 0) return now;
  if (piece !== undefined && edge !== undefined) {
    const spans = spansOf(became, { piece, edge });
    return spans.length > 0
      ? distinctEdges(stillThere(spans).map(edgeOf))
      : onPieceNow(became, { ...thing, piece });
  }
  if (listed.length > 0) return now;
  const isWhole = piece === undefined || thingKinds.every(kind => thing[kind] === undefined);
  return isWhole ? [thing] : onPieceNow(became, { ...thing, piece });
}

/** What was listed, as far as it is not gone. */
export const stillThere = <Now>(listed: readonly { readonly now?: Now }[]): readonly Now[] =>
  listed.flatMap(({ now }) => (now ? [now] : []));

/** Where a place on an edge is now. */
export function followPlace<P extends PlaceOnEdge>(became: Became, place: P): readonly P[] {
  const listed = became.edges.filter(({ was }) => sameEdge(was, place));
  if (listed.length === 0) return onPieceNow(became, place);
  return placesNow(listed, place.at).map(now => ({ ...place, ...now }));
}

/** What lies on an edge or a piece that nothing is said of goes with its piece. */
export const onPieceNow = <T extends Thing & { readonly piece: string }>(
  became: Became,
  thing: T,
): readonly T[] =>
  thingNow(became, { piece: thing.piece }).flatMap(({ piece }) =>
    piece === undefined ? [] : [{ ...thing, piece }],
  );

const thingKinds = ['dart', 'pleat', 'line', 'mark', 'notch', 'seam', 'fastening', 'fabric'] as const;
const sameThing = (a: Thing, b: Thing): boolean =>
  a.piece === b.piece && a.edge === b.edge && thingKinds.every(kind => a[kind] === b[kind]);
