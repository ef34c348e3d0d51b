import type { EdgeRef } from '@paperhinge/geometry';
export interface DraftBand {
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly gap?: EdgeRef;
  /** Over 0 to 2. */
  readonly ratio: number;
  /** mm, cut width. */
  readonly width: number;
  /** mm of joining allowance at each end. */
  readonly join: number;
  readonly stretchedPart: 'whole' | 'sewn';
  readonly fabric?: string;
}
