import type { EdgePosition } from '@paperhinge/geometry/pattern';
import type { Fold } from './spread-wish.js';

/** How what a slash opens at the edge it begins at may be taken up when it is sewn. */
export type SlashInto = 'ease' | 'gathers' | 'dart' | Fold;

/** An end of a slash. */
export interface SlashEnd {
  readonly edge: string;
  /** Absent = the middle. */
  readonly at?: EdgePosition;
}

/** One slash with its own amounts. */
export interface OneSlash {
  readonly from: SlashEnd;
  readonly to: SlashEnd;
  /** mm of chord that it opens at `from`; negative: overlaps. */
  readonly by: number;
  /** mm that it opens (negative: overlaps) at `to` as well; absent = it hinges there. */
  readonly otherEnd?: number;
  /** Name of a point mark inside the piece that it runs through and hinges at: `to` overlaps where `from` opens. */
  readonly pivot?: string;
  /** How what opens at `from` is taken up when it is sewn; absent = left as it is. */
  readonly into?: SlashInto;
  /** What a dart, pleat or tuck is called: needed for one. */
  readonly name?: string;
  /** mm down from the edge that a pleat or tuck is stitched; default 0, laid only. */
  readonly stitched?: number;
  /** mm from the edge to a dart's point; absent = two thirds of the way to where the slash hinges. */
  readonly depth?: number;
}

/** Slash a piece at several places at once, each opened by its own amount. */
export interface Slash {
  readonly piece: string;
  readonly slashes: readonly OneSlash[];
  /** The same to the pieces beside it, where they have edges that answer to these. */
  readonly matching?: boolean;
}
