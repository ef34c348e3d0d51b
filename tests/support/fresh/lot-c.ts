import { collaredDress } from './lot-c-dress.js';
import { facedSkirt, jeans } from './lot-c-jeans.js';
import { hoodie, raglanPullover } from './lot-c-knits.js';
import { houseJacket, mansShirt } from './lot-c-shirt.js';
import type { Unnamed } from './unnamed.js';

/** Seven garments as they come off a sheet, notched, drawn without a look at how proposals are made. */
export const lotC = (): readonly Unnamed[] => [
  collaredDress(),
  hoodie(),
  jeans(),
  mansShirt(),
  houseJacket(),
  raglanPullover(),
  facedSkirt(),
];
