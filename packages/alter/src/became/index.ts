// What became of what, in full. Every name is listed; nothing is exported by star.

export { settled } from '../settled.js';
export type { EdgeSpan, SpanBecame, ThingBecame } from './became.js';
export type { EdgeCorner, Followable } from './follow.js';
export { inTurn } from './in-turn.js';
export { saidByNames } from './said-by-names.js';
