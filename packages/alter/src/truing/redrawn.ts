import type { Edge, EdgeRef, Finding, Path, Pattern, Piece } from '@paperhinge/geometry';
import { type EdgePosition, partsOfEdge } from '@paperhinge/geometry/pattern';
import { locating } from '@paperhinge/geometry/sayings';
import { apartBetween } from './apart.js';
import { wantedEnds } from './ends.js';
import { leftOnRun, partedAgain, pathOfRun, placeOnRun, type Run, runsToTrue } from './lines.js';
import { straightParts } from './straight.js';
import { finding } from './tellings.js';
import { type LeftOver, trueLine } from './true-line.js';

/** What is asked of the edges of a piece. */
export interface TruingWish {
  /** All that are trued, on every piece: a corner between two of them is shared. */
  readonly edges: readonly EdgeRef[];
  readonly within: number;
  readonly from?: EdgePosition;
  readonly to?: EdgePosition;
}

/** What becomes of the parts of a piece's edges, and what could not be done. */
export interface Redrawn {
  readonly fresh: ReadonlyMap<Edge, Path>;
  readonly findings: readonly Finding[];
}

/** Ends are judged on the pattern as it was given, so that the order of the list does not matter. */
export function redrawn(
  pattern: Pattern,
  piece: Piece,
  own: readonly EdgeRef[],
  { edges, within }: TruingWish,
): Redrawn {
  for (const ref of own) partsOfEdge(piece, ref.edge);
  const fresh = new Map<Edge, Path>();
  const findings: Finding[] = [];
  for (const run of runsToTrue(pattern, piece, own)) {
    const old = pathOfRun(run);
    const ends = wantedEnds(pattern, piece, run[0], run.at(-1)!, edges);
    const { path, left } = locating({ edge: run[0].name }, () =>
      trueLine(old, ends, leftOnRun(pattern, piece, run), within),
    );
    if (path !== old) for (const [i, part] of partedAgain(run, path).entries()) fresh.set(run[i]!, part);
    findings.push(...left.map(one => leftOver(piece, run, one, within)));
  }
  return { fresh, findings };
}

export function straightened(
  piece: Piece,
  own: readonly EdgeRef[],
  { within, from, to }: TruingWish,
): Redrawn {
  const fresh = new Map<Edge, Path>();
  const findings: Finding[] = [];
  for (const ref of own) {
    const between = { ...(from ? { from } : {}), ...(to ? { to } : {}) };
    const parts = straightParts(piece, ref.edge, between);
    const awayMm = Math.max(...parts.map(({ part, path }) => apartBetween(part.path, path)));
    const where = { piece: ref.piece, edge: ref.edge };
    if (awayMm > within)
      findings.push(finding('warning', 'straight-left', where, { edge: where, awayMm, withinMm: within }));
    else for (const { part, path } of parts) fresh.set(part, path);
  }
  return { fresh, findings };
}

function leftOver(piece: Piece, run: Run, left: LeftOver, withinMm: number): Finding {
  const { part, alongMm } = placeOnRun(run, left.alongMm);
  const edge = { piece: piece.name, edge: part.name };
  const { what, angleDeg, needMm } = left;
  // A corner that is meant is no trouble; that it was asked to be redrawn is worth a word.
  return finding(what === 'corner' ? 'note' : 'warning', 'truing-left', edge, {
    edge,
    what,
    alongMm,
    angleDeg,
    withinMm,
    ...(needMm === undefined ? {} : { needMm }),
  });
}
