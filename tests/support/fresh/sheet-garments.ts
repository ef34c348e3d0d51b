import { lotC } from './lot-c.js';
import { lotD } from './lot-d.js';
import { lotE } from './lot-e.js';
import { lotF } from './lot-f.js';
import { lotG } from './lot-g.js';
import { lotH } from './lot-h.js';
import type { Unnamed } from './unnamed.js';

/** All garments that were drawn as they come off a sheet, notched, without a look at how proposals are made. */
export const sheetGarments = (): readonly Unnamed[] =>
  [lotC, lotD, lotE, lotF, lotG, lotH].flatMap(lot => lot());
