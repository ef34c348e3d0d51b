// The public surface. Every name is listed; nothing is exported by star.
export type { PrintOptions, Printed } from './print-pattern.js';
export { printPattern } from './print-pattern.js';
