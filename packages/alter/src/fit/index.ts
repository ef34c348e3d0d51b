// The garment beside the wearer, figure by figure. Every name is listed; nothing is exported by star.

export { hasEdge } from '../edge-refs.js';
export type { BandLengths } from './band-stretch.js';
export { bandStretchFindings, stretchOfBand } from './band-stretch.js';
export type { GarmentUse } from './cautions.js';
export { isKnit, stretchOf } from './cloth.js';
export type { EaseMinimum } from './ease.js';
export { wovenEaseMinima } from './ease.js';
export type { NeckOpening } from './over-the-head.js';
export { neckOpening } from './over-the-head.js';
export { stillThere } from './still-there.js';
export type { Passing } from './tellings.js';
export { bodyGirth, unknownHeadGirth } from './wearer.js';
