import { segmentLength } from '../curve/arc-length.js';
import { tangentAt } from '../curve/segment.js';
import { partsOfEdge } from '../pattern/outline.js';
import type { Piece } from '../pattern/types.js';
import { joiningGap, longestSpur, spurTurn } from '../tolerance.js';
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
