// Length and level: shortened, lengthened, hems shaped and levelled. Every name is listed; nothing is exported by star.

export type { CutOffBand } from '../operations/cut-off-band.js';
export { cutOffBand } from '../operations/cut-off-band.js';
export type { LevelHem } from '../operations/level-hem.js';
export { levelHem } from '../operations/level-hem.js';
export type { ShapeHem } from '../operations/shape-hem.js';
export { shapeHem } from '../operations/shape-hem.js';
export type { Shorten } from '../operations/shorten.js';
export { lengthen, shorten } from '../operations/shorten.js';
