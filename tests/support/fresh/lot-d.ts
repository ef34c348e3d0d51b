import { buttonedSkirt, wideTrousers } from './lot-d-below.js';
import { workJacket } from './lot-d-jacket.js';
import { pinafore, pyjamas } from './lot-d-night-and-child.js';
import { boxyTop, panelDress } from './lot-d-tops.js';
import type { Unnamed } from './unnamed.js';

/** Seven other garments as they come off a sheet, never looked at before they are judged by. */
export const lotD = (): readonly Unnamed[] => [
  boxyTop(),
  panelDress(),
  wideTrousers(),
  buttonedSkirt(),
  pyjamas(),
  pinafore(),
  workJacket(),
];
