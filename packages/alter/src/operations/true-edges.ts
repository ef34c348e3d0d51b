import {
  type Edge,
  type EdgeRef,
  type Finding,
  type Path,
  type Pattern,
  type Piece,
  pathLength,
  pieceNamed,
  type Saying,
} from '@paperhinge/geometry';
import { type EdgePosition, partsOfEdge, withPiece } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import type { Alteration } from '../alteration.js';
import { type Became, nothingBecame, together } from '../became/became.js';
import { carriedNotches, edgesBecame, type PartChange } from '../became/parts.js';
import { requireSimple } from '../moved-edges/tidy.js';
import { apartBetween } from '../truing/apart.js';
import { type Redrawn, redrawn, straightened } from '../truing/redrawn.js';
import { refusal } from '../truing/tellings.js';
import * as field from '../verb/fields.js';
import { formOf, perform, verbFrom } from '../verb/verb.js';
import { saying } from './tellings.js';

/** Redraw edges fair that are stepped or bent. */
export interface TrueEdges {
  readonly edges: readonly EdgeRef[];
  /** mm the new line may lie from what it replaces; default 2. */
  readonly within?: number;
  /** Draw each edge straight instead, from end to end or between two places; default no. */
  readonly straight?: boolean;
  readonly from?: EdgePosition;
  readonly to?: EdgePosition;
}

/**
 * Redraws edges that are stepped or kinked, not square to the fold, or broken where they run on (across a seam, over
 * a dart, into an edge welded to them), with a fair line that keeps both ends in place and lies within `within` mm of
 * the old. A step of up to 15 mm is drawn through its middle, so that the line may lie half its height farther. Ends
 * keep their tangents, but are drawn square to a fold, and so that a line that runs on does: with both edges given
 * each takes half of the corner, and welded edges are redrawn as one line. A straight line stays straight where that
 * is near enough. What is smooth already stays as it is; what cannot be done within the limit is left, and is a
 * finding.
 *
 * With `straight` each edge becomes a straight line from end to end, or between the places `from` and `to` of it.
 * Source: common practice, no source (trade-notes §3, §4).
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`; `truing-crosses`; `straight-over-dart`,
 *   `straight-without-length`, `places-without-straight`; those of `perform`
 */
export const trueEdges = (pattern: Pattern, parameters: TrueEdges): Alteration =>
  perform(trueVerb, pattern, parameters);

export const trueForm = formOf<TrueEdges>()({
  verb: 'true',
  does: 'Redraws edges that are stepped or bent with a fair line that lies within a limit of the old one and keeps both ends where they are; or draws them straight.',
  fields: {
    edges: field.edgesOfPieces(),
    within: field.usually(field.size(), 2),
    straight: field.usually(field.yesOrNo(), false),
    from: field.optional(field.place('edges')),
    to: field.optional(field.place('edges')),
  },
  sentence:
    'True {edges}[, moving them by {within} at most][, straight: {straight}][, from {from}][, to {to}]',
  startsAt: { edge: ['edges'], corner: ['edges'] },
  example: { pattern: 'woven-shift', step: { edges: ['front.hem', 'back.hem'] } },
});
export const trueVerb = /* @__PURE__ */ verbFrom(trueForm, trued);

type WholeTrue = TrueEdges & { readonly within: number; readonly straight: boolean };

function trued(pattern: Pattern, parameters: WholeTrue): Alteration {
  const { edges, straight, from, to } = parameters;
  if (!straight && (from ?? to)) throw refusal('places-without-straight', { edge: { ...edges[0]! } });
  const findings: Finding[] = [];
  const said = new Map<string, Saying>();
  let altered = pattern;
  let became = nothingBecame;
  for (const name of new Set(edges.map(ref => ref.piece))) {
    const piece = pieceNamed(pattern, name);
    const own = edges.filter(ref => ref.piece === name);
    const done = locating({ piece: name }, () =>
      straight ? straightened(piece, own, parameters) : redrawn(pattern, piece, own, parameters),
    );
    const after = withPaths(piece, done.fresh);
    requireSimple(after.piece, () => refusal('truing-crosses', { edge: { ...own[0]! } }, { piece: name }));
    findings.push(...done.findings);
    became = together(became, after.became);
    for (const ref of own) said.set(label(ref), whatItDid(piece, ref, done));
    if (done.fresh.size > 0) altered = withPiece(altered, after.piece);
  }
  return {
    pattern: altered,
    did: saying('trued', { edges: [...new Set(edges.map(label))].map(one => said.get(one)!) }),
    findings,
    became,
  };
}

const label = ({ piece, edge }: EdgeRef): string => `${piece}.${edge}`;

/** The piece with some parts redrawn, and what became of their places. */
function withPaths(piece: Piece, fresh: ReadonlyMap<Edge, Path>) {
  const redrawn = [...new Set([...fresh.keys()].map(part => part.name))];
  const became: Became = {
    edges: edgesBecame(piece, redrawn, part => changeOf(part, fresh.get(part))),
    things: [],
  };
  const parts = piece.outline.parts.map(part => {
    const path = part.type === 'edge' ? fresh.get(part) : undefined;
    return path ? { ...(part as Edge), path } : part;
  });
  return { piece: { ...piece, outline: { parts }, notches: carriedNotches(piece, became) }, became };
}

/** Neither end of a trued part moved far: places keep their distance from the nearer. */
function changeOf({ path }: Edge, trued: Path | undefined): PartChange | undefined {
  if (!trued) return undefined;
  const before = pathLength(path),
    after = pathLength(trued);
  const kept = [
    { from: 0, to: before / 2, by: 0 },
    { from: before / 2, to: before, by: after - before },
  ];
  return { before, after, kept };
}

function whatItDid(piece: Piece, ref: EdgeRef, { fresh, findings }: Redrawn): Saying {
  const moved = partsOfEdge(piece, ref.edge).flatMap(part => {
    const path = fresh.get(part);
    return path ? [apartBetween(part.path, path)] : [];
  });
  const edge = { piece: ref.piece, edge: ref.edge };
  if (moved.length > 0) return saying('trued-edge', { edge, movedMm: Math.max(...moved) });
  return saying('trued-nothing', { edge, left: findings.some(f => f.where.edge === ref.edge) });
}
