import {
  type Edge,
  type EdgeRef,
  type Finding,
  formatLength,
  locating,
  type Pattern,
  partsOfEdge,
  pathLength,
  pieceNamed,
  withPiece,
} from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { carryNotches } from '../edit/chains.js';
import { requireSimple } from '../edit/tidy.js';
import { wantedEnds } from '../truing/ends.js';
import { type Trued, trueLine } from '../truing/true-line.js';

/** Redraw edges fair that an alteration left stepped or bent. */
export interface TrueEdges {
  readonly edges: readonly EdgeRef[];
  /** mm the new line may lie from what it replaces; default 2. */
  readonly within: number;
}

/**
 * Redraws edges that are stepped or kinked, not square to the fold, or broken across a seam, with a fair line that
 * keeps both ends in place and lies within `within` mm of the old. Ends keep their tangents, but are drawn square to
 * a fold, and so that a line that runs on across a seam does: with both edges given each takes half of the corner.
 * What is smooth already stays as it is; what cannot be done within the limit is left, and is a finding.
 *
 * @throws PatternError `unknown-piece`, `unknown-edge`; `truing-limit`
 */
export function trueEdges(pattern: Pattern, { edges, within }: TrueEdges): Alteration {
  const findings: Finding[] = [];
  const said: string[] = [];
  let altered = pattern;
  for (const ref of edges) {
    const where = { piece: ref.piece, edge: ref.edge };
    const piece = pieceNamed(altered, ref.piece);
    const parts = partsOfEdge(piece, ref.edge);
    // Ends are judged on the pattern as it was given, so that the order of the list does not matter.
    const trued = parts.map((part, i) =>
      locating(where, () => trueLine(part.path, wantedEnds(pattern, ref, i, parts.length, edges), within)),
    );
    const name = `${ref.piece}.${ref.edge}`;
    findings.push(...trued.flatMap(t => t.left.map(left => leftOver(where, name, left, within))));
    if (trued.every((t, i) => t.path === parts[i]!.path)) {
      said.push(`${name} needed nothing${trued.some(t => t.left.length > 0) ? ' that could be done' : ''}`);
      continue;
    }
    const fresh = new Map(parts.map((part, i) => [part as Edge, trued[i]!.path]));
    const notches = carryNotches(piece, edge =>
      partsOfEdge(piece, edge).map(part => {
        const before = pathLength(part.path),
          after = pathLength(fresh.get(part) ?? part.path);
        // Neither end moved: a notch keeps its distance from the nearer.
        return { before, after, carry: at => (at <= before / 2 ? at : at + after - before) };
      }),
    );
    const done = {
      ...piece,
      outline: {
        parts: piece.outline.parts.map(part => {
          const path = part.type === 'edge' ? fresh.get(part) : undefined;
          return path ? { ...(part as Edge), path } : part;
        }),
      },
      notches: notches.notches,
    };
    requireSimple(done, 'truing-limit', `Trued, ${name} would cross the outline.`, 'Allow it less.');
    findings.push(...notches.findings);
    altered = withPiece(altered, done);
    const moved = Math.max(...trued.map(t => t.movedMm));
    said.push(`${name}, which moved by ${formatLength(moved, pattern.unit)} at most`);
  }
  return { pattern: altered, did: `trued ${said.join('; ')}`, findings };
}

function leftOver(
  where: { readonly piece: string; readonly edge: string },
  name: string,
  left: Trued['left'][number],
  within: number,
): Finding {
  return {
    severity: 'warning',
    code: 'truing-left',
    where,
    message: `${name} was left ${left.what} ${left.alongMm.toFixed(0)} mm from its start (${left.angleDeg.toFixed(1)}°): ${left.why}.`,
    figures: { alongMm: left.alongMm, angleDeg: left.angleDeg, withinMm: within },
    remedy: left.remedy,
  };
}
