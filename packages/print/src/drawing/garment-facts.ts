import type { Path } from '@paperhinge/geometry';
import { fasteningFacts } from './fastenings.js';
import type { Ink } from './ink.js';
import type { PieceSetting } from './piece-setting.js';
import { pleatFacts } from './pleats.js';
import { seamFacts } from './seam-facts.js';
import { topstitchFacts } from './topstitching.js';

/** What a fact of the garment puts on a piece: its lines, and words that stand along one of them. */
export interface DrawnFact {
  readonly inks: readonly Ink[];
  /** From the fullest to the shortest; none where the lines say it all. */
  readonly words: readonly string[];
  /** What the words stand along, and how far off it, mm. */
  readonly along: Path;
  readonly off: number;
}

/** Pleats, fastenings, topstitching, and parts of edges that are gathered or sewn by themselves. */
export const garmentFacts = (setting: PieceSetting): readonly DrawnFact[] => [
  ...pleatFacts(setting),
  ...fasteningFacts(setting),
  ...topstitchFacts(setting),
  ...seamFacts(setting),
];
