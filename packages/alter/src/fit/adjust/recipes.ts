import type { Pattern } from '@paperhinge/geometry';
import { lengthen, shorten } from '../../operations/shorten.js';
import { letOut, takeIn } from '../../operations/take-in.js';
import { withShoulderWhole } from './dart-aside.js';
import { highHip } from './high-hip.js';
import { piecesFor } from './landmarks.js';
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

const shoulderWhole = (where: readonly ('front' | 'back')[], recipe: Recipe): Recipe =>
  withShoulderWhole((pattern: Pattern) => where.flatMap(one => piecesFor(pattern, one)), recipe);

/** The adjustments by the names that makers give them. */
export const recipes: Readonly<Record<Adjustment, Recipe>> = {
  'full bust': shoulderWhole(['front'], bust(1)),
  'small bust': shoulderWhole(['front'], bust(-1)),
  'high bust': bustLevel(1),
  'low bust': bustLevel(-1),
  'full abdomen': abdomen,
  'sway back': wedge('back', ['waist'], -1),
  'full seat': wedge('skirt back', ['hip'], 1),
  'flat seat': wedge('skirt back', ['hip'], -1),
  'broad back': acrossBack(1),
  'narrow back': acrossBack(-1),
  'round back': shoulderWhole(['back'], acrossChest('back', 1)),
  'hollow chest': shoulderWhole(['front'], acrossChest('front', -1)),
  'square shoulder': shoulderWhole(['front', 'back'], slope(1)),
  'sloping shoulder': shoulderWhole(['front', 'back'], slope(-1)),
  'forward shoulder': shoulderWhole(['front', 'back'], forwardShoulder),
  'broad shoulder': shoulderWhole(['front', 'back'], shoulderLength(1)),
  'narrow shoulder': shoulderWhole(['front', 'back'], shoulderLength(-1)),
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
  'high left hip': highHip('left'),
  'high right hip': highHip('right'),
};
