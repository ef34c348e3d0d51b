import type { EdgePosition } from '@paperhinge/geometry';
export interface CloseDart {
  readonly piece: string;
  readonly dart: string;
  readonly into: string;
  readonly at?: EdgePosition;
  /** 0 to 1. */
  readonly share: number;
}
