import type { Notch } from '@paperhinge/geometry';
import type { HalfNeck } from './half-neck.js';

/** Where, in mm from the centre back, a piece of the garment's neck ends and the next begins. */
export function neckJoints({ lying }: Pick<HalfNeck, 'lying'>): readonly number[] {
  let along = 0;
  return lying.flatMap(({ piece, lengthMm }, i): readonly number[] => {
    along += lengthMm;
    const next = lying[i + 1];
    return next && next.piece !== piece ? [along] : [];
  });
}

/** The notches of an edge that is sewn to half a neck from the centre back: where the seams of the garment meet it. */
export const shoulderNotches = (half: Pick<HalfNeck, 'lying'>, edge: string): readonly Notch[] =>
  neckJoints(half).map(at => ({ edge, at, style: 'single', name: 'shoulder' }));
