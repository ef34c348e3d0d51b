import type { SeamEase, TakenUp } from '../pattern/types.js';
import type { Json } from './json.js';

/** A run whose direction may not be known yet. */
export interface OpenRun {
  readonly piece: string;
  readonly edge: string;
  readonly reversed: boolean | undefined;
  readonly part: readonly [string, string] | undefined;
  readonly json: Json;
}

export interface OpenSeam {
  readonly name: string;
  readonly a: readonly OpenRun[];
  readonly b: readonly OpenRun[];
  readonly ease: SeamEase;
  readonly takenUp: TakenUp | undefined;
  readonly tolerance: number | undefined;
}
