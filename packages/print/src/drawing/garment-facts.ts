import type { DrawnFact } from './drawn-fact.js';

import { fasteningFacts } from './fastenings.js';

import type { PieceSetting } from './piece-setting.js';
import { pleatFacts } from './pleats.js';
import { seamFacts } from './seam-facts.js';
import { topstitchFacts } from './topstitching.js';

/** Pleats, fastenings, topstitching, and parts of edges that are gathered or sewn by themselves. */
export const garmentFacts = (setting: PieceSetting): readonly DrawnFact[] => [
  ...pleatFacts(setting),
  ...fasteningFacts(setting),
  ...topstitchFacts(setting),
  ...seamFacts(setting),
];
