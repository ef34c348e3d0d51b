// Shapes without overlap on paper, or on cloth.

export type { ArrangeOptions } from './arrange.js';
export { arrange } from './arrange.js';
export type { Arrangement, Placing, Shape } from './arrangement.js';
export type { Cell, PageField } from './field.js';
export type { Turning } from './turning.js';
export { turnings } from './turning.js';
