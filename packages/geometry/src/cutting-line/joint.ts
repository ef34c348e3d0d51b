import type { Finding } from '../telling.js';
import type { Point } from '../vector.js';
import type { Place, Strand } from './strand.js';

/** How the cutting line gets from one run's parallel to the next. */
export interface Joint {
  /** Up to where the parallel before is kept; absent: to its end. */
  readonly before?: Place;
  /** From where the parallel after is kept; absent: from its start. */
  readonly after?: Place;
  /** What lies between the two, in clockwise order. */
  readonly bridge: readonly Strand[];
  /**
   * At an inner corner: the corner of the stitching line, to which the maker snips, and how many strands into the
   * bridge the cutting line turns.
   */
  readonly snip?: { readonly to: Point; readonly after: number };
  readonly findings?: readonly Finding[];
}
