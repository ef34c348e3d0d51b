import { segmentLength } from '../curve/arc-length.js';
import { type Segment, tangentAt } from '../curve/segment.js';
import { partsOfEdge } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { clearSlack, cornerTurn, joiningGap, longestSpur, spurTurn } from '../tolerance.js';
import { angleBetween } from '../vector.js';

/** A place within an edge where its line goes out a little and comes back. */
export interface Spur {
  /** mm from the edge's start, darts' mouths not counted. */
  readonly alongMm: number;
  readonly spurMm: number;
}

/**
 * Spurs that nobody draws on purpose, but from which a cutting line runs to a point: the line turns back within
 * `longestSpur`. Those under a `joiningGap` are left out: no cutting line shows them.
 */
export function spursOf(piece: Piece, edge: string): readonly Spur[] {
  const spurs: Spur[] = [];
  let along = 0;
  for (const part of partsOfEdge(piece, edge)) {
    const lasting = part.path.segments
      .map(segment => ({ segment, length: segmentLength(segment) }))
      .filter(({ length }) => length > joiningGap);
    for (const [i, { segment, length }] of lasting.entries()) {
      along += length;
      const next = lasting[i + 1];
      if (!next) continue;
      const spurMm = Math.min(length, next.length);
      const turn = angleBetween(tangentAt(segment, 1), tangentAt(next.segment, 0));
      // Drawn along its own line, a spur comes back at its foot, too.
      const isTold = along - (spurs.at(-1)?.alongMm ?? Number.NEGATIVE_INFINITY) <= longestSpur;
      if (!isTold && spurMm <= longestSpur && Math.abs(turn) > spurTurn)
        spurs.push({ alongMm: along, spurMm });
    }
  }
  return spurs;
}

/** A stretch at an end of an edge, too short to be seen, that leads another way than the line. */
export interface Hook {
  readonly atStart: boolean;
  readonly hookMm: number;
}

/**
 * Hooks at the ends of an edge: up to a `joiningGap` long, so that nobody sees them, and yet the corner of the cutting
 * line goes by the way they lead. Those within `clearSlack` do not count there.
 */
export function hooksOf(piece: Piece, edge: string): readonly Hook[] {
  const parts = partsOfEdge(piece, edge);
  const first = parts[0]!.path.segments,
    last = parts.at(-1)!.path.segments;
  const hook = (end: Segment | undefined, next: Segment | undefined, atStart: boolean): readonly Hook[] => {
    if (!end || !next) return [];
    const hookMm = segmentLength(end);
    if (hookMm <= clearSlack || hookMm > joiningGap) return [];
    const [before, after] = atStart ? [end, next] : [next, end];
    const turn = angleBetween(tangentAt(before, 1), tangentAt(after, 0));
    return Math.abs(turn) > cornerTurn ? [{ atStart, hookMm }] : [];
  };
  return [...hook(first[0], first[1], true), ...hook(last.at(-1), last.at(-2), false)];
}
