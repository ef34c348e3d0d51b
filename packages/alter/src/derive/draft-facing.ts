import type { EdgeRef } from '@paperhinge/geometry';
/** A facing or a stay: outer line the edge itself, inner line parallel at `width` mm on the garment side. */
export interface DraftFacing {
  readonly kind: 'facing' | 'stay';
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  readonly join: number;
  readonly fabric?: string;
}
