// Points, vectors and maps of the plane.

export type { Affine } from '../affine.js';
export {
  apply,
  applyToVector,
  carrying,
  compose,
  determinant,
  identity,
  inverse,
  mirror,
  rotation,
  translation,
} from '../affine.js';
export {
  add,
  angleBetween,
  cross,
  distance,
  dot,
  leftOf,
  lerp,
  norm,
  rightOf,
  scale,
  subtract,
  unit,
} from '../vector.js';
