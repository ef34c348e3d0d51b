import type { Path } from '@paperhinge/geometry';
import type { Ink } from './ink.js';

/** What a fact of the garment puts on a piece: its lines, and words that stand along one of them. */
export interface DrawnFact {
  readonly inks: readonly Ink[];
  /** From the fullest to the shortest; none where the lines say it all. */
  readonly words: readonly string[];
  /** What the words stand along, and how far off it, mm. */
  readonly along: Path;
  readonly off: number;
}
