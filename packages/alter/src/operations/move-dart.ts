import type { EdgePosition } from '@paperhinge/geometry';
export interface MoveDart {
  readonly piece: string;
  readonly dart: string;
  readonly to: { readonly edge: string; readonly at?: EdgePosition };
  /** Name of a point mark; absent = the dart's apex. */
  readonly pivot?: string;
  /** mm the new stitched point is set back from the pivot along the new dart's axis. */
  readonly pointBack: number;
}
