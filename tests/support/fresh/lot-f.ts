import { childsDress, panelledDress } from './lot-f-dress.js';
import { leggings, nightgown } from './lot-f-easy.js';
import { coat } from './lot-f-jackets.js';
import { culottes, jumpsuit } from './lot-f-legs.js';
import { waistcoat } from './lot-f-waistcoat.js';
import type { Unnamed } from './unnamed.js';

/** Eight other garments that a home maker sews in a year, as they come off a sheet, notched; drawn without a look at how proposals are made. */
export const lotF = (): readonly Unnamed[] => [
  leggings(),
  nightgown(),
  panelledDress(),
  coat(),
  waistcoat(),
  jumpsuit(),
  culottes(),
  childsDress(),
];
