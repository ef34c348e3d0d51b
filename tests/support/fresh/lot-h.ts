import { childsCoat } from './lot-h-child.js';
import { buttonedDress } from './lot-h-dress.js';
import { shorts } from './lot-h-shorts.js';
import { jerseySkirt, tieredSkirt } from './lot-h-skirts.js';
import { facedTop, zippedSweatshirt } from './lot-h-tops.js';
import type { Unnamed } from './unnamed.js';

/** Seven garments as they come off a sheet, notched, drawn without a look at how proposals are made. */
export const lotH = (): readonly Unnamed[] => [
  facedTop(),
  tieredSkirt(),
  childsCoat(),
  zippedSweatshirt(),
  jerseySkirt(),
  buttonedDress(),
  shorts(),
];
