// What there is to buy of each cloth, and how the pieces lie on it.

export type { ClothWay } from './cut-shapes.js';
export type { ClothLay, ClothNeeded, LaidShape } from './lay-cloths.js';
export { clothFindings, layCloths } from './lay-cloths.js';
