// For the other packages of the project alone; it may change at any time.

export { oncePer, oncePerAll } from '../once-per.js';
export * as tolerances from '../tolerance.js';
