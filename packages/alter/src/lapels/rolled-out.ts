import { edgePath, type Piece, pathLength } from '@paperhinge/geometry';
import { neighboursOf } from '@paperhinge/geometry/pattern';
import { moveEdgesInwards } from '../moved-edges/move-edges-inwards.js';
import type { Taper } from '../moved-edges/taper.js';

/** mm over which the turn of the cloth grows from nothing, or the whole edge where it is shorter: so nothing kinks. */
const growing = 100;

/**
 * A piece that lies on the outside of a roll, larger there than what it is sewn to by the turn of the cloth.
 *
 * @param rolling the edges that move outwards by `turn` mm
 * @param flush the edges sewn to the other layer that stay: towards them the turn runs out to nothing
 * @throws PatternError `take-in-too-much`
 */
export function rolledOut(
  piece: Piece,
  rolling: readonly string[],
  flush: readonly string[],
  turn: number,
): Piece {
  if (turn === 0) return piece;
  return rolling.reduce((now, edge) => {
    const beside = neighboursOf(now, edge);
    const taper = taperOf(
      Math.min(1, growing / pathLength(edgePath(now, edge))),
      flush.includes(beside.start),
      flush.includes(beside.end),
    );
    const run = { piece: now.name, edge, reversed: false, side: 'a', fromShare: 0, toShare: 1 } as const;
    return moveEdgesInwards(now, [run], -turn, taper).piece;
  }, piece);
}

function taperOf(share: number, staysAtStart: boolean, staysAtEnd: boolean): Taper {
  if (staysAtStart && staysAtEnd) return { kind: 'between', from: 0, to: 1 };
  if (staysAtStart) return { kind: 'ends', from: 0, to: share, atFrom: 0, atTo: 1 };
  if (staysAtEnd) return { kind: 'ends', from: 1 - share, to: 1, atFrom: 1, atTo: 0 };
  return { kind: 'whole' };
}
