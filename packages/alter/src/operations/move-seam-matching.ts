import type { Pattern, Seam } from '@paperhinge/geometry';
import type { Alteration } from '../alteration.js';
import { seamsGoingOnFrom } from '../matching/going-on.js';
import { seamsInTurn } from '../matching/seams-in-turn.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import type { MoveSeam } from './move-seam-wish.js';

/** A seam moved, and by as much into the same side those of two pieces that go on from it, and from those. */
export const movedWithNext = (
  pattern: Pattern,
  wish: MoveSeam,
  alter: (pattern: Pattern, wish: MoveSeam) => Alteration,
): Alteration => seamsInTurn(pattern, wish, wishesBeyond, alter);

function wishesBeyond(pattern: Pattern, { seam, into, by }: MoveSeam): readonly MoveSeam[] {
  const [atStart, atEnd] = typeof by === 'number' ? [by, by] : by;
  return seamsGoingOnFrom(pattern, seamNamed(pattern, seam)).flatMap(
    ({ seam: next, from, at, here, beyond }): readonly MoveSeam[] => {
      const [there, far] = from === 'start' ? [atStart, atEnd] : [atEnd, atStart];
      if (here !== into || there === 0 || !isOfTwoPieces(next)) return [];
      const left = far === 0 ? 0 : there;
      return [{ seam: next.name, into: beyond, by: at === 'start' ? [there, left] : [left, there] }];
    },
  );
}

const isOfTwoPieces = ({ a, b }: Seam): boolean =>
  a.length === 1 && b.length === 1 && a[0]!.piece !== b[0]!.piece;
