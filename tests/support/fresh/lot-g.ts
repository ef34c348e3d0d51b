import { dungarees } from './lot-g-child.js';
import { panelDress, yokedSkirt } from './lot-g-dress.js';
import { shortJacket } from './lot-g-jacket.js';
import { pyjamas, wideTrousers } from './lot-g-legs.js';
import { puffedBlouse, teeShirt } from './lot-g-tops.js';
import type { Unnamed } from './unnamed.js';

/** Eight garments of a home maker's year as they come off a sheet, notched, drawn without a look at how proposals are made. */
export const lotG = (): readonly Unnamed[] => [
  teeShirt(),
  puffedBlouse(),
  panelDress(),
  yokedSkirt(),
  wideTrousers(),
  pyjamas(),
  dungarees(),
  shortJacket(),
];
