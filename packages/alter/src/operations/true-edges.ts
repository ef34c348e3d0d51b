import type { EdgeRef } from '@paperhinge/geometry';
export interface TrueEdges {
  readonly edges: readonly EdgeRef[];
  /** mm the new line may lie from what it replaces; default 2. */
  readonly within: number;
}
