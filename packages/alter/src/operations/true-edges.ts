import {
  type Edge,
  type EdgeRef,
  type Finding,
  locating,
  type Path,
  type Pattern,
  partsOfEdge,
  pathLength,
  pieceNamed,
  type Saying,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { type Became, nothingBecame } from '../became/became.js';
import { inTurn } from '../became/in-turn.js';
import { carriedNotches, edgesBecame, type PartChange } from '../became/parts.js';
import { requireSimple } from '../edit/tidy.js';
import { wantedEnds } from '../truing/ends.js';
import { type Trued, trueLine } from '../truing/true-line.js';
import * as field from '../verb/fields.js';
import { perform, verbOf } from '../verb/verb.js';
import { saying } from './tellings.js';

/** Redraw edges fair that an alteration left stepped or bent. */
export interface TrueEdges {
  readonly edges: readonly EdgeRef[];
  /** mm the new line may lie from what it replaces; default 2. */
  readonly within?: number;
}

/**
 * Redraws edges that are stepped or kinked, not square to the fold, or broken across a seam, with a fair line that
 * keeps both ends in place and lies within `within` mm of the old. Ends keep their tangents, but are drawn square to
 * a fold, and so that a line that runs on across a seam does: with both edges given each takes half of the corner.
 * What is smooth already stays as it is; what cannot be done within the limit is left, and is a finding.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`; `truing-limit`; those of
 *   `perform`
 */
export const trueEdges = (pattern: Pattern, parameters: TrueEdges): Alteration =>
  perform(trueVerb, pattern, parameters);

export const trueVerb = verbOf<TrueEdges>()({
  verb: 'true',
  does: 'Redraws edges that are stepped or bent with a fair line that lies within a limit of the old one and keeps both ends where they are.',
  fields: { edges: field.edgesOfPieces(), within: field.usually(field.length(), 2) },
  sentence: 'True {edges}[, moving them by {within} at most]',
  startsAt: { edge: ['edges'], corner: ['edges'] },
  example: { pattern: 'woven-shift', step: { edges: ['front.hem', 'back.hem'] } },
  alter: trued,
});

function trued(pattern: Pattern, { edges, within }: TrueEdges & { readonly within: number }): Alteration {
  const findings: Finding[] = [];
  const said: Saying[] = [];
  let altered = pattern;
  let became: Became = nothingBecame;
  for (const ref of edges) {
    const where = { piece: ref.piece, edge: ref.edge };
    const piece = pieceNamed(altered, ref.piece);
    const parts = partsOfEdge(piece, ref.edge);
    // Ends are judged on the pattern as it was given, so that the order of the list does not matter.
    const lines = parts.map((part, i) =>
      locating(where, () => trueLine(part.path, wantedEnds(pattern, ref, i, parts.length, edges), within)),
    );
    findings.push(...lines.flatMap(t => t.left.map(left => leftOver(ref, left, within))));
    if (lines.every((t, i) => t.path === parts[i]!.path)) {
      said.push(saying('trued-nothing', { edge: { ...ref }, left: lines.some(t => t.left.length > 0) }));
      continue;
    }
    const fresh = new Map(parts.map((part, i) => [part as Edge, lines[i]!.path]));
    const own = {
      edges: edgesBecame(piece, [ref.edge], part => changeOf(part, fresh.get(part))),
      things: [],
    };
    became = inTurn(became, own);
    const done = {
      ...piece,
      outline: {
        parts: piece.outline.parts.map(part => {
          const path = part.type === 'edge' ? fresh.get(part) : undefined;
          return path ? { ...(part as Edge), path } : part;
        }),
      },
      notches: carriedNotches(piece, own),
    };
    requireSimple(
      done,
      'truing-limit',
      `Trued, ${ref.piece}.${ref.edge} would cross the outline.`,
      'Allow it less.',
    );
    altered = withPiece(altered, done);
    said.push(saying('trued-edge', { edge: { ...ref }, movedMm: Math.max(...lines.map(t => t.movedMm)) }));
  }
  return { pattern: altered, did: saying('trued', { edges: said }), findings, became };
}

/** Neither end of a trued part moved: places keep their distance from the nearer. */
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

const leftOver = (ref: EdgeRef, left: Trued['left'][number], withinMm: number): Finding => ({
  severity: 'warning',
  code: 'truing-left',
  where: { piece: ref.piece, edge: ref.edge },
  message: `${ref.piece}.${ref.edge} was left ${left.what} ${left.alongMm.toFixed(0)} mm from its start (${left.angleDeg.toFixed(1)}°): ${left.why}.`,
  figures: { alongMm: left.alongMm, angleDeg: left.angleDeg, withinMm },
  remedy: left.remedy,
});
