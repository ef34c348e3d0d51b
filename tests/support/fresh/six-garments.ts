import type { Draft } from '../twenty-drafts.js';
import { dirndl, fivePockets } from './below-the-waist.js';
import { linedWaistcoat, panelledJacket } from './tailored.js';
import { boilerSuit, dungarees, leotard } from './whole-suits.js';

/** Seven garments drawn before the proposals were looked at again: what was right of them at first stands in the test. */
export const freshGarments = (): readonly Draft[] => [
  boilerSuit(),
  fivePockets(),
  linedWaistcoat(),
  dirndl(),
  panelledJacket(),
  leotard(),
  dungarees(),
];
