import type { EdgeRef } from '@paperhinge/geometry';
export interface SetAllowance {
  readonly edges: 'all seams' | 'all hems' | readonly EdgeRef[];
  /** mm. */
  readonly to: number;
}
