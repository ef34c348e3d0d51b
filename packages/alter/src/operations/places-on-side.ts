import type { EdgeRun, Notch, NotchStyle, Pattern } from '@paperhinge/geometry';
import { placeOnSide } from '../matching/across-seam.js';

/** A notch with the piece it stands on. */
export interface Placed extends Notch {
  readonly piece: string;
}

/** Where shares of the length of a seam's side lie on its edges. */
export const placesOnSide = (
  pattern: Pattern,
  side: readonly EdgeRun[],
  shares: readonly number[],
  style: NotchStyle,
): readonly Placed[] => shares.map(share => ({ ...placeOnSide(pattern, side, share), style }));
