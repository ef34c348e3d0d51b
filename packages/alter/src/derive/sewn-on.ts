import { runsAlong } from './garment-chain.js';
import type { LaidAlong } from './laid-along.js';
import { endEdges, sewnEdge } from './long-piece.js';
import type { DraftedSeam, JoinSeam } from './take-place.js';

/** The seam of a straight piece with the edges it was made for. @param easeMm by which the piece is longer than they */
export const seamAlong = (piece: string, { chains }: LaidAlong, easeMm: number): DraftedSeam => ({
  own: [{ piece, edge: sewnEdge, reversed: false }],
  partner: runsAlong(chains),
  easeMm,
});

/** The seam that closes it into a ring, where it is one. */
export const ringSeam = (piece: string, { ring }: LaidAlong): JoinSeam | undefined =>
  ring
    ? {
        a: [{ piece, edge: endEdges[0], reversed: true }],
        b: [{ piece, edge: endEdges[1], reversed: false }],
      }
    : undefined;
