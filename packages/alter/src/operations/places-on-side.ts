import type { EdgeRun, Notch, NotchStyle, Pattern } from '@paperhinge/geometry';
import { sideLength, stretchOf } from '../moved-edges/seam-place.js';

/** A notch with the piece it stands on. */
export interface Placed extends Notch {
  readonly piece: string;
}

/** Where shares of the length of a seam's side lie on its edges. */
export function placesOnSide(
  pattern: Pattern,
  side: readonly EdgeRun[],
  shares: readonly number[],
  style: NotchStyle,
): readonly Placed[] {
  const whole = sideLength(pattern, side);
  return shares.flatMap(share => {
    let left = share * whole;
    for (const [i, run] of side.entries()) {
      const [from, to] = stretchOf(pattern, run);
      if (left <= to - from || i === side.length - 1)
        return [{ piece: run.piece, edge: run.edge, at: run.reversed ? to - left : from + left, style }];
      left -= to - from;
    }
    return [];
  });
}
