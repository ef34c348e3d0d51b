import type { EdgeRef } from '@paperhinge/geometry';
/** A strip (cut width given) or a binding (finished width given, cut four times as wide). Lengths in mm. */
export interface DraftStrip {
  readonly kind: 'strip' | 'binding';
  readonly name: string;
  readonly along: readonly EdgeRef[];
  readonly width: number;
  readonly join: number;
  readonly fabric?: string;
}
