// For the other packages of the project alone; it may change at any time.

export { abs, hypot, infinite, max, min } from '../arithmetic.js';
export { requireDistance, requirePoint } from '../curve/sound.js';
export { withoutSpecks } from '../cutting-line/specks.js';
export type { DecimalSign } from '../figure-text.js';
export { allowanceText, clothText, lengthText, numberText } from '../figure-text.js';
export { isCornerLeft } from '../measure/truing-check.js';
export { oncePer, oncePerAll } from '../once-per.js';
export type { Kind } from '../pattern/fault-in.js';
export { faultIn } from '../pattern/fault-in.js';
export { requirePattern } from '../pattern/require-pattern.js';
export { requireWhole, requireWholePiece } from '../pattern/require-whole.js';
export { namesBack } from '../pattern/roles/back-name.js';
export { isNamedFor } from '../pattern/roles/use-by-name.js';
export { sizesBetween } from '../pattern/sizes/size-between.js';
export { requireParts } from '../pattern/sound.js';
