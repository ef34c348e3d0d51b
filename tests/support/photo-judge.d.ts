import type { Outline, Pair } from './photo-scene.js';

export interface Judgement {
  /** mm: 95 % of all points are nearer than this to the other outline. */
  readonly most: number;
  readonly worst: number;
  readonly length: number;
  readonly lengthOff: number;
  /** mm from each true corner to the nearest traced one. */
  readonly cornersOff: readonly number[];
}
export function judged(traced: readonly Pair[], corners: readonly Pair[], outline: Outline): Judgement;
