import { apron, blouse } from './lot-e-blouse.js';
import { cardigan, teeShirt } from './lot-e-knits.js';
import { panelledSkirt, wrapDress } from './lot-e-skirts.js';
import { dungarees, pyjamaTrousers } from './lot-e-trousers.js';
import type { Unnamed } from './unnamed.js';

/** Eight garments that a home maker sews in a year, as they come off a sheet, notched; drawn without a look at how proposals are made. */
export const lotE = (): readonly Unnamed[] => [
  teeShirt(),
  pyjamaTrousers(),
  blouse(),
  panelledSkirt(),
  dungarees(),
  wrapDress(),
  cardigan(),
  apron(),
];
