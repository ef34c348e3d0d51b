import {
  type EdgeRef,
  edgePath,
  type Pattern,
  pathLength,
  pieceNamed,
  type Seam,
  walkSeam,
} from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import { pathEnd, pathStart, reversedPath, subpath } from '@paperhinge/geometry/paths';
import { withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { holdsEdge } from '../edge-refs.js';
import { type Item, partOfRun, type Run, recomposed } from '../moved-edges/composed.js';
import { withEndMoved } from '../moved-edges/end-moved.js';
import { runOn, withEndAt } from '../moved-edges/meet.js';
import { requireSimple, tidied } from '../moved-edges/tidy.js';
import { edgeInRing, withEdgeRedrawn } from '../redrawn-edges/corner-moved.js';
import { refusal, saying } from '../redrawn-edges/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';

/** Make an edge as long as what it is sewn to, or as long as wanted. */
export interface MatchEdge {
  readonly edge: EdgeRef;
  /** The end (clockwise) at which it is made longer or shorter. */
  readonly at: 'start' | 'end';
  /** mm; absent = as long as its seam needs. */
  readonly length?: number;
}

/**
 * Walks the seam of an edge and makes the edge as much longer or shorter at one of its ends as the seam is out, ease and
 * all, or as long as is asked: there it is cut, or runs on straight. The edge beside it is drawn to the new corner, its shape and other end
 * kept. Source: common practice, no source.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`, `edge-in-no-seam`, `edge-matches-already`, `edge-in-two-parts`,
 *   `corner-beside-dart`, `corner-beyond-edge`, `redrawn-crosses`; those of `perform`
 */
export const matchEdge = (pattern: Pattern, parameters: MatchEdge): Alteration =>
  perform(matchEdgeVerb, pattern, parameters);

export const matchEdgeForm = formOf<MatchEdge>()({
  verb: 'match edge',
  does: 'Walks a seam and makes one of its edges as long as the other needs it, or as long as is asked, at one end; the edge beside it is drawn to the new corner.',
  fields: {
    edge: field.edgeOfPiece(),
    at: field.choice('start', 'end'),
    length: field.optional(field.size()),
  },
  leaves: ({ edge }) => ({ changed: [edge.piece] }),
  sentence: 'Change the {edge} at its {at} to fit its seam[, to {length}]',
  startsAt: { edge: ['edge'] },
  example: {
    pattern: 'yoke-skirt',
    step: { edge: 'front.hem', at: 'start', length: '370 mm' },
  },
});
export const matchEdgeVerb = /* @__PURE__ */ verbFrom(matchEdgeForm, (pattern, { edge, at, length }) => {
  const piece = pieceNamed(pattern, edge.piece);
  return locating(edge, () => {
    const ring = edgeInRing(piece, edge.edge);
    const { seam, byMm } =
      length === undefined
        ? wantedChange(pattern, edge)
        : { seam: undefined, byMm: length - pathLength(ring.run.path) };
    const { items, index, run } = ring;
    const next = (index + (at === 'start' ? -1 : 1) + items.length) % items.length;
    const beside = items[next]!;
    if (beside.type !== 'run')
      throw refusal(
        'corner-beside-dart',
        { edge, dart: { piece: piece.name, [beside.type]: beside.name } },
        edge,
      );
    const fresh = changedAt(run, at, byMm, edge, beside.edge.name);
    const corner = at === 'start' ? pathStart(fresh[0]!.path) : pathEnd(fresh.at(-1)!.path);
    const path = withEndMoved(beside.path, at === 'start' ? 'end' : 'start', corner);
    const drawn = withEdgeRedrawn(ring, fresh, [
      { index: next, beside: [{ ...beside, path }], point: corner },
    ]);
    const done = tidied(piece, recomposed(piece, drawn));
    requireSimple(done.piece, () => refusal('redrawn-crosses', { edge }, edge));
    return {
      pattern: withPiece(pattern, done.piece),
      became: done.became,
      did: saying('matched-edge', {
        edge: { ...edge },
        ...(seam ? { seam: { seam: seam.name } } : {}),
        byMm,
        lengthMm: pathLength(edgePath(done.piece, edge.edge)),
        beside: { edge: beside.edge.name },
      }),
      findings: done.findings,
    };
  });
});

/** The first seam of the edge that is out, and by how much the edge must become longer (mm). */
function wantedChange(pattern: Pattern, edge: EdgeRef): { readonly seam: Seam; readonly byMm: number } {
  const own = pattern.seams.filter(({ a, b }) => holdsEdge([...a, ...b], edge));
  if (own.length === 0) throw refusal('edge-in-no-seam', { edge: { ...edge } }, edge);
  for (const seam of own) {
    const { differenceMm, easeWantedMm } = walkSeam(pattern, seam);
    const out = easeWantedMm - differenceMm;
    const runs = [seam.a, seam.b].map(side => side.filter(run => holdsEdge([run], edge)).length);
    const times = runs[0]! - runs[1]!;
    if (Math.abs(out) > tolerances.leastSeen && times !== 0) return { seam, byMm: out / times };
  }
  throw refusal('edge-matches-already', { edge: { ...edge }, seam: { seam: own[0]!.name } }, edge);
}

/** The edge longer or shorter at one end. */
function changedAt(
  run: Run,
  at: 'start' | 'end',
  byMm: number,
  edge: EdgeRef,
  beside: string,
): readonly (Item & Run)[] {
  const length = pathLength(run.path);
  if (-byMm >= length - tolerances.joiningGap)
    throw refusal(
      'corner-beyond-edge',
      { edge: { ...edge }, beside: { edge: beside }, byMm: -byMm, roomMm: length },
      edge,
    );
  if (byMm < 0) return [at === 'end' ? partOfRun(run, 0, length + byMm) : partOfRun(run, -byMm, length)];
  const outwards = at === 'end' ? run.path : reversedPath(run.path);
  const grown = withEndAt(outwards, pathEnd(runOn(outwards, byMm)), byMm);
  const added = subpath(grown, length, length + byMm);
  const extra: Run = { type: 'run', edge: run.edge, path: at === 'end' ? added : reversedPath(added) };
  return at === 'end' ? [run, extra] : [extra, run];
}
