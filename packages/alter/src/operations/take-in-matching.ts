import type { Pattern, Seam } from '@paperhinge/geometry';
import * as tolerances from '@paperhinge/geometry/internal-tolerances';
import type { Alteration } from '../alteration.js';
import { seamsGoingOnFrom } from '../matching/going-on.js';
import { seamsInTurn } from '../matching/seams-in-turn.js';
import { seamNamed } from '../moved-edges/seam-place.js';
import { sidesOf } from '../moved-edges/seam-sides.js';
import { fullness } from '../moved-edges/taper.js';
import { mostTaken, taperOf } from './take-in-taper.js';
import type { TakeIn } from './take-in-wish.js';

/** How many edges share what is taken in along a seam. */
export const edgesSharing = (pattern: Pattern, seam: Seam): number =>
  sidesOf(pattern, seam).reduce((sum, side) => sum + side.times, 0);

/** A seam taken in or let out, and as much of each edge of the seams that go on from it, and from those. */
export const withSeamsGoingOn = (
  pattern: Pattern,
  wish: TakeIn,
  alter: (pattern: Pattern, wish: TakeIn) => Alteration,
): Alteration => seamsInTurn(pattern, wish, wishesBeyond, alter);

/** Where nothing is left at the far end of a seam, nothing is at the far end of one that goes on from it. */
function wishesBeyond(pattern: Pattern, wish: TakeIn): readonly TakeIn[] {
  const seam = seamNamed(pattern, wish.seam);
  const taper = taperOf(pattern, seam, wish);
  const each = mostTaken(wish) / edgesSharing(pattern, seam);
  return seamsGoingOnFrom(pattern, seam).flatMap(({ seam: next, from, at }): readonly TakeIn[] => {
    const share = from === 'start' ? 0 : 1;
    const there = each * fullness(taper, share);
    if (there <= tolerances.coincidenceTolerance) return [];
    const by = there * edgesSharing(pattern, next);
    const near = at === 'start' ? 0 : 1;
    return fullness(taper, 1 - share) === 0
      ? [{ seam: next.name, by, from: { share: near }, to: { share: 1 - near } }]
      : [{ seam: next.name, by }];
  });
}
