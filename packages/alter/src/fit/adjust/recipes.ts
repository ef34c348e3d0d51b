import { lengthen, shorten } from '../../operations/shorten.js';
import { letOut, takeIn } from '../../operations/take-in.js';
import { abdomen, crotchDepth, crotchPoint, hips, thigh, torso, waist } from './lower-recipes.js';
import type { Adjustment } from './names.js';
import type { Recipe } from './recipe.js';
import {
  acrossBack,
  acrossChest,
  bust,
  bustLevel,
  forwardShoulder,
  neck,
  shoulderLength,
  slope,
  upperArm,
  wedge,
} from './upper-recipes.js';

/** The adjustments by the names that makers give them. */
export const recipes: Readonly<Record<Adjustment, Recipe>> = {
  'full bust': bust(1),
  'small bust': bust(-1),
  'high bust': bustLevel(1),
  'low bust': bustLevel(-1),
  'full abdomen': abdomen,
  'sway back': wedge('back', ['waist'], -1),
  'full seat': wedge('skirt back', ['hip'], 1),
  'flat seat': wedge('skirt back', ['hip'], -1),
  'broad back': acrossBack(1),
  'narrow back': acrossBack(-1),
  'round back': acrossChest('back', 1),
  'hollow chest': acrossChest('front', -1),
  'square shoulder': slope(1),
  'sloping shoulder': slope(-1),
  'forward shoulder': forwardShoulder,
  'broad shoulder': shoulderLength(1),
  'narrow shoulder': shoulderLength(-1),
  'full upper arm': upperArm(1),
  'thin upper arm': upperArm(-1),
  'full thigh': thigh(1),
  'thin thigh': thigh(-1),
  'long torso': torso(lengthen),
  'short torso': torso(shorten),
  'long crotch': crotchDepth(lengthen),
  'short crotch': crotchDepth(shorten),
  'long crotch point': crotchPoint(letOut),
  'short crotch point': crotchPoint(takeIn),
  'full hips': hips(letOut),
  'narrow hips': hips(takeIn),
  'full waist': waist(letOut),
  'narrow waist': waist(takeIn),
  'full neck': neck,
};
