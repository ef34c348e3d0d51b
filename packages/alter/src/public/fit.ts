// The garment beside the wearer, figure by figure. Every name is listed; nothing is exported by star.

export { hasEdge } from '../edge-refs.js';
export type { Adjust } from '../fit/adjust/adjust.js';
export { adjust } from '../fit/adjust/adjust.js';
export type { Refit } from '../fit/adjust/refit.js';
export { refit } from '../fit/adjust/refit.js';
export type { BandLengths } from '../fit/band-stretch.js';
export { bandStretchFindings, stretchOfBand } from '../fit/band-stretch.js';
export type { GarmentUse } from '../fit/cautions.js';
export { isKnit, stretchOf } from '../fit/cloth.js';
export type { EaseMinimum } from '../fit/ease.js';
export { wovenEaseMinima } from '../fit/ease.js';
export type { NeckOpening } from '../fit/over-the-head.js';
export { neckOpening } from '../fit/over-the-head.js';
export { stillThere } from '../fit/still-there.js';
export type { Passing } from '../fit/tellings.js';
export { bodyGirth, unknownHeadGirth } from '../fit/wearer.js';
