// From the stitching line to where the cloth is cut, and back.

export type { NamedPath, OffsetLoop, OutlineOffset } from '../cutting-line/offset-outline.js';
export { offsetOutline } from '../cutting-line/offset-outline.js';
export type { StitchingLine } from '../cutting-line/stitching-line.js';
export { stitchingLine } from '../cutting-line/stitching-line.js';
export type { Stretch, StretchShape } from '../cutting-line/strand.js';
export { pathWithoutLoops } from '../cutting-line/without-loops.js';
